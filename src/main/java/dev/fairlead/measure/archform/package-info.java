/**
 * Form of the lower arch as pure numerics in mm: landmarks, curves, fits, class, misfit of a wire. Depends on nothing
 * else of Fairlead.
 */
@NullMarked
package dev.fairlead.measure.archform;

import org.jspecify.annotations.NullMarked;
