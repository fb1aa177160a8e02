/** The bench sheet: the wire true to size on paper, its numbers, and the checklist for bench and chair. */
package dev.fairlead.report.sheet;
