package dev.fairlead.rules.language;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Checks texts and DRL of a rulebase without compiling anything. */
public final class RulebaseCheck {
    private RulebaseCheck() {}

    /** The catalogue of {@code files}; throws with every problem of texts, or of DRL, when there are any. */
    public static Catalogue check(RuleFiles files) {
        Catalogue catalogue = CatalogueReader.read(files);
        List<String> problems = new ArrayList<>(TextCheck.problems(catalogue));
        for (Criterion c : catalogue.criteria()) {
            String drl = Objects.requireNonNull(files.text(c.drl()), c.drl());
            problems.addAll(DrlLint.problems(c, drl, catalogue));
        }
        RulebaseException.throwIfAny(problems);
        return catalogue;
    }
}
