/** Beam elements of a space frame, straight and curved, and how nodes turn. */
package dev.fairlead.measure.mechanics.element;
