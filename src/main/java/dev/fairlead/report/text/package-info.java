/** Plain text for a terminal of 80 columns. */
@NullMarked
package dev.fairlead.report.text;

import org.jspecify.annotations.NullMarked;
