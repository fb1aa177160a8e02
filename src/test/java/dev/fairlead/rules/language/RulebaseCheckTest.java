package dev.fairlead.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a rulebase may not say beside its rules: two criteria of the project, each time with one slip. */
class RulebaseCheckTest {
    private static final String OVERJET = "indication/overjet-after/";
    private static final String HYGIENE = "indication/hygiene-and-caries/";
    private static final String HEAD = """
            {"version": "test", "causes": {"overjet": ["overjet-after"]},
             "order": {"indication": ["overjet-after", "hygiene-and-caries"]}}""";

    private static Map<String, String> files() {
        Map<String, String> files = new TreeMap<>(Map.of("rulebase.json", HEAD));
        for (String path : List.of(
                "sources.json",
                OVERJET + "criterion.json",
                OVERJET + "criterion.drl",
                HYGIENE + "criterion.json",
                HYGIENE + "criterion.drl")) {
            try {
                files.put(path, Files.readString(Path.of("rules", path)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return files;
    }

    @Test
    void whatIsWholeIsRead() {
        Catalogue read = RulebaseCheck.check(new RuleFiles(files()));
        assertThat(read.causes()).isEqualTo(Map.of("overjet", List.of("overjet-after")));
        assertThat(read.criteria(Stage.INDICATION))
                .extracting(Criterion::id)
                .containsExactly("overjet-after", "hygiene-and-caries");
        assertThat(read.criteria(Stage.BENCH)).isEmpty();
        assertThat(read.criterion("overjet-after").needs())
                .extracting(Need::component)
                .containsExactly("overjetAfter", "overjetSoFar");
        assertThat(read.criterion("overjet-after").needs()).noneMatch(Need::mayLack);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            rulebase.json | ["overjet-after"]} | ["overjet-before"]} | rulebase.json: causes: overjet: no criterion is called overjet-before
            rulebase.json | ["overjet-after"]} | ["overjet-after"], "bite": ["overjet-after"]} | rulebase.json: causes: overjet-after stands under two causes
            sources.json | "kind": "standard" | "kind": "rumour" | /iso-3950/kind: rumour is none of published, published-second-hand, standard, common-practice, own-choice
            OVERJET | "about": "Bite" | "about": "Bit" | about: Bit is no type of fact
            OVERJET | "overjetAfter", "overjetSoFar" | "overjetLater", "overjetSoFar" | needs: Bite has no overjetLater that could be known or missing
            OVERJET | ["overjetAfter", "overjetSoFar"] | [] | needs: a criterion that needs nothing would pass on an empty case
            OVERJET | "unit": "mm", "value": 1.0 | "unit": "cm", "value": 1.0 | overjet-after.min: cm is no unit
            OVERJET | "step": 0.1, "inclusive": true, "bound": "lower", "sources": ["common-practice"] }, | "step": 0.1, "inclusive": true, "bound": "least", "sources": ["common-practice"] }, | /thresholds/min/bound: least is none of upper, lower
            OVERJET | "high": 3, "step": 0.1 | "high": 3, "step": 0 | overjet-after.min: the step must be above zero
            OVERJET | "value": 1.0 | "value": 3.5 | threshold overjet-after.min may be set from 0.0 to 3.0 mm, not to 3.5
            OVERJET | "weight": "stop" | "weight": "pass" | criterion.json:16:17: /reasons/reversed/weight: pass is none of stop, caution
            OVERJET | "sources": ["common-practice"] }, | "sources": [] }, | sources: where nothing is published, say so by a key
            OVERJET | "sources": ["common-practice"] }, | "sources": ["hearsay"] }, | sources: hearsay does not stand in sources.json
            OVERJET | "sources": ["common-practice"], | "sources": [], | sources: where nothing is published, say so by a key
            OVERJET | "Overjet is left after | "{min} is left after | nothing fills {min} in "{min} is left after
            OVERJET | leaves at least {min} | leaves at least {value} | nothing fills {value} in
            OVERJET | an overjet of {value} is left | | a text is empty
            OVERJET | "Reverse overjet predicted" | "Reverse overjet of {value}" | nothing fills {value} in "Reverse overjet of {value}"
            OVERJET | a reverse overjet of {-value} is | a reverse overjet of {-anb} is | nothing fills {-anb} in
            OVERJET | Do not start with this plan | Do not start with {value} | nothing fills {value} in
            OVERJET | "exemptions": {} | "exemptions": {"none": "no {overbite}"} | nothing fills {overbite} in "no {overbite}"
            OVERJET | "dispute": "" | "dispute": "{min}" | nothing fills {min} in "{min}"
            OVERJET | "exemptions": {} | "exemptions": {"none": ""} | a text is empty
            """)
    void aSlipIsNamedByItsFile(String file, String old, String by, String problem) {
        String path = file.equals("OVERJET") ? OVERJET + "criterion.json" : file;
        Map<String, String> files = files();
        assertThat(files.get(path)).contains(old);
        files.put(path, files.get(path).replace(old, by == null ? "" : by));
        assertThatThrownBy(() -> RulebaseCheck.check(new RuleFiles(files)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining(path)
                .hasMessageContaining(problem);
    }

    /** Whoever mends a file mends it once. */
    @Test
    void allWrongWordsAreToldAtOnce() {
        Map<String, String> files = files();
        files.computeIfPresent("sources.json", (path, text) -> text.replace("\"standard\"", "\"rumour\""));
        files.computeIfPresent(
                OVERJET + "criterion.json",
                (path, text) -> text.replace("\"weight\": \"stop\"", "\"weight\": \"halt\"")
                        .replace("\"bound\": \"lower\"", "\"bound\": \"least\"")
                        .replace("\"unit\": \"mm\"", "\"unit\": \"cm\""));
        assertThatThrownBy(() -> RulebaseCheck.check(new RuleFiles(files)))
                .isInstanceOfSatisfying(
                        RulebaseException.class,
                        e -> assertThat(e.problems())
                                .anyMatch(p -> p.endsWith("/weight: halt is none of stop, caution"))
                                .anyMatch(p -> p.endsWith("/thresholds/min/bound: least is none of upper, lower"))
                                .anyMatch(p -> p.endsWith("overjet-after.min: cm is no unit"))
                                .anyMatch(p ->
                                        p.startsWith("sources.json:") && p.contains("rumour is none of published, ")));
    }

    /** A criterion or a list that is nothing at all is not left out in silence. */
    @ParameterizedTest
    @ValueSource(strings = {OVERJET + "criterion.json", "sources.json", "rulebase.json"})
    void aFileThatSaysNothingIsRefused(String path) {
        Map<String, String> files = files();
        files.put(path, "null");
        assertThatThrownBy(() -> RulebaseCheck.check(new RuleFiles(files)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining(path + ": it says nothing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"sources.json", "rulebase.json", OVERJET + "criterion.json"})
    void aFileThatIsNotThereIsNamed(String path) {
        Map<String, String> files = files();
        files.remove(path);
        assertThatThrownBy(() -> RulebaseCheck.check(new RuleFiles(files)))
                .isInstanceOfSatisfying(
                        RulebaseException.class,
                        e -> assertThat(e.problems()).contains(path + ": there is no such file"));
    }

    @Test
    void aCriterionStandsInOneStageOfCare() {
        Map<String, String> twice = files();
        Map<String, String> elsewhere = files();
        for (String file : List.of("criterion.json", "criterion.drl")) {
            twice.put("bench/overjet-after/" + file, twice.get(OVERJET + file));
            elsewhere.put("recess/overjet-then/" + file, elsewhere.get(OVERJET + file));
        }
        assertThatThrownBy(() -> CatalogueReader.read(new RuleFiles(twice)))
                .isInstanceOf(RulebaseException.class)
                .hasMessage("overjet-after: two stages have a criterion of this name");
        assertThatThrownBy(() -> CatalogueReader.read(new RuleFiles(elsewhere)))
                .isInstanceOf(RulebaseException.class)
                .hasMessage("recess/overjet-then: recess is no stage of care");
    }

    /** A unit is known by its sign, or by its name where it has none. */
    @ParameterizedTest
    @CsvSource({"mm, MM", "°, DEGREE", "%, PERCENT", "count, COUNT", "ratio, RATIO", "gf, GF", "week, WEEK"})
    void unitsAreKnownBySignOrName(String written, Unit unit) {
        Map<String, String> files = files();
        files.computeIfPresent(
                OVERJET + "criterion.json",
                (path, text) -> text.replace(
                        "\"unit\": \"mm\", \"value\": 1.0", "\"unit\": \"" + written + "\", \"value\": 1.0"));
        assertThat(CatalogueReader.read(new RuleFiles(files))
                        .thresholds()
                        .get("overjet-after.min")
                        .unit())
                .isEqualTo(unit);
    }

    /** What lies beside a rulebase is left alone, whatever it is called. */
    @Test
    void aFolderGivesTheFilesThatMakeARulebase(@TempDir Path folder) throws IOException {
        Map<String, String> files = files();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
        Files.writeString(folder.resolve("notes.txt"), "not a rule");
        Files.createDirectories(folder.resolve("bench/criterion.json"));
        Files.writeString(folder.resolve("criterion.drl"), "out of place");
        Files.writeString(folder.resolve(OVERJET + "examples.json"), "{}");
        Files.writeString(folder.resolve(OVERJET + "sources.json"), "{}");
        RuleFiles read = RuleFiles.of(folder);
        assertThat(read.texts()).containsOnlyKeys(files.keySet());
        assertThat(read.hash()).isEqualTo(new RuleFiles(files).hash());
        assertThat(read.rules()).containsOnlyKeys(HYGIENE + "criterion.drl", OVERJET + "criterion.drl");
    }
}
