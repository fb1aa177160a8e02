package dev.fairlead.spark;

import dev.fairlead.model.Stage;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How the job is called.
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
            "usage: SparkAudit --in PATH --out FOLDER [--column NAME] [--rules FOLDER] [--date DAY] [--stage STAGE] [--without-forces]";
    private static final List<String> KNOWN = List.of("--in", "--out", "--column", "--rules", "--date", "--stage");

    static SparkOptions of(String... args) {
        Map<String, String> given = new HashMap<>();
        boolean forces = true;
        for (int i = 0; i < args.length; i += 2) {
            if (args[i].equals("--without-forces")) {
                forces = false;
                i--;
            } else if (!KNOWN.contains(args[i]) || i + 1 == args.length || given.put(args[i], args[i + 1]) != null) {
                throw new IllegalArgumentException(USAGE + "; not understood: " + args[i]);
            }
        }
        if (!given.containsKey("--in") || !given.containsKey("--out")) {
            throw new IllegalArgumentException(USAGE);
        }
        SparkOptions o = new SparkOptions(
                given.get("--in"),
                given.get("--out"),
                given.getOrDefault("--column", "case"),
                given.getOrDefault("--rules", ""),
                given.getOrDefault("--date", ""),
                given.getOrDefault("--stage", ""),
                forces);
        o.day();
        o.reached();
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
