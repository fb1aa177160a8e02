/** Reports for programs: JSON with fixed keys in a fixed order. */
@NullMarked
package dev.fairlead.report.json;

import org.jspecify.annotations.NullMarked;
