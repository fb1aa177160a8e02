/** Small statistics of repeated measurements and of rates over time; depends on nothing else of Fairlead. */
@NullMarked
package dev.fairlead.measure.statistics;

import org.jspecify.annotations.NullMarked;
