package dev.fairlead.web.edit;

import dev.fairlead.web.edit.EditResult.Refused;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the program remembers while it runs: values that were refused, which window wrote which value, versions lately
 * read.
 */
final class EditMemory {
    private static final int VERSIONS = 64;

    private final Map<String, Map<String, Refused>> refused = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> writers = new ConcurrentHashMap<>();
    private final Map<String, Opened> versions = new LinkedHashMap<>(VERSIONS, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Opened> eldest) {
            return size() > VERSIONS;
        }
    };

    /** What changes of one case wait for each other on. */
    Object of(String name) {
        return refused(name);
    }

    Map<String, Refused> refused(String name) {
        return refused.computeIfAbsent(name, n -> new ConcurrentHashMap<>());
    }

    /** Notes which window wrote a value (by pointer) or made a version (by hash). */
    void wrote(String name, String what, String window) {
        writers.put(name + '\0' + what, Set.of(window));
    }

    /** Notes that a window, too, means the value that another has written before it. */
    void meansToo(String name, String what, String window) {
        writers.merge(name + '\0' + what, Set.of(window), (before, one) -> {
            Set<String> all = new HashSet<>(before);
            all.addAll(one);
            return all;
        });
    }

    /** True when this window wrote the value or version that stands there, so that it is only ahead of itself. */
    boolean own(String name, String what, String window) {
        return !window.isEmpty()
                && writers.getOrDefault(name + '\0' + what, Set.of()).contains(window);
    }

    synchronized Optional<Opened> version(String name, String version) {
        return Optional.ofNullable(versions.get(name + '\0' + version));
    }

    synchronized void remember(Opened opened) {
        versions.put(opened.name() + '\0' + opened.file().version(), opened);
    }
}
