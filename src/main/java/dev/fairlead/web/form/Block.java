package dev.fairlead.web.form;

import java.util.List;

/** A part of a section's page. */
public sealed interface Block {

    /** Single fields below each other. */
    record Fields(String title, List<FieldView> fields) implements Block {}

    /**
     * The same fields of several places beside each other: right and left, or tooth by tooth.
     *
     * @param columns what stands over each column
     * @param chart true for the tooth chart, whose columns are narrow
     */
    record Grid(String title, List<String> columns, List<Row> rows, boolean chart) implements Block {
        /** True where a row holds states rather than measurements. */
        public boolean states() {
            return rows.stream().anyMatch(r -> !r.cells().get(0).options().isEmpty());
        }
    }

    /** One line of a grid; a cell is null where there is no such field. */
    record Row(String label, String help, String unit, List<FieldView> cells) {}

    /** Entries of a list, each with its fields; {@code fresh} is the pointer of one more. */
    record Entries(String title, String help, String pointer, List<Entry> entries, String fresh) implements Block {}

    /** One entry of a list; of many, only the fresh one, which is being added, is open. */
    record Entry(String title, String pointer, List<Block> blocks, boolean open, boolean fresh) {}
}
