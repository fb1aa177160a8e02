/** The wire of one case as tables: marks, folds, forces, other sizes; as text and as JSON. */
package dev.fairlead.report.wire;
