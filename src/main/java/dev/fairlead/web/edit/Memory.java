package dev.fairlead.web.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** What the program remembers while it runs: values that were refused, which window wrote which value, versions lately read. */
final class Memory {
    private static final int VERSIONS = 64;

    private final Map<String, Map<String, Refused>> refused = new ConcurrentHashMap<>();
    private final Map<String, String> writers = new ConcurrentHashMap<>();
    private final Map<String, Opened> versions = new LinkedHashMap<>(VERSIONS, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Opened> eldest) {
            return size() > VERSIONS;
        }
    };

    Map<String, Refused> refused(String name) {
        return refused.computeIfAbsent(name, n -> new ConcurrentHashMap<>());
    }

    /** Notes which window wrote a value (by pointer) or made a version (by hash). */
    void wrote(String name, String what, String window) {
        writers.put(name + '\0' + what, window);
    }

    /** True when this window wrote the value or version that stands there, so that it is only ahead of itself. */
    boolean own(String name, String what, String window) {
        return !window.isEmpty() && window.equals(writers.get(name + '\0' + what));
    }

    synchronized Optional<Opened> version(String name, String version) {
        return Optional.ofNullable(versions.get(name + '\0' + version));
    }

    synchronized void remember(Opened opened) {
        versions.put(opened.name() + '\0' + opened.file().version(), opened);
    }
}
