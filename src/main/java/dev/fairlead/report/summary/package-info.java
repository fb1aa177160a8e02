/** What every form of a report says first: may this go on, what decides, what to get and to measure again. */
@NullMarked
package dev.fairlead.report.summary;

import org.jspecify.annotations.NullMarked;
