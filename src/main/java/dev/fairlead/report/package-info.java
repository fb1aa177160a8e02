/** Reports for people and programs: text, JSON, HTML, pictures and printed sheets, all from a checked case. */
package dev.fairlead.report;
