/** Puts measured values into the facts that the rules look at. */
package dev.fairlead.measure.gather;
