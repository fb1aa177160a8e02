package dev.fairlead.rules.catalogue;

import java.util.LinkedHashSet;
import java.util.List;

/** A rulebase that cannot be used, with every problem found in it. */
public final class RulebaseException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<String> problems;

    public RulebaseException(List<String> problems) {
        super(String.join("\n", new LinkedHashSet<>(problems)));
        this.problems = List.copyOf(new LinkedHashSet<>(problems));
    }

    /** Throws with all problems when there are any. */
    public static void throwIfAny(List<String> problems) {
        if (!problems.isEmpty()) {
            throw new RulebaseException(problems);
        }
    }

    /** One sentence each, with the file it stands in. */
    public List<String> problems() {
        return problems;
    }
}
