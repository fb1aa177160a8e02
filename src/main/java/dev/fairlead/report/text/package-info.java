/** Plain text for a terminal of 80 columns. */
package dev.fairlead.report.text;
