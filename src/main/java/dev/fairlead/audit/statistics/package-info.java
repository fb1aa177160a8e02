/** Statistics of counts over many cases: intervals, control limits, agreement; depends on nothing else of Fairlead. */
@NullMarked
package dev.fairlead.audit.statistics;

import org.jspecify.annotations.NullMarked;
