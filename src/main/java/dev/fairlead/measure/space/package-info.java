/** Room and need in the lower arch: irregularity, predicted widths, shortage, leeway, tooth-size ratio. */
package dev.fairlead.measure.space;
