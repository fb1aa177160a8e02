/** Balance of a loaded frame, for small displacements and for large rotations. */
package dev.fairlead.measure.mechanics.solver;
