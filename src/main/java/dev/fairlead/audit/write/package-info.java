/** Writes an audit: lines, tables, workbook, Parquet, summary as text and JSON. */
@NullMarked
package dev.fairlead.audit.write;

import org.jspecify.annotations.NullMarked;
