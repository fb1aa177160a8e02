/** What the visits add up to, and what lies ahead: openings so far, response, forecast, shedding of primary teeth. */
@NullMarked
package dev.fairlead.measure.schedule;

import org.jspecify.annotations.NullMarked;
