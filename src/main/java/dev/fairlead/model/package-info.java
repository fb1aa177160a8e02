/** Immutable records of one case, and quantities with unit and uncertainty. Depends on nothing else of Fairlead. */
package dev.fairlead.model;
