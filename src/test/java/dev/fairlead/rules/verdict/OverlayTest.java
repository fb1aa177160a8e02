package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.engine.RuleCache;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder without a rulebase.json is laid over the rulebase of the program. */
class OverlayTest {
    @TempDir
    Path folder;

    @Test
    void thresholdsAloneAreEnough() {
        Rulebase over = new TestFolder(folder)
                .write("thresholds.json", "{\"overjet-after.min\": 2.0}")
                .load();
        Rulebase builtIn = Rulebase.load(Path.of("rules"));
        assertThat(over.catalogue().thresholds().get("overjet-after.min").value())
                .isEqualTo(2);
        assertThat(over.catalogue().criteria())
                .hasSameSizeAs(builtIn.catalogue().criteria());
        assertThat(over.catalogue().version()).isEqualTo(builtIn.catalogue().version());
        assertThat(over.hash()).isNotEqualTo(builtIn.hash());
    }

    /** What the build has compiled is used for rules that a folder leaves as they are. */
    @Test
    void nothingIsCompiledForThresholdsAndTexts() {
        new TestFolder(folder)
                .write("thresholds.json", "{\"overjet-after.min\": 2.0}")
                .write(TestFolder.OVERJET + "/criterion.json", "{\"title\": \"Overjet left\"}");
        Path cache = folder.resolve("cache");
        assertThat(Rulebase.fromFolder(folder, new RuleCache(cache)).catalogue().criteria())
                .isNotEmpty();
        assertThat(cache).doesNotExist();
    }

    @Test
    void textsAreChangedOneByOne() {
        Rulebase over = new TestFolder(folder)
                .write(
                        TestFolder.OVERJET + "/criterion.json",
                        "{\"reasons\": {\"too-little\": {\"todo\": \"Ask the senior clinician.\"}}}")
                .load();
        Criterion changed = over.catalogue().criterion("overjet-after");
        assertThat(changed.reasons().get("too-little").todo()).isEqualTo("Ask the senior clinician.");
        assertThat(changed.reasons().get("too-little").title()).isEqualTo("Too little overjet left");
        assertThat(changed.title()).isEqualTo("Overjet is left after the advancement");
    }

    @Test
    void anUnknownCriterionAndARangeMovedByPatchAreRefused() {
        assertThatThrownBy(() -> new TestFolder(folder)
                        .write("indication/overjet/criterion.json", "{\"why\": \"x\"}")
                        .load())
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("indication/overjet/criterion.json: there is no such criterion");
        Path other = folder.resolve("other");
        assertThatThrownBy(() -> new TestFolder(other)
                        .write(TestFolder.OVERJET + "/criterion.json", "{\"thresholds\": {\"min\": {\"low\": -9}}}")
                        .load())
                .hasMessageContaining("set min in thresholds.json");
    }

    @Test
    void figuresOfAClinicThatSayNothingAreRefused() {
        assertThatThrownBy(() ->
                        new TestFolder(folder).write("clinic.json", "null").load())
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("clinic.json: it says nothing");
    }

    @Test
    void everyFigureOfAClinicThatCannotBeTrueIsNamed() {
        assertThatThrownBy(() -> new TestFolder(folder)
                        .write(
                                "clinic.json",
                                "{\"tipping\": {\"mean\": 9, \"sd\": 0.1}, \"rate\": {\"mean\": 0.6, \"sd\": 2},"
                                        + " \"gain\": {\"mean\": 1, \"sd\": 0.12}, \"cases\": 3}")
                        .load())
                .isInstanceOfSatisfying(
                        RulebaseException.class,
                        e -> assertThat(e.problems())
                                .containsExactly(
                                        "clinic.json: tipping: mean from 0.3 to 3.0 and sd from 0 to 1.0 are expected, not 9.0 and 0.1",
                                        "clinic.json: rate: mean from 0.05 to 1.0 and sd from 0 to 0.5 are expected, not 0.6 and 2.0",
                                        "clinic.json: cases: 3 are too few to say anything of a clinic; 15 are needed"));
    }

    @Test
    void aCriterionOfTheHouseIsAddedAtTheEndOfItsStage() {
        String drl = "indication/overjet-after/criterion.drl";
        TestFolder whole = TestFolder.whole(folder.resolve("whole"));
        String own = read(folder.resolve("whole").resolve(drl))
                .replace("overjet-after", "overjet-of-house")
                .replace("overjet_after", "overjet_of_house");
        String text = read(folder.resolve("whole/indication/overjet-after/criterion.json"));
        Rulebase rulebase = whole.write("indication/overjet-of-house/criterion.drl", own)
                .write("indication/overjet-of-house/criterion.json", text)
                .load();
        assertThat(rulebase.catalogue().criteria())
                .extracting(Criterion::id)
                .containsExactly("overjet-after", "hygiene-and-caries", "overjet-of-house");
        assertThat(rulebase.catalogue().limits().of("overjet-of-house.min").value())
                .isEqualTo(1.0);
    }

    private static String read(Path file) {
        try {
            return java.nio.file.Files.readString(file);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
