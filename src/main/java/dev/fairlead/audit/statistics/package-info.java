/** Statistics of counts over many cases: intervals, control limits, agreement; depends on nothing else of Fairlead. */
package dev.fairlead.audit.statistics;
