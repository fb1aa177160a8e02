/** Immutable records of one case, and quantities with unit and uncertainty. Depends on nothing else of Fairlead. */
@NullMarked
package dev.fairlead.model;

import org.jspecify.annotations.NullMarked;
