/** Where the wire runs: the plane curve of the arch, its folds and how they open, tubes and brackets. */
package dev.fairlead.measure.mechanics.geometry;
