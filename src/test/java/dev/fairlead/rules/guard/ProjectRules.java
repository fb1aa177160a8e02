package dev.fairlead.rules.guard;

import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.verdict.Example;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The rulebase as it lies in the project, with its examples; loaded once for all tests. */
public final class ProjectRules {
    public static final Path FOLDER = Path.of("rules");

    private static final class Holder {
        static final Rulebase RULEBASE = Rulebase.fromFolder(FOLDER);
        static final ExampleFacts BASE = ExampleFacts.base(read(FOLDER.resolve(ExampleFacts.BASE)));
        static final List<Example> EXAMPLES = examples();
    }

    private ProjectRules() {}

    public static Rulebase rulebase() {
        return Holder.RULEBASE;
    }

    /** The facts on which every criterion passes. */
    public static ExampleFacts base() {
        return Holder.BASE;
    }

    /** All examples of all criteria. */
    public static List<Example> allExamples() {
        return Holder.EXAMPLES;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Example> examples() {
        try (Stream<Path> walk = Files.walk(FOLDER, 3)) {
            return walk.filter(p -> p.endsWith("examples.json"))
                    .map(Path::getParent)
                    .sorted()
                    .flatMap(f -> Example.in(f).stream())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
