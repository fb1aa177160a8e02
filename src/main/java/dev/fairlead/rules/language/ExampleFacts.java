package dev.fairlead.rules.language;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.RuleFiles;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
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
        RuleFiles.json(RuleFiles.BASE, json, new TypeReference<Map<String, List<Map<String, Object>>>>() {})
                .forEach((type, all) -> all.forEach(written -> facts.add(fact(type(type), written))));
        return new ExampleFacts(facts);
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
        return make(fact.getClass(), fact.place(), written, c -> FactEdit.get(c, fact));
    }

    private static CaseFact fact(Class<? extends CaseFact> type, Map<String, Object> written) {
        Place place = written.get("place") instanceof Map<?, ?> p
                ? new Place(String.valueOf(p.get("pointer")), String.valueOf(p.get("words")))
                : Place.CASE;
        return make(type, place, written, c -> {
            throw new IllegalArgumentException(RuleFiles.BASE + ": " + type.getSimpleName() + ": " + c.getName()
                    + " is missing: mvn test -Dfairlead.accept=true -Dtest=BaseFactsTest writes it");
        });
    }

    private static CaseFact make(
            Class<? extends CaseFact> type,
            Place place,
            Map<String, ?> written,
            Function<RecordComponent, Object> otherwise) {
        Set<String> left = new HashSet<>(written.keySet());
        CaseFact made = FactEdit.make(type, c -> {
            Object value = written.get(c.getName());
            if (value == null) {
                return otherwise.apply(c);
            }
            left.remove(c.getName());
            return c.getType() == Place.class ? place : value(c, value.toString(), place);
        });
        if (!left.isEmpty()) {
            throw new IllegalArgumentException(type.getSimpleName() + " has no " + left);
        }
        return made;
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

    private static Class<? extends CaseFact> type(String name) {
        Class<? extends CaseFact> type = CaseFact.type(name);
        if (type == null) {
            throw new IllegalArgumentException(name + " is no type of fact");
        }
        return type;
    }
}
