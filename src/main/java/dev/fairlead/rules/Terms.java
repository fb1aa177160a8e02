package dev.fairlead.rules;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The conditions of all rules by criterion; read from the DRL when first asked for, since a plain check needs none of them. */
final class Terms {
    private final Catalogue catalogue;
    private final RuleFiles files;
    private Map<String, List<Term>> read;

    Terms(Catalogue catalogue, RuleFiles files) {
        this.catalogue = catalogue;
        this.files = files;
    }

    synchronized Map<String, List<Term>> all() {
        if (read == null) {
            Map<String, List<Term>> terms = new HashMap<>();
            catalogue.criteria().forEach(c -> terms.put(c.id(), Term.in(files.text(c.folder() + "/" + RuleFiles.DRL), c.about())));
            read = Map.copyOf(terms);
        }
        return read;
    }
}
