/** Writes an audit: lines, tables, workbook, Parquet, summary as text and JSON. */
package dev.fairlead.audit.write;
