/** What came of plans: predicted against measured, and what a clinic's own cases say about how teeth answer. */
@NullMarked
package dev.fairlead.audit.outcome;

import org.jspecify.annotations.NullMarked;
