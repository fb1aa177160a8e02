/** What the page of measuring sends and gets. */
@NullMarked
package dev.fairlead.web.measure;

import org.jspecify.annotations.NullMarked;
