/** Reports for programs: JSON with fixed keys in a fixed order. */
package dev.fairlead.report.json;
