package dev.fairlead.measure.working;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A table of published figures that stands beside a class as text: the names of its columns, then a line for each row,
 * cells parted by bars; lines that begin with # are for people. A check reads several such tables once, so they are no
 * richer than that.
 */
public final class Resource {
    private static final String BAR = "|";

    private Resource() {}

    /** One row of a table; a cell that is not there or not of its kind is our own error. */
    public record Entry(String table, List<String> columns, List<String> cells) {
        private String cell(String column) {
            int at = columns.indexOf(column);
            if (at < 0 || at >= cells.size()) {
                throw new IllegalStateException(table + " has no " + column + " in " + cells);
            }
            return cells.get(at);
        }

        public String text(String column) {
            return cell(column);
        }

        public double number(String column) {
            return number(column, cell(column));
        }

        /** Yes or no. */
        public boolean flag(String column) {
            String said = cell(column);
            if (!said.equals("yes") && !said.equals("no")) {
                throw wrong(column, said);
            }
            return said.equals("yes");
        }

        /** Words parted by blanks. */
        public List<String> texts(String column) {
            return parts(cell(column), " ");
        }

        /** Numbers parted by blanks. */
        public double[] numbers(String column) {
            List<String> words = texts(column);
            double[] numbers = new double[words.size()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = number(column, words.get(i));
            }
            return numbers;
        }

        private double number(String column, String said) {
            try {
                return Double.parseDouble(said);
            } catch (NumberFormatException e) {
                throw wrong(column, said);
            }
        }

        private IllegalStateException wrong(String column, String said) {
            return new IllegalStateException(table + ": " + said + " is no " + column);
        }
    }

    /** The rows of the resource {@code name} in the package of {@code beside}. */
    public static List<Entry> read(Class<?> beside, String name) {
        List<Entry> rows = new ArrayList<>();
        List<String> columns = null;
        for (String line : parts(content(beside, name), "\n")) {
            if (line.startsWith("#")) {
                continue;
            }
            if (columns == null) {
                columns = parts(line, BAR);
            } else {
                rows.add(new Entry(name, columns, parts(line, BAR)));
            }
        }
        return rows;
    }

    private static String content(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is not beside " + beside.getName());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + name, e);
        }
    }

    /** Trimmed; an empty last one counts for nothing. */
    private static List<String> parts(String text, String between) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int to = text.indexOf(between); to >= 0; to = text.indexOf(between, from)) {
            parts.add(text.substring(from, to).trim());
            from = to + between.length();
        }
        if (from < text.length()) {
            parts.add(text.substring(from).trim());
        }
        return parts;
    }
}
