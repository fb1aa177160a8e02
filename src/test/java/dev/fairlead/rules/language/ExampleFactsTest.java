package dev.fairlead.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.facts.Antimeres;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FirstMolar;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.ToothWidth;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts as they are written in a base and in patches on it. */
class ExampleFactsTest {
    private static final String WIDTHS = """
            {"ToothWidth": [
              {"place": {"pointer": "/teeth/42", "words": "tooth 42"}, "tooth": 42, "width": "5.9 mm", "mean": "5.4 mm", "deviation": "0.5"},
              {"place": {"pointer": "/teeth/41", "words": "tooth 41"}, "tooth": 41, "width": "5.4 mm", "mean": "5.4 mm", "deviation": "-0.5"}],
             "Antimeres": [
              {"place": {"pointer": "/teeth/31", "words": "teeth 31 and 41"}, "left": 31, "difference": "unknown"}]}
            """;

    private static List<Double> widths(ExampleFacts facts) {
        return facts.all().stream()
                .filter(ToothWidth.class::isInstance)
                .map(f -> ((ToothWidth) f).width().value())
                .toList();
    }

    @Test
    void aBaseIsReadAsItIsWritten() {
        List<CaseFact> all = ExampleFacts.base(WIDTHS).all();
        assertThat(all).hasSize(3);
        ToothWidth second = (ToothWidth) all.get(1);
        assertThat(second.place()).isEqualTo(new Place("/teeth/41", "tooth 41"));
        assertThat(second.tooth()).isEqualTo(Tooth.of(41));
        assertThat(second.width()).isEqualTo(Measured.exact(5.4, Unit.MM));
        assertThat(second.deviation().value()).isEqualTo(-0.5);
        Antimeres pair = (Antimeres) all.get(2);
        assertThat(pair.left()).isEqualTo(Tooth.of(31));
        assertThat(pair.difference().missing()).containsExactly("/teeth/31/difference");
    }

    @Test
    void aPatchChangesOnePlaceOrAll() {
        ExampleFacts base = ExampleFacts.base(WIDTHS);
        assertThat(widths(base.with(Map.of("ToothWidth[tooth 41].width", "6 mm"))))
                .containsExactly(5.9, 6.0);
        assertThat(widths(base.with(Map.of("ToothWidth.width", "6.2 mm")))).containsExactly(6.2, 6.2);
        assertThat(widths(base)).as("the base stays").containsExactly(5.9, 5.4);
        ToothWidth without = (ToothWidth) ExampleFacts.with(base.all().get(0), Map.of("width", "unknown"));
        assertThat(without.width().missing()).containsExactly("/teeth/42/width");
        assertThat(without.mean()).isEqualTo(Measured.exact(5.4, Unit.MM));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ToothWidth[tooth 31].width | 6 mm      | ToothWidth[tooth 31].width: the base has no such fact
            ToothWidth width           | 6 mm      | write Type.component or Type[place words].component
            Tooth.width                | 6 mm      | Tooth is no type of fact
            ToothWidth.length          | 6 mm      | ToothWidth has no [length]
            ToothWidth.width           | 6 fathoms | "6 fathoms" is no quantity
            ToothWidth.width           | yes       | width: "yes" is no quantity
            """)
    void aPatchThatFitsNowhereIsRefused(String target, String value, String problem) {
        ExampleFacts base = ExampleFacts.base(WIDTHS);
        assertThatThrownBy(() -> base.with(Map.of(target, value)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(problem);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "mean": "5.4 mm", "deviation": "0.5" | "deviation": "0.5"                             | ToothWidth: mean is missing
            "deviation": "0.5"                   | "deviation": "0.5", "sd": "1"                  | ToothWidth has no [sd]
            "Antimeres"                          | "Antimere"                                     | Antimere is no type of fact
            """)
    void aBaseHasEachComponentAndNoOther(String old, String by, String problem) {
        assertThat(WIDTHS).contains(old);
        assertThatThrownBy(() -> ExampleFacts.base(WIDTHS.replace(old, by)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining(RuleFiles.BASE + ": " + problem);
        assertThatThrownBy(() -> ExampleFacts.base("{\"ToothWidth\": 3}")).isInstanceOf(RulebaseException.class);
    }

    @ParameterizedTest
    @CsvSource({"yes", "no", "unknown", "does-not-apply", "perhaps"})
    void answersHaveFourWords(String written) throws Exception {
        ExampleFacts base = ExampleFacts.base(Files.readString(Path.of("rules", RuleFiles.BASE)));
        Map<String, String> patch = Map.of("FirstMolar[left, tooth 36].loose", written);
        if (written.equals("perhaps")) {
            assertThatThrownBy(() -> base.with(patch)).hasMessage("loose: \"perhaps\" is no answer");
            return;
        }
        Answer loose = base.with(patch).all().stream()
                .filter(FirstMolar.class::isInstance)
                .map(f -> ((FirstMolar) f).loose())
                .findFirst()
                .orElseThrow();
        assertThat(loose.yes()).isEqualTo(written.equals("yes"));
        assertThat(loose.no()).isEqualTo(written.equals("no"));
        assertThat(loose.applies()).isEqualTo(!written.equals("does-not-apply"));
        assertThat(loose.missing().isEmpty()).isEqualTo(!written.equals("unknown"));
    }
}
