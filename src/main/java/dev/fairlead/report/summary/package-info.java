/** What every form of a report says first: may this go on, what decides, what to get and to measure again. */
package dev.fairlead.report.summary;
