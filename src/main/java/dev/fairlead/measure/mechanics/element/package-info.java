/** Beam elements of a space frame, straight and curved, and how nodes turn. */
@NullMarked
package dev.fairlead.measure.mechanics.element;

import org.jspecify.annotations.NullMarked;
