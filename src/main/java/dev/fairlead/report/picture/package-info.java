/** Drawings of a case as SVG with the same numbers beside them as a table; reports, sheets and pages show them. */
@NullMarked
package dev.fairlead.report.picture;

import org.jspecify.annotations.NullMarked;
