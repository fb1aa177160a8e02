/** The bench sheet: the wire true to size on paper, its numbers, and the checklist for bench and chair. */
@NullMarked
package dev.fairlead.report.sheet;

import org.jspecify.annotations.NullMarked;
