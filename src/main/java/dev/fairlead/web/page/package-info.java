/** What answers requests: one small class for each page. */
@NullMarked
package dev.fairlead.web.page;

import org.jspecify.annotations.NullMarked;
