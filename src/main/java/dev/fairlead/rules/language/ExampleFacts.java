package dev.fairlead.rules.language;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Facts as examples write them: a base in which everything passes, and patches on it. */
public record ExampleFacts(List<CaseFact> all) {
    private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(\\S*)");
    private static final Pattern TARGET = Pattern.compile("(\\w+)(?:\\[([^\\]]+)\\])?\\.(\\w+)");

    public ExampleFacts {
        all = List.copyOf(all);
    }

    /** What stands in a {@code base-facts.json}: for each type of fact its facts, component by component. */
    public static ExampleFacts base(String json) {
        List<CaseFact> facts = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        RuleFiles.json(RuleFiles.BASE, json, new TypeReference<Map<String, List<Map<String, JsonNode>>>>() {})
                .forEach((type, all) -> all.forEach(written -> {
                    try {
                        facts.add(fact(type(type), written));
                    } catch (IllegalArgumentException e) {
                        problems.add(RuleFiles.BASE + ": " + e.getMessage());
                    }
                }));
        RulebaseException.throwIfAny(problems);
        return new ExampleFacts(facts);
    }

    /** These facts with the values of a patch such as {@code "LowerIncisor[tooth 41].recession": "1 mm"}. */
    public ExampleFacts with(Map<String, String> patch) {
        List<CaseFact> changed = new ArrayList<>(all);
        patch.forEach((target, written) -> {
            Matcher m = TARGET.matcher(target);
            if (!m.matches()) {
                throw new IllegalArgumentException(target + ": write Type.component or Type[place words].component");
            }
            Class<? extends CaseFact> type = type(m.group(1));
            boolean[] hit = {false};
            changed.replaceAll(f -> {
                boolean here = f.getClass() == type
                        && (m.group(2) == null || f.place().words().equals(m.group(2)));
                hit[0] |= here;
                return here ? with(f, Map.of(m.group(3), written)) : f;
            });
            if (!hit[0]) {
                throw new IllegalArgumentException(target + ": the base has no such fact");
            }
        });
        return new ExampleFacts(changed);
    }

    /** {@code fact} with some components written anew. */
    public static CaseFact with(CaseFact fact, Map<String, String> written) {
        return make(fact.getClass(), fact.place(), written, c -> FactEdit.get(c, fact));
    }

    private static CaseFact fact(Class<? extends CaseFact> type, Map<String, JsonNode> all) {
        Map<String, String> written = new HashMap<>();
        all.forEach((component, value) -> written.put(component, value.asText()));
        JsonNode at = all.getOrDefault("place", MissingNode.getInstance());
        Place place = new Place(at.path("pointer").asText(), at.path("words").asText());
        return make(type, place, written, c -> {
            throw new IllegalArgumentException(type.getSimpleName() + ": " + c.getName()
                    + " is missing: mvn test -Dfairlead.accept=true -Dtest=BaseFactsTest writes it");
        });
    }

    /** A fact of what is written of its components; whatever is not, comes from elsewhere. */
    private static CaseFact make(
            Class<? extends CaseFact> type,
            Place place,
            Map<String, String> written,
            Function<RecordComponent, Object> otherwise) {
        Set<String> left = new TreeSet<>(written.keySet());
        left.remove("place");
        CaseFact made = FactEdit.make(type, c -> {
            if (c.getType() == Place.class) {
                return place;
            }
            left.remove(c.getName());
            String value = written.get(c.getName());
            return value == null ? otherwise.apply(c) : value(c, value, place);
        });
        if (!left.isEmpty()) {
            throw new IllegalArgumentException(type.getSimpleName() + " has no " + left);
        }
        return made;
    }

    private static Object value(RecordComponent component, String written, Place place) {
        Class<?> type = component.getType();
        if (type == Tooth.class) {
            return Tooth.of(Integer.parseInt(written));
        }
        if (type == Side.class) {
            return Side.valueOf(written.toUpperCase(Locale.ROOT));
        }
        if (type == int.class) {
            return Integer.valueOf(written);
        }
        String pointer = place.pointer() + "/" + component.getName();
        boolean answer = type == Answer.class;
        Matcher m = QUANTITY.matcher(written);
        Unit unit = m.matches() ? Unit.of(m.group(2)) : null;
        return switch (written) {
            case "unknown" -> answer ? Answer.unknown(pointer) : Measured.unknown(pointer);
            case "does-not-apply" -> answer ? Answer.NOT_APPLICABLE : Measured.notApplicable();
            default -> {
                if (answer && written.matches("yes|no")) {
                    yield Answer.of(written.equals("yes"));
                }
                if (!answer && unit != null) {
                    yield Measured.exact(Double.parseDouble(m.group(1)), unit);
                }
                throw new IllegalArgumentException(
                        component.getName() + ": \"" + written + "\" is no " + (answer ? "answer" : "quantity"));
            }
        };
    }

    private static Class<? extends CaseFact> type(String name) {
        Class<? extends CaseFact> type = CaseFact.type(name);
        if (type == null) {
            throw new IllegalArgumentException(name + " is no type of fact");
        }
        return type;
    }
}
