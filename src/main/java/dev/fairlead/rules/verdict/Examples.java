package dev.fairlead.rules.verdict;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.language.ExampleFacts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The examples of a rulebase in the order of its criteria, with the facts that they start from. */
public record Examples(ExampleFacts base, List<Example> all) {
    public Examples {
        all = List.copyOf(all);
    }

    /** One example as it stands in the file. */
    private record Written(String name, Map<String, String> set, Map<String, String> expects) {}

    /** An example that ends otherwise than it expects. */
    public record Differs(Example example, List<String> differences) {}

    /**
     * The examples of some criteria that stand in a folder, or those of the program where there is none: from the
     * {@code rules} folder beside it, as its rules are, or those that it was built with. They start from the base facts
     * of the folder, or from those of the program.
     */
    public static Examples in(@Nullable Path folder, List<Criterion> criteria) {
        RuleFiles program = BuiltIn.examples();
        RuleFiles files = folder == null ? program : RuleFiles.examples(folder);
        String base = files.texts().getOrDefault(RuleFiles.BASE, program.text(RuleFiles.BASE));
        List<Example> all = new ArrayList<>();
        for (Criterion c : criteria) {
            List<Written> written = files.json(Example.file(c), new TypeReference<>() {}, List.of());
            written.forEach(w -> all.add(new Example(c, w.name(), w.set(), w.expects())));
        }
        return new Examples(ExampleFacts.base(Objects.requireNonNull(base, RuleFiles.BASE)), all);
    }

    /** Judges every example; those that end otherwise than they expect. */
    public List<Differs> differing(Judge judge) {
        return all.stream()
                .map(e -> new Differs(e, e.differences(judge, base)))
                .filter(d -> !d.differences().isEmpty())
                .toList();
    }
}
