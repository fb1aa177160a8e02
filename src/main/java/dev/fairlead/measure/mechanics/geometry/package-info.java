/** Where the wire runs: the plane curve of the arch, its folds and how they open, tubes and brackets. */
@NullMarked
package dev.fairlead.measure.mechanics.geometry;

import org.jspecify.annotations.NullMarked;
