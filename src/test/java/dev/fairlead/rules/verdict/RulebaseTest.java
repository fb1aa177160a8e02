package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.facts.Bite;
import dev.fairlead.facts.BiteBuilder;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.guard.ProjectRules;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Loading a rulebase: what it says of itself, what may be changed and how, and what is refused. */
class RulebaseTest {
    @TempDir
    Path folder;

    private static Bite overjetAfter(double mm) {
        Bite base = (Bite) ProjectRules.base().all().stream()
                .filter(Bite.class::isInstance)
                .findFirst()
                .orElseThrow();
        return BiteBuilder.builder(base)
                .overjetAfter(Measured.exact(mm, Unit.MM))
                .overjetSoFar(Measured.exact(mm, Unit.MM))
                .build();
    }

    private static Status overjet(Rulebase rulebase, double mm) {
        return JudgementText.result(rulebase.judge().judge(List.of(overjetAfter(mm))), "overjet-after")
                .status();
    }

    @Test
    void aWholeRulebaseStandsAloneInItsOwnOrder() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        assertThat(rulebase.catalogue().version()).isEqualTo("test");
        assertThat(rulebase.catalogue().criteria())
                .extracting(Criterion::id)
                .containsExactly("overjet-after", "hygiene-and-caries");
        assertThat(rulebase.hash()).isEqualTo(RuleFiles.of(folder).hash()).matches("[0-9a-f]{64}");
    }

    @Test
    void aThresholdIsSetWithoutCompilingAndShowsInTheHash() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        Rulebase stricter = rulebase.withThresholds(Map.of("overjet-after.min", 2.0));
        assertThat(overjet(rulebase, 1.5)).isEqualTo(Status.PASS);
        assertThat(overjet(stricter, 1.5)).isEqualTo(Status.WARN);
        assertThat(stricter.hash()).isNotEqualTo(rulebase.hash());
        assertThat(stricter.changed()).containsExactly(Map.entry("overjet-after.min", 2.0));
        assertThat(stricter.withThresholds(Map.of("overjet-after.min", 2.0)).hash())
                .isEqualTo(stricter.hash());
        assertThat(stricter.catalogue()
                        .criterion("overjet-after")
                        .thresholds()
                        .get("min")
                        .value())
                .isEqualTo(2);
    }

    @Test
    void aThresholdOutOfItsRangeAndAnUnknownOneAreNamed() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        assertThatThrownBy(() -> rulebase.withThresholds(Map.of("overjet-after.min", 9.0, "overjet.least", 1.0)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("overjet-after.min may be set from 0.0 to 3.0 mm, not to 9.0")
                .hasMessageContaining("no threshold is called overjet.least");
    }

    @Test
    void thresholdsOfAFileAreInForce() {
        Rulebase rulebase = TestFolder.whole(folder)
                .write("thresholds.json", "{\"overjet-after.min\": 0.5}")
                .load();
        assertThat(overjet(rulebase, 0.7)).isEqualTo(Status.PASS);
        assertThatThrownBy(() -> new TestFolder(folder)
                        .write("thresholds.json", "{\"overjet-after.min\": \"0.5\"}")
                        .load())
                .hasMessageContaining("thresholds.json:1");
    }

    @Test
    void anEditedRuleIsCompiledAndReplacesTheBuiltInOneOfTheSameClassNames() {
        Rulebase before = TestFolder.whole(folder).load();
        Rulebase after = new TestFolder(folder)
                .replace(
                        TestFolder.OVERJET + "/criterion.drl",
                        "overjetSoFar.atLeast(limits.of(\"overjet-after.min\")) )",
                        "overjetSoFar.atLeast(limits.of(\"overjet-after.min\")), overjetSoFar.doesNotApply() )")
                .load();
        assertThat(overjet(before, 1.5)).isEqualTo(Status.PASS);
        assertThat(after.judge().judge(List.of(overjetAfter(1.5))).errors())
                .singleElement()
                .satisfies(e -> assertThat(e.message()).contains("nothing is missing, and yet no rule decides"));
        assertThat(overjet(before, 1.5)).isEqualTo(Status.PASS);
        assertThat(after.hash()).isNotEqualTo(before.hash());
    }

    @Test
    void faultsOfAllFilesAreNamedTogether() {
        TestFolder broken = TestFolder.whole(folder)
                .replace(TestFolder.OVERJET + "/criterion.json", "\"title\"", "\"heading\"")
                .replace(TestFolder.HYGIENE + "/criterion.json", "[\"common-practice\"]", "[\"hearsay\"]");
        assertThatThrownBy(broken::load)
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("indication/overjet-after/criterion.json:")
                .hasMessageContaining("title is missing")
                .hasMessageContaining(
                        "indication/hygiene-and-caries/criterion.json: sources: hearsay does not stand in sources.json");
    }

    @Test
    void aThresholdInNoUnitIsRefusedTogetherWithWhatElseIsWrong() {
        TestFolder broken = TestFolder.whole(folder)
                .replace(TestFolder.OVERJET + "/criterion.json", "\"unit\": \"mm\"", "\"unit\": \"furlong\"")
                .replace(TestFolder.OVERJET + "/criterion.json", "[\"common-practice\"]", "[\"hearsay\"]");
        assertThatThrownBy(broken::load)
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("overjet-after.min: furlong is no unit")
                .hasMessageContaining("hearsay does not stand in sources.json");
    }

    @Test
    void nothingInPlaceOfAReasonOrASourceIsRefusedWithItsPlace() {
        TestFolder broken = TestFolder.whole(folder)
                .replace(TestFolder.OVERJET + "/criterion.json", "\"reasons\": {", "\"reasons\": { \"none\": null,")
                .replace(TestFolder.HYGIENE + "/criterion.json", "[\"common-practice\"]", "[null]");
        assertThatThrownBy(broken::load)
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("overjet-after/criterion.json:")
                .hasMessageContaining("hygiene-and-caries/criterion.json:")
                .message()
                .doesNotContain("fasterxml", "Null");
    }

    @Test
    void aPlaceholderThatNothingFillsIsRefused() {
        TestFolder broken = TestFolder.whole(folder)
                .replace(TestFolder.OVERJET + "/criterion.json", "{value} is left", "{overbite} is left");
        assertThatThrownBy(broken::load).hasMessageContaining("nothing fills {overbite}");
    }

    @Test
    void anEmptyFolderIsNoRulebase() {
        assertThatThrownBy(() -> new TestFolder(folder).load())
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("neither");
        assertThatThrownBy(() -> Rulebase.load(folder.resolve("absent")))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("no folder");
        assertThatThrownBy(() -> new TestFolder(folder)
                        .write("rulebase.json", "{\"version\": \"1\", \"causes\": {}, \"order\": {}}")
                        .write("sources.json", "{}")
                        .load())
                .hasMessageContaining("holds no criterion");
    }

    @Test
    void aCriterionWithoutRulesIsRefused() {
        assertThatThrownBy(() -> TestFolder.whole(folder)
                        .write("indication/new-one/criterion.json", "{}")
                        .load())
                .hasMessageContaining("indication/new-one: there is no criterion.drl");
    }
}
