/**
 * The arch of one case: which curve stands for it, how a wire fits it, where the plan puts the incisors; with errors
 * and working.
 */
@NullMarked
package dev.fairlead.measure.arch;

import org.jspecify.annotations.NullMarked;
