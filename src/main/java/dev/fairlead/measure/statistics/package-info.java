/** Small statistics of repeated measurements and of rates over time; depends on nothing else of Fairlead. */
package dev.fairlead.measure.statistics;
