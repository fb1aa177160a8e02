package dev.fairlead.spark;

import dev.fairlead.model.Stage;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the job is called: by the options of {@code audit}, as far as a cluster can have them.
 *
 * @param in file or folder: one case of JSON a line, or Parquet (a path that ends in .parquet)
 * @param out folder for findings, summary and residents; must not exist
 * @param column of a Parquet input, the column that holds the text of a case
 * @param rules folder of a rulebase or overlay, on every machine; empty for the built-in
 * @param date day for which to judge; empty for the day that each case names
 * @param forces whether the beam model of the wire is solved; most of the time goes there
 * @param stage as of which to judge; empty for the stage that each case names
 */
record SparkOptions(String in, String out, String column, String rules, String date, String stage, boolean forces)
        implements Serializable {
    static final String USAGE =
            "usage: SparkAudit PATH -o FOLDER [--column NAME] [--rules DIR] [--date DAY] [--stage STAGE] [--without-forces]";
    private static final List<String> KNOWN = List.of("--output", "--column", "--rules", "--date", "--stage");

    static SparkOptions of(String... args) {
        Map<String, String> given = new HashMap<>();
        boolean forces = true;
        for (int i = 0; i < args.length; i++) {
            String name = args[i].equals("-o") ? "--output" : args[i];
            if (name.equals("--without-forces")) {
                forces = false;
            } else if (!name.startsWith("-") && !given.containsKey("")) {
                given.put("", name);
            } else if (!KNOWN.contains(name) || i + 1 == args.length || given.put(name, args[++i]) != null) {
                throw new IllegalArgumentException("not understood: " + name + "\n" + USAGE);
            }
        }
        if (!given.containsKey("") || !given.containsKey("--output")) {
            throw new IllegalArgumentException("a path of cases and a folder to write to are needed\n" + USAGE);
        }
        SparkOptions o = new SparkOptions(
                given.get(""),
                given.get("--output"),
                given.getOrDefault("--column", "case"),
                given.getOrDefault("--rules", ""),
                given.getOrDefault("--date", ""),
                given.getOrDefault("--stage", ""),
                forces);
        o.day();
        o.reached();
        if (!o.rules().isEmpty() && !Files.isDirectory(Path.of(o.rules()))) {
            throw new IllegalArgumentException("--rules " + o.rules() + " is no folder");
        }
        return o;
    }

    Optional<LocalDate> day() {
        try {
            return date.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(date));
        } catch (java.time.DateTimeException e) {
            throw new IllegalArgumentException(date + " is no day; write it such as 2026-10-01", e);
        }
    }

    Optional<Stage> reached() {
        return stage.isEmpty()
                ? Optional.empty()
                : Optional.of(Arrays.stream(Stage.values())
                        .filter(s -> s.word().equals(stage))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(stage + " is no stage")));
    }
}
