package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.facts.Bite;
import dev.fairlead.facts.BiteBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Ending;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands in the places that texts leave open: the criterion asks for 1.0 mm, stops below 0.0 mm. */
class TemplateTest {
    private static final Catalogue CATALOGUE = ProjectRules.rulebase().catalogue();
    private static final Template TEMPLATE = new Template(CATALOGUE.criterion("overjet-after"), CATALOGUE);

    private static CaseFact bite(double after, double soFar) {
        Bite any = ProjectRules.base().all().stream()
                .filter(Bite.class::isInstance)
                .map(Bite.class::cast)
                .findFirst()
                .orElseThrow();
        return BiteBuilder.builder(any)
                .overjetAfter(Measured.of(after, Unit.MM, "/bite/overjet", 0.3))
                .overjetSoFar(Measured.of(soFar, Unit.MM, "/bite/overjet", 0.5))
                .build();
    }

    private static String filled(String text, double soFar) {
        Bite bite = (Bite) bite(2.04, soFar);
        Verdict verdict = new Verdict("overjet-after", bite, Ending.CAUTION, "too-little")
                .seen("overjet-after.min", bite.overjetSoFar());
        PlaceResult place =
                new PlaceResult(new Place("/bite", "the bite"), bite, Ending.CAUTION, List.of(verdict), List.of());
        return TEMPLATE.at(text, place, verdict);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '"', textBlock = """
            {value} is left                       ; 0.97 ± 0.50 mm is left
            {-value} too much                     ; -0.97 ± 0.50 mm too much
            {limit} is asked for, {min}           ; 1.0 mm is asked for, 1.0 mm
            {overjet-after.reversed} of another   ; 0.0 mm of another
            at {place}: {overjetAfter}            ; at the bite: 2.0 ± 0.3 mm
            {-overjetAfter}                       ; -2.0 ± 0.3 mm
            held against a limit {overjetSoFar}   ; held against a limit 0.97 ± 0.50 mm
            {reversed..min}                       ; 0.0 mm to 1.0 mm
            {limit..min}, not {limit}             ; 1.0 mm, not 1.0 mm
            {value|# over|# short}                ; 0.97 ± 0.50 mm over
            {reversed|# over|# short|as planned}  ; as planned
            {reversed|# over|# short}             ; 0.0 mm over
            nothing to fill                       ; nothing to fill
            a } b {} c { d                        ; a } b {} c { d
            } a {min}                             ; } a 1.0 mm
            {min{limit}}                          ; {min1.0 mm}
            """)
    void placeholdersAreFilled(String text, String filled) {
        assertThat(filled(text, 0.97)).isEqualTo(filled);
    }

    @ParameterizedTest
    @CsvSource({
        "1.4, 1.4 ± 0.5 mm over",
        "-0.3, 0.3 ± 0.5 mm short",
        "0, as planned",
        "-0.02, as planned",
        "0.04, as planned",
        "10, 10.0 ± 0.5 mm over"
    })
    void wordsGoByTheSignOfWhatIsShown(double soFar, String words) {
        assertThat(filled("{value|# over|# short|as planned}", soFar)).isEqualTo(words);
    }

    @Test
    void aTextOfTheCriterionAloneKnowsNoPlace() {
        assertThat(TEMPLATE.general("leaves at least {min}.")).isEqualTo("leaves at least 1.0 mm.");
        assertThat(Asks.of(CATALOGUE.criterion("overjet-after"), CATALOGUE))
                .isEqualTo("The overjet less the planned advancement leaves at least 1.0 mm.");
        for (String name : List.of("value", "place", "overjetAfter", "nobody")) {
            assertThatThrownBy(() -> TEMPLATE.general("{" + name + "}"))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("overjet-after: nothing fills {" + name + "}");
        }
    }
}
