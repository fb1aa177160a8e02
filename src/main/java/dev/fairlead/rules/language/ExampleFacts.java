package dev.fairlead.rules.language;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.catalogue.StrictJson;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Facts as examples write them: a base in which everything passes, and patches on it. */
public final class ExampleFacts {
    /** The base, beside the criteria. */
    public static final String BASE = "base-facts.json";

    private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*(\\S*)");
    private static final Pattern TARGET = Pattern.compile("(\\w+)(?:\\[([^\\]]+)\\])?\\.(\\w+)");

    private final List<CaseFact> all;

    public ExampleFacts(List<CaseFact> all) {
        this.all = List.copyOf(all);
    }

    /** What stands in a {@code base-facts.json}: for each type of fact its facts, component by component. */
    public static ExampleFacts base(String json) {
        List<String> problems = new ArrayList<>();
        Map<String, List<Map<String, Object>>> read = StrictJson.read(
                BASE, json, new TypeReference<LinkedHashMap<String, List<Map<String, Object>>>>() {}, problems);
        if (read == null) {
            throw new RulebaseException(problems);
        }
        List<CaseFact> facts = new ArrayList<>();
        read.forEach((type, all) -> all.forEach(written -> facts.add(fact(type(type), written))));
        return new ExampleFacts(facts);
    }

    public List<CaseFact> all() {
        return all;
    }

    /** These facts with the values of a patch such as {@code "LowerIncisor[tooth 41].recession": "1 mm"}. */
    public ExampleFacts with(Map<String, String> patch) {
        ExampleFacts changed = this;
        for (Map.Entry<String, String> e : patch.entrySet()) {
            changed = changed.with(e.getKey(), e.getValue());
        }
        return changed;
    }

    private ExampleFacts with(String target, String written) {
        Matcher m = TARGET.matcher(target);
        if (!m.matches()) {
            throw new IllegalArgumentException(target + ": write Type.component or Type[place words].component");
        }
        Class<? extends CaseFact> type = type(m.group(1));
        List<CaseFact> changed = new ArrayList<>();
        boolean hit = false;
        for (CaseFact f : all) {
            boolean here = f.getClass() == type
                    && (m.group(2) == null || f.place().words().equals(m.group(2)));
            hit |= here;
            changed.add(here ? with(f, Map.of(m.group(3), written)) : f);
        }
        if (!hit) {
            throw new IllegalArgumentException(target + ": the base has no such fact");
        }
        return new ExampleFacts(changed);
    }

    /** {@code fact} with some components written anew. */
    public static CaseFact with(CaseFact fact, Map<String, String> written) {
        RecordComponent[] components = fact.getClass().getRecordComponents();
        Object[] values = new Object[components.length];
        int found = 0;
        for (int i = 0; i < components.length; i++) {
            String text = written.get(components[i].getName());
            found += text == null ? 0 : 1;
            values[i] = text == null ? get(components[i], fact) : value(components[i], text, fact.place());
        }
        if (found < written.size()) {
            throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has not all of " + written.keySet());
        }
        return make(fact.getClass(), components, values);
    }

    /** {@code fact} with one component unknown. */
    public static CaseFact without(CaseFact fact, String component) {
        return with(fact, Map.of(component, "unknown"));
    }

    /** The value of a component. */
    public static Object get(RecordComponent component, CaseFact fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static CaseFact fact(Class<? extends CaseFact> type, Map<String, Object> written) {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        Map<String, Object> left = new LinkedHashMap<>(written);
        Place place = left.get("place") instanceof Map<?, ?> p
                ? new Place(String.valueOf(p.get("pointer")), String.valueOf(p.get("words")))
                : Place.CASE;
        for (int i = 0; i < components.length; i++) {
            Object value = left.remove(components[i].getName());
            if (value == null) {
                throw new IllegalArgumentException(BASE + ": " + type.getSimpleName() + ": " + components[i].getName()
                        + " is missing: mvn test -Dfairlead.accept=true -Dtest=BaseFactsTest writes it");
            }
            values[i] = components[i].getType() == Place.class ? place : value(components[i], value.toString(), place);
        }
        if (!left.isEmpty()) {
            throw new IllegalArgumentException(BASE + ": " + type.getSimpleName() + " has no " + left.keySet());
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
                        ? Side.valueOf(written.toUpperCase(Locale.ROOT))
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
