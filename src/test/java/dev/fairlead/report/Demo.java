package dev.fairlead.report;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Demo cases, checked by the built-in rules. */
public final class Demo {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());

    private static final Map<Path, Checked> DONE = new ConcurrentHashMap<>();

    private Demo() {}

    /** All that can be read. */
    public static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("cases"))) {
            return all.filter(p -> !p.getFileName().toString().startsWith("gull-"))
                    .sorted()
                    .toList();
        }
    }

    /** Checked once; what comes of it does not change. */
    public static Checked checked(Path file) {
        return DONE.computeIfAbsent(file, f -> {
            try {
                return checked(Files.readString(f), f.getFileName().toString());
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }

    /** The demo case whose file begins so. */
    public static Checked checked(String id) throws IOException {
        return checked(files().stream()
                .filter(p -> p.getFileName().toString().startsWith(id + "-"))
                .findFirst()
                .orElseThrow());
    }

    public static String text(String id) throws IOException {
        return Files.readString(files().stream()
                .filter(p -> p.getFileName().toString().startsWith(id + "-"))
                .findFirst()
                .orElseThrow());
    }

    /** A case as it stands in a file of that name. */
    public static Checked checked(String content, String name) {
        return checked(CHECKER, content, name);
    }

    public static Checked checked(Checker checker, String content, String name) {
        CaseReading reading = CaseReader.read(content.getBytes(StandardCharsets.UTF_8), name, CaseFormat.BY_NAME);
        return checker.check(
                reading.value()
                        .orElseThrow(() ->
                                new IllegalArgumentException(reading.problems().toString())),
                "0".repeat(64),
                reading.problems(),
                CheckOptions.USUAL);
    }
}
