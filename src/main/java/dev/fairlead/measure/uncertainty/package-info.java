/**
 * How sure the outcome is: flips within the errors of measurement, and which measurement to repeat first. Knows nothing
 * of rules.
 */
@NullMarked
package dev.fairlead.measure.uncertainty;

import org.jspecify.annotations.NullMarked;
