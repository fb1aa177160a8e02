package dev.fairlead.report.wire;

import dev.fairlead.model.Pointers;
import java.util.List;

/**
 * One line of a table.
 *
 * @param id name for programs
 * @param label name for people
 * @param cells one for each heading, or a single one for all
 * @param sources keys of the bibliography
 */
public record Line(String id, String label, List<Cell> cells, List<String> sources) {
    public Line {
        cells = List.copyOf(cells);
        sources = List.copyOf(sources);
    }

    /** Pointers to what is missing for the line. */
    public List<String> missing() {
        List<String> all = List.of();
        for (Cell c : cells) {
            all = c.value().applies() ? Pointers.union(all, c.value().missing()) : all;
        }
        return all;
    }
}
