package dev.fairlead.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Numbers;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.report.picture.SpacePicture;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Lacking means one thing in every view: need less the space that is found once the incisors stand in line. */
class SpaceCourseTest {
    private static final Checker CHECKER = new Checker(Rulebase.load(null));

    private static Checked check(String name) throws IOException {
        Path file = Path.of("cases", name + ".yaml");
        return CHECKER.check(
                CaseReader.read(Files.readAllBytes(file), file.toString(), CaseFormat.BY_NAME)
                        .value()
                        .orElseThrow(),
                "0".repeat(64),
                CheckOptions.USUAL);
    }

    @Test
    void beforeTreatmentTheVisitsPageSaysWhatTheReportSays() throws IOException {
        for (String name : new String[] {"avocet-03-thin-and-steep", "whimbrel-06-class-iii-tendency"}) {
            Checked c = check(name);
            for (SpaceCourse s : SpaceCourse.of(c)) {
                String report = Numbers.text(c.worked().space().side(s.side()).shortage());
                assertThat(Numbers.text(s.lacking())).isEqualTo(report).contains("±");
                assertThat(SpacePicture.of(c).picture().orElseThrow().rows())
                        .anySatisfy(row -> assertThat(row).contains(report));
            }
        }
    }

    @Test
    void duringTreatmentItIsTheForecastsAndTheReadings() throws IOException {
        Checked c = check("stilt-10-gauge-overrides");
        for (SpaceCourse s : SpaceCourse.of(c)) {
            var forecast = c.worked().forecast().orElseThrow().side(s.side());
            assertThat(Numbers.text(s.lacking())).isEqualTo(Numbers.text(forecast.lacking()));
            int last = c.subject().visits().size() - 1;
            assertThat(s.lacking().value())
                    .isEqualTo(
                            s.target().value()
                                    - c.subject()
                                            .visits()
                                            .get(last)
                                            .side(s.side())
                                            .space()
                                            .value(),
                            within(1e-9));
            assertThat(s.ahead())
                    .as("from the last reading on")
                    .allSatisfy(a -> assertThat(a.day())
                            .isAfterOrEqualTo(
                                    c.subject().visits().get(last).date().get()));
        }
    }
}
