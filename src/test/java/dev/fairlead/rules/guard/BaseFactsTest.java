package dev.fairlead.rules.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FactEdit;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.RuleFiles;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The facts that examples start from have every component of every fact. What a new component is there is taken from
 * the clean demo case by {@code mvn test -Dfairlead.accept=true -Dtest=BaseFactsTest}; what is written already stays.
 */
class BaseFactsTest {
    private static final Path BASE = ProjectRules.FOLDER.resolve(RuleFiles.BASE);
    private static final Path CLEAN = Path.of("cases/heron-07-clean.yaml");
    private static final JsonMapper JSON = JsonMapper.builder().build();

    @Test
    void everyComponentHasAValueOnTheBase() throws IOException {
        Map<String, List<Map<String, Object>>> written =
                JSON.readValue(BASE.toFile(), new TypeReference<LinkedHashMap<String, List<Map<String, Object>>>>() {});
        List<CaseFact> clean = Measures.of(
                        CaseReader.read(CLEAN).value().orElseThrow(), Optional.empty(), Workbook.none())
                .facts();
        Map<String, List<Map<String, Object>>> whole = new LinkedHashMap<>(written);
        for (Class<?> type : CaseFact.class.getPermittedSubclasses()) {
            List<CaseFact> of = clean.stream().filter(f -> f.getClass() == type).toList();
            List<Map<String, Object>> facts = new ArrayList<>();
            for (Map<String, Object> fact : written.getOrDefault(type.getSimpleName(), placesOf(of))) {
                facts.add(whole(type, fact, of));
            }
            whole.put(type.getSimpleName(), facts);
        }
        if (Boolean.getBoolean("fairlead.accept") && !whole.equals(written)) {
            Files.writeString(BASE, text(whole));
        }
        assertThat(whole)
                .as("a component is new or gone: mvn test -Dfairlead.accept=true -Dtest=BaseFactsTest takes it from "
                        + CLEAN + " (fill it in there first); then see that everything still passes on the base")
                .isEqualTo(JSON.readValue(
                        BASE.toFile(), new TypeReference<LinkedHashMap<String, List<Map<String, Object>>>>() {}));
    }

    private static List<Map<String, Object>> placesOf(List<CaseFact> facts) {
        return facts.stream().map(BaseFactsTest::place).toList();
    }

    private static Map<String, Object> place(CaseFact fact) {
        Map<String, Object> place = new LinkedHashMap<>();
        place.put("pointer", fact.place().pointer());
        place.put("words", fact.place().words());
        return new LinkedHashMap<>(Map.of("place", place));
    }

    /** The components of the type, in their order: as written, or as the clean case has them at the same place. */
    private static Map<String, Object> whole(Class<?> type, Map<String, Object> fact, List<CaseFact> clean) {
        Map<String, Object> whole = new LinkedHashMap<>();
        for (RecordComponent c : type.getRecordComponents()) {
            whole.put(
                    c.getName(),
                    fact.containsKey(c.getName())
                            ? fact.get(c.getName())
                            : clean.stream()
                                    .filter(f -> place(f).get("place").equals(fact.get("place")))
                                    .findFirst()
                                    .or(() -> clean.stream().findFirst())
                                    .map(f -> written(FactEdit.get(c, f)))
                                    .orElse("unknown"));
        }
        return whole;
    }

    private static Object written(Object value) {
        if (value instanceof Measured m) {
            return m.known()
                    ? (new BigDecimal(m.value()).round(new MathContext(3)).toPlainString() + " "
                                    + m.unit().symbol())
                            .strip()
                    : m.applies() ? "unknown" : "does-not-apply";
        }
        if (value instanceof Answer a) {
            return a.yes() ? "yes" : a.no() ? "no" : a.applies() ? "unknown" : "does-not-apply";
        }
        return value instanceof Integer ? value : value.toString().toLowerCase(java.util.Locale.ROOT);
    }

    /** One line for each fact, as people read it. */
    private static String text(Map<String, List<Map<String, Object>>> base) throws IOException {
        StringBuilder all = new StringBuilder("{\n");
        for (Map.Entry<String, List<Map<String, Object>>> type : base.entrySet()) {
            List<String> lines = new ArrayList<>();
            for (Map<String, Object> fact : type.getValue()) {
                lines.add("    "
                        + JSON.writeValueAsString(fact).replace("\":", "\": ").replace(",\"", ", \""));
            }
            all.append(all.length() > 2 ? ",\n" : "")
                    .append("  \"")
                    .append(type.getKey())
                    .append("\": [\n")
                    .append(String.join(",\n", lines))
                    .append("\n  ]");
        }
        return all.append("\n}\n").toString();
    }
}
