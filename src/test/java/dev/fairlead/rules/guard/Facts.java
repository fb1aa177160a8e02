package dev.fairlead.rules.guard;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Facts as they are written in the rulebase's examples: a base in which everything passes, and patches on it. */
public final class Facts {
    private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(\\S*)");
    private static final Pattern TARGET = Pattern.compile("(\\w+)(?:\\[([^\\]]+)\\])?\\.(\\w+)");
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(com.fasterxml.jackson.core.StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private final List<CaseFact> all;

    private Facts(List<CaseFact> all) {
        this.all = List.copyOf(all);
    }

    public static JsonNode json(Path file) {
        try {
            return MAPPER.readTree(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(file + ": " + e.getMessage(), e);
        }
    }

    /** The base of the rulebase in {@code rules}. */
    public static Facts base(Path rules) {
        List<CaseFact> facts = new ArrayList<>();
        json(rules.resolve("base-facts.json"))
                .properties()
                .forEach(type -> type.getValue().forEach(node -> facts.add(fact(type(type.getKey()), node))));
        return new Facts(facts);
    }

    public static Facts of(List<CaseFact> facts) {
        return new Facts(facts);
    }

    public List<CaseFact> all() {
        return all;
    }

    /** These facts with the values of a patch such as {@code "LowerIncisor[tooth 41].recession": "1 mm"}. */
    public Facts with(Map<String, String> patch) {
        Facts changed = this;
        for (Map.Entry<String, String> e : patch.entrySet()) {
            changed = changed.with(e.getKey(), e.getValue());
        }
        return changed;
    }

    private Facts with(String target, String written) {
        Matcher m = TARGET.matcher(target);
        if (!m.matches()) {
            throw new IllegalArgumentException(target + ": write Type.component or Type[place words].component");
        }
        Class<? extends CaseFact> type = type(m.group(1));
        List<CaseFact> changed = new ArrayList<>();
        int hits = 0;
        for (CaseFact f : all) {
            boolean hit = f.getClass() == type
                    && (m.group(2) == null || f.place().words().equals(m.group(2)));
            hits += hit ? 1 : 0;
            changed.add(hit ? with(f, m.group(3), written) : f);
        }
        if (hits == 0) {
            throw new IllegalArgumentException(target + ": the base has no such fact");
        }
        return new Facts(changed);
    }

    /** {@code fact} with one component written anew. */
    public static CaseFact with(CaseFact fact, String component, String written) {
        return rebuilt(fact, component, c -> value(c, written, fact.place()));
    }

    /** {@code fact} with one component unknown. */
    public static CaseFact without(CaseFact fact, String component) {
        return with(fact, component, "unknown");
    }

    private static CaseFact rebuilt(
            CaseFact fact, String component, java.util.function.Function<RecordComponent, Object> to) {
        RecordComponent[] components = fact.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        boolean found = false;
        for (int i = 0; i < components.length; i++) {
            boolean hit = components[i].getName().equals(component);
            found |= hit;
            values[i] = hit ? to.apply(components[i]) : get(components[i], fact);
        }
        if (!found) {
            throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has no " + component);
        }
        return make(fact.getClass(), components, values);
    }

    /** The value of a component. */
    public static Object get(RecordComponent component, CaseFact fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static CaseFact fact(Class<? extends CaseFact> type, JsonNode node) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        Place place = new Place(
                node.path("place").path("pointer").asText(),
                node.path("place").path("words").asText());
        Map<String, JsonNode> left = new LinkedHashMap<>();
        node.properties().forEach(p -> left.put(p.getKey(), p.getValue()));
        for (int i = 0; i < components.length; i++) {
            JsonNode value = left.remove(components[i].getName());
            if (value == null) {
                throw new IllegalArgumentException(
                        "base-facts.json: " + type.getSimpleName() + ": " + components[i].getName() + " is missing");
            }
            values[i] = components[i].getType() == Place.class ? place : value(components[i], value.asText(), place);
        }
        if (!left.isEmpty()) {
            throw new IllegalArgumentException("base-facts.json: " + type.getSimpleName() + " has no " + left.keySet());
        }
        return make(type, components, values);
    }

    private static CaseFact make(Class<? extends CaseFact> type, RecordComponent[] components, Object[] values) {
        try {
            return type.getConstructor(Arrays.stream(components)
                            .map(RecordComponent::getType)
                            .toArray(Class<?>[]::new))
                    .newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object value(RecordComponent component, String written, Place place) {
        String pointer = place.pointer() + "/" + component.getName();
        Class<?> type = component.getType();
        if (type == Measured.class) {
            return switch (written) {
                case "unknown" -> Measured.unknown(pointer);
                case "does-not-apply" -> Measured.notApplicable();
                default -> quantity(written);
            };
        }
        if (type == Answer.class) {
            return switch (written) {
                case "yes" -> Answer.YES;
                case "no" -> Answer.NO;
                case "unknown" -> Answer.unknown(pointer);
                case "does-not-apply" -> Answer.NOT_APPLICABLE;
                default -> throw new IllegalArgumentException(component.getName() + ": " + written + " is no answer");
            };
        }
        return type == Tooth.class
                ? Tooth.of(Integer.parseInt(written))
                : type == Side.class
                        ? Side.valueOf(written.toUpperCase(java.util.Locale.ROOT))
                        : (Object) Integer.valueOf(written);
    }

    private static Measured quantity(String written) {
        Matcher m = QUANTITY.matcher(written);
        if (m.matches()) {
            for (Unit unit : Unit.values()) {
                if (unit.symbol().equals(m.group(2))) {
                    return Measured.exact(Double.parseDouble(m.group(1)), unit);
                }
            }
        }
        throw new IllegalArgumentException("\"" + written + "\" is no quantity");
    }

    @SuppressWarnings("unchecked")
    private static Class<? extends CaseFact> type(String name) {
        return (Class<? extends CaseFact>) Arrays.stream(CaseFact.class.getPermittedSubclasses())
                .filter(c -> c.getSimpleName().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name + " is no type of fact"));
    }
}
