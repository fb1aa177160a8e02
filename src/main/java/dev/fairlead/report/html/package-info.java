/** Reports for reading and for print: one page of HTML that needs nothing else, and the same as PDF. */
package dev.fairlead.report.html;
