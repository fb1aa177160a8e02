package dev.fairlead.audit.source;

/**
 * How tables are read.
 *
 * @param mapping how columns become fields
 * @param sheet name of the sheet of a workbook; empty to take the first that has a heading of fields
 * @param headingRow row of the heading, from 1; 0 to find it
 * @param strict a cell that cannot be read refuses the whole case, where else it loses that fact alone
 */
public record TableOptions(Mapping mapping, String sheet, int headingRow, boolean strict) {
    public static TableOptions of(Mapping mapping) {
        return new TableOptions(mapping, "", 0, false);
    }
}
