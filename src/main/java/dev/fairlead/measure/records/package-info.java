/** How far the records themselves can be believed: duplicate error, plausible widths, ages. */
package dev.fairlead.measure.records;
