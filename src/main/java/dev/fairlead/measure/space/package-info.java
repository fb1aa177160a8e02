/** Room and need in the lower arch: irregularity, predicted widths, shortage, leeway, tooth-size ratio. */
@NullMarked
package dev.fairlead.measure.space;

import org.jspecify.annotations.NullMarked;
