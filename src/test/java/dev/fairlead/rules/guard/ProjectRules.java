package dev.fairlead.rules.guard;

import dev.fairlead.rules.language.ExampleFacts;
import dev.fairlead.rules.verdict.Example;
import dev.fairlead.rules.verdict.Examples;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

/** The rulebase as it lies in the project, with its examples; loaded once for all tests. */
public final class ProjectRules {
    public static final Path FOLDER = Path.of("rules");

    private static final class Holder {
        static final Rulebase RULEBASE = Rulebase.load(FOLDER);
        static final Examples EXAMPLES =
                Examples.in(FOLDER, RULEBASE.catalogue().criteria());
        /** By folder: what is drawn by chance among them is to stay the same when a criterion changes its place. */
        static final List<Example> SORTED = EXAMPLES.all().stream()
                .sorted(Comparator.comparing(e -> e.criterion().folder()))
                .toList();
    }

    private ProjectRules() {}

    public static Rulebase rulebase() {
        return Holder.RULEBASE;
    }

    /** The facts on which every criterion passes. */
    public static ExampleFacts base() {
        return Holder.EXAMPLES.base();
    }

    /** All examples of all criteria. */
    public static List<Example> allExamples() {
        return Holder.SORTED;
    }
}
