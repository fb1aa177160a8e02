/** Puts measured values into the facts that the rules look at. */
@NullMarked
package dev.fairlead.measure.gather;

import org.jspecify.annotations.NullMarked;
