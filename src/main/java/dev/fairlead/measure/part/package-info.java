/**
 * Seams for what is worked out elsewhere or by more than one method: incisor position, geometry of the wire, forces.
 */
package dev.fairlead.measure.part;
