/** What the visits add up to: opening so far, weeks between, response. */
package dev.fairlead.measure.schedule;
