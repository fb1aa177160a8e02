package dev.fairlead.audit.source;

import dev.fairlead.intake.spelling.Privacy;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A row of a table: its cells, and what is to be told of them. */
final class TableRow implements Item.RowCase {
    private final Columns columns;
    private final List<String> cells;
    private final Map<Integer, String> bad;
    private final boolean strict;

    /** {@code bad} tells why a cell of that column holds nothing that can be read. */
    TableRow(Columns columns, List<String> cells, Map<Integer, String> bad, boolean strict) {
        this.columns = columns;
        this.cells = cells;
        this.bad = new LinkedHashMap<>(bad);
        this.strict = strict;
        if (cells.size() < columns.width()) {
            this.bad.put(
                    cells.size(),
                    "the row has " + cells.size() + " cells under " + columns.width() + " headings: is it cut short?");
        }
    }

    @Override
    public byte[] json(Set<String> leftOut) throws TableException {
        if (strict && !bad.isEmpty()) {
            throw new TableException(String.join("; ", bad.values()));
        }
        return columns.json(cells, leftOut);
    }

    @Override
    public List<String> notes() {
        return new ArrayList<>(bad.values());
    }

    @Override
    public Optional<String> mayLeaveOut(String pointer) {
        int column = strict ? -1 : columns.at(pointer);
        boolean private_ = column < 0
                || column >= cells.size()
                || cells.get(column) == null
                || Privacy.text(cells.get(column)) != null;
        return private_ ? Optional.empty() : Optional.of("column " + TableFields.quoted(columns.heading(column)));
    }
}
