package dev.fairlead.audit.source;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.shape.FieldShape;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The columns of one table, and how a row of it becomes the text of a case. */
final class Columns {
    private static final Pattern ENTRY = Pattern.compile("^/(?:visits|images|landmarks|pictured|waivers)/(\\d{1,3})/");

    private record Column(String heading, String pointer) {}

    private final Map<Integer, Column> byIndex;
    private final Mapping mapping;
    private final int width;
    private final int[] inOrder;

    private Columns(Map<Integer, Column> byIndex, Mapping mapping, int width) {
        this.byIndex = byIndex;
        this.mapping = mapping;
        this.width = width;
        this.inOrder = inOrder(byIndex);
    }

    /**
     * Reads the heading of a table; a heading that is not understood refuses the table, for a column left out in
     * silence would look like missing facts.
     */
    static Columns of(List<String> headings, Mapping mapping) throws TableException {
        Map<Integer, Column> byIndex = new HashMap<>();
        Map<String, String> taken = new HashMap<>();
        List<String> problems = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i) == null ? "" : headings.get(i).strip();
            if (heading.isEmpty() || mapping.ignore().contains(heading)) {
                continue;
            }
            String pointer = TableFields.pointer(mapping.columns().getOrDefault(heading, heading));
            if (pointer == null) {
                problems.add(TableFields.unknown(heading));
            } else if (taken.putIfAbsent(pointer, heading) != null) {
                problems.add("two columns hold " + pointer + ": " + TableFields.quoted(taken.get(pointer)) + " and "
                        + TableFields.quoted(heading));
            } else {
                byIndex.put(i, new Column(heading, pointer));
            }
        }
        if (!taken.containsKey("/id") && !mapping.constants().containsKey("id") && problems.isEmpty()) {
            problems.add("no column holds id, the pseudonym of the case");
        }
        if (!problems.isEmpty()) {
            throw new TableException("the heading is not understood: "
                    + String.join("; ", problems.subList(0, Math.min(5, problems.size())))
                    + (problems.size() > 5 ? "; and " + (problems.size() - 5) + " more" : ""));
        }
        return new Columns(byIndex, mapping, headings.size());
    }

    int width() {
        return width;
    }

    /** The field of a column, or null when the column is not read. */
    @Nullable
    FieldShape field(int column) {
        Column c = byIndex.get(column);
        return c == null ? null : CasePaths.field(c.pointer()).orElse(null);
    }

    /** The column of a field; -1 where there is none, or the case cannot be without it. */
    int at(String pointer) {
        for (int column : inOrder) {
            if (column(column).pointer().equals(pointer)) {
                FieldShape field = field(column);
                return field != null && field.kind().fact() ? column : -1;
            }
        }
        return -1;
    }

    String heading(int column) {
        return column(column).heading();
    }

    private Column column(int column) {
        return Objects.requireNonNull(byIndex.get(column));
    }

    /** The text of the case in a row, without the fields that are left out. */
    byte[] json(List<String> cells, Set<String> leftOut) throws TableException {
        if (cells.size() > width
                && cells.subList(width, cells.size()).stream().anyMatch(c -> c != null && !c.isBlank())) {
            throw new TableException(cells.size() + " cells under " + width
                    + " headings; likely a decimal comma in a table divided by commas");
        }
        CaseTree tree = CaseTree.empty();
        for (Map.Entry<String, String> e : mapping.constants().entrySet()) {
            put(tree, Objects.requireNonNull(TableFields.pointer(e.getKey())), e.getValue(), e.getKey());
        }
        for (int i : inOrder) {
            Column c = column(i);
            String cell = i < cells.size() ? cells.get(i) : null;
            if (cell != null && !cell.isBlank() && !leftOut.contains(c.pointer())) {
                put(
                        tree,
                        c.pointer(),
                        mapping.word(c.heading(), cell.strip(), Objects.requireNonNull(field(i))),
                        c.heading());
            }
        }
        return tree.text(CaseFormat.JSON).getBytes(StandardCharsets.UTF_8);
    }

    /** Entries of lists by their numbers, whatever the order of the columns: the first visit before the second. */
    private static int[] inOrder(Map<Integer, Column> byIndex) {
        return byIndex.keySet().stream()
                .sorted(Comparator.comparing((Integer i) ->
                                entry(Objects.requireNonNull(byIndex.get(i)).pointer()))
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(i -> i)
                .toArray();
    }

    private static int entry(String pointer) {
        Matcher m = ENTRY.matcher(pointer);
        return m.find() ? Integer.parseInt(m.group(1)) : -1;
    }

    private static void put(CaseTree tree, String pointer, String text, String heading) throws TableException {
        try {
            tree.set(pointer, text);
        } catch (IllegalArgumentException e) {
            throw new TableException(TableFields.quoted(heading) + " is filled while the entry before it is empty");
        }
    }
}
