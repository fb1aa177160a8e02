/** How far the records themselves can be believed: duplicate error, plausible widths, ages. */
@NullMarked
package dev.fairlead.measure.records;

import org.jspecify.annotations.NullMarked;
