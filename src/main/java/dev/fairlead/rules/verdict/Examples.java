package dev.fairlead.rules.verdict;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.language.ExampleFacts;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** The examples of a rulebase in the order of its criteria, with the facts that they start from. */
public record Examples(ExampleFacts base, List<Example> all) {
    public Examples {
        all = List.copyOf(all);
    }

    /** An example that ends otherwise than it expects. */
    public record Differs(Example example, List<String> differences) {}

    /**
     * Those of the program: from the {@code rules} folder beside it, as its rules are, or those that it was built with.
     */
    public static Examples ofProgram(Catalogue catalogue) {
        RuleFiles files = filesOfProgram();
        return of(catalogue, files, files);
    }

    /** Those that stand in a folder; they start from its own base facts, or from those of the program. */
    public static Examples in(Path folder, Catalogue catalogue) {
        RuleFiles files = RuleFiles.examples(folder);
        return of(catalogue, files, files.text(RuleFiles.BASE) != null ? files : filesOfProgram());
    }

    private static RuleFiles filesOfProgram() {
        Path source = BuiltIn.source();
        return source != null ? RuleFiles.examples(source) : BuiltIn.examples();
    }

    private static Examples of(Catalogue catalogue, RuleFiles files, RuleFiles withBase) {
        String base = Objects.requireNonNull(withBase.text(RuleFiles.BASE), RuleFiles.BASE);
        List<Example> all = catalogue.criteria().stream()
                .flatMap(c -> Example.read(c, files).stream())
                .toList();
        return new Examples(ExampleFacts.base(base), all);
    }

    /** The examples of one criterion alone. */
    public Examples of(String criterion) {
        return new Examples(
                base,
                all.stream().filter(e -> e.criterion().id().equals(criterion)).toList());
    }

    /** Judges every example; those that end otherwise than they expect. */
    public List<Differs> differing(Judge judge) {
        return all.stream()
                .map(e -> new Differs(e, e.differences(judge, base)))
                .filter(d -> !d.differences().isEmpty())
                .toList();
    }
}
