/**
 * The wire of one case: where its marks fall, how its folds open, and what force the tied-in wire has as far as that
 * can be known.
 */
@NullMarked
package dev.fairlead.measure.wire;

import org.jspecify.annotations.NullMarked;
