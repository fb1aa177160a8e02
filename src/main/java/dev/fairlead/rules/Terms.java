package dev.fairlead.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The conditions of all rules by criterion, and what was decided about them in the build; read from the DRL only when
 * asked for.
 */
final class Terms {
    private final Catalogue catalogue;
    private final RuleFiles files;
    private final Map<String, byte[]> decided;
    private Map<String, List<Term>> read;

    /** Conditions that still have to be read. */
    Terms(Catalogue catalogue, RuleFiles files) {
        this.catalogue = catalogue;
        this.files = files;
        this.decided = Map.of();
    }

    /** Conditions that the build has read; {@code decided} as {@link Decided#bytes} gives it. */
    Terms(Map<String, List<Term>> read, Map<String, byte[]> decided) {
        this.catalogue = null;
        this.files = null;
        this.read = read;
        this.decided = decided;
    }

    synchronized Map<String, List<Term>> all() {
        if (read == null) {
            Map<String, List<Term>> terms = new HashMap<>();
            catalogue
                    .criteria()
                    .forEach(c ->
                            terms.put(c.id(), DrlTerms.in(files.text(c.folder() + "/" + RuleFiles.DRL), c.about())));
            read = Map.copyOf(terms);
        }
        return read;
    }

    /** By criterion; empty for rules that were not built in. */
    Map<String, byte[]> decided() {
        return decided;
    }
}
