/** Balance of a loaded frame, for small displacements and for large rotations. */
@NullMarked
package dev.fairlead.measure.mechanics.solver;

import org.jspecify.annotations.NullMarked;
