/** Reports for reading and for print: one page of HTML that needs nothing else, and the same as PDF. */
@NullMarked
package dev.fairlead.report.html;

import org.jspecify.annotations.NullMarked;
