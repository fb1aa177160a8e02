/** The wire of one case as tables: marks, folds, forces, other sizes; as text and as JSON. */
@NullMarked
package dev.fairlead.report.wire;

import org.jspecify.annotations.NullMarked;
