package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Finding;
import dev.fairlead.measure.working.Working;
import dev.fairlead.rules.catalogue.Source;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The sources of one report, numbered in the order in which they are first cited. */
public final class Cited {
    /** A source with its number, and how far it can be relied on. */
    public record Note(int number, String citation, String kind) {}

    private final Map<String, Note> notes = new LinkedHashMap<>();

    Cited(Checked checked) {
        for (Finding f : checked.report().findings().forReading()) {
            f.sources().forEach(s -> add(s.key(), s));
        }
        for (Working w : checked.report().workings()) {
            w.sources().forEach(key -> add(key, checked.catalogue().sources().get(key)));
        }
    }

    /** A site's own rulebase may leave out what only worked numbers cite: then the key is all that can be told. */
    private void add(String key, @Nullable Source source) {
        notes.computeIfAbsent(
                key,
                k -> source == null
                        ? new Note(notes.size() + 1, key, "not in the bibliography of this rulebase")
                        : new Note(
                                notes.size() + 1,
                                source.citation(),
                                source.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
    }

    List<Note> notes(List<Source> sources) {
        return sources.stream().map(s -> notes.get(s.key())).toList();
    }

    List<Note> byKey(List<String> keys) {
        return keys.stream().map(notes::get).toList();
    }

    List<Note> all() {
        return List.copyOf(notes.values());
    }
}
