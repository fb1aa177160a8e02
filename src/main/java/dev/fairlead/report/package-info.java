/** Reports for people and programs: text, JSON, HTML, pictures and printed sheets, all from a checked case. */
@NullMarked
package dev.fairlead.report;

import org.jspecify.annotations.NullMarked;
