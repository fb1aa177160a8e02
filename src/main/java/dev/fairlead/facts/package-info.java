/**
 * What the rules look at: small immutable records, each with its place in the case, made by {@code measure} from a
 * case.
 */
@NullMarked
package dev.fairlead.facts;

import org.jspecify.annotations.NullMarked;
