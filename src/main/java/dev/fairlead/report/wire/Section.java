package dev.fairlead.report.wire;

import dev.fairlead.model.Pointers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table with its heading and what must be known to read it.
 *
 * @param id name for programs
 * @param head headings of the columns beside the label; empty for a single column without one
 * @param notes what a reader must know; also why there is no number
 */
public record Section(String id, String title, List<String> head, List<Line> lines, List<String> notes) {
    static final List<String> SIDES = List.of("right", "left");

    public Section {
        head = List.copyOf(head);
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
    }

    /** Pointers to what is missing for any of the lines. */
    public List<String> missing() {
        List<String> all = List.of();
        for (Line l : lines) {
            all = Pointers.union(all, l.missing());
        }
        return all;
    }

    /** A table that is filled line by line. */
    static final class Draft {
        private final String id;
        private final String title;
        private final List<String> head;
        private final List<Line> lines = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();

        Draft(String id, String title, List<String> head) {
            this.id = id;
            this.title = title;
            this.head = head;
        }

        Draft line(String name, String label, List<Cell> cells, String... sources) {
            lines.add(new Line(name, label, cells, Arrays.asList(sources)));
            return this;
        }

        Draft note(String text) {
            notes.add(text);
            return this;
        }

        Section done() {
            return new Section(id, title, head, lines, notes);
        }
    }
}
