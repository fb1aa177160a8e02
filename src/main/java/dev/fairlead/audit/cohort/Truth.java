package dev.fairlead.audit.cohort;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What was planted in an invented case, as it is written beside it: one line a case.
 *
 * @param id the case
 * @param planted what was done to it; empty for a clean case
 */
public record Truth(String id, List<Told> planted) {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** One thing planted; {@code kind} is {@code warns} or {@code not-assessed}. */
    public record Told(String criterion, String kind, String says, List<String> follows) {
        static Told of(Planted p) {
            return new Told(p.criterion(), p.kind().word(), p.says(), p.follows());
        }
    }

    public static Truth of(PlantedCase c) {
        return new Truth(c.made().id(), c.planted().stream().map(Told::of).toList());
    }

    /** The truth that a line holds; throws when it holds something else. */
    public static Truth parse(String line) throws JsonProcessingException {
        Truth read = JSON.readValue(line, Truth.class);
        if (read.id() == null
                || read.planted() == null
                || read.planted().stream().anyMatch(t -> t.criterion() == null || t.kind() == null)) {
            throw new com.fasterxml.jackson.databind.JsonMappingException(
                    null, "a line of truth has an id and a list of what was planted");
        }
        return read;
    }

    /** One line that ends with a line break. */
    public String line() {
        try {
            return JSON.writeValueAsString(this) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a record of texts can always be written", e);
        }
    }

    /** Criteria that have to warn, with consequences. */
    public Set<String> warns() {
        return criteria("warns");
    }

    /** Criteria that cannot be assessed, with consequences. */
    public Set<String> notAssessed() {
        return criteria("not-assessed");
    }

    private Set<String> criteria(String kind) {
        Set<String> all = new TreeSet<>();
        planted.stream().filter(t -> t.kind().equals(kind)).forEach(t -> {
            all.add(t.criterion());
            all.addAll(t.follows());
        });
        return all;
    }
}
