package dev.fairlead.measure.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Fact;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The day to which the age of models and film is counted, and what is known of the age while that day is open. */
class TreatmentStartTest {
    private static final Fact<LocalDate> DAY = Fact.of(LocalDate.parse("2026-12-15"));

    private static CaseBuilder dated(String models, String film) {
        return SampleCase.full().set("/films/models", models).set("/films/headFilm", film);
    }

    private static RecordChecks of(CaseBuilder b) {
        return RecordChecks.of(new Readings(b.build()), DAY);
    }

    @Test
    void treatmentBeganWhenTheWireWentInOrAtTheFirstVisitIfThatIsEarlier() {
        CaseBuilder b = dated("2026-01-15", "2026-01-15").set("/visits/0/date", "2026-04-15");
        assertThat(of(b.set("/insertion/date", "2026-03-15")).modelsAge().value())
                .isCloseTo(2, within(1e-9));
        assertThat(of(b.set("/insertion/date", "2026-05-15")).modelsAge().value())
                .isCloseTo(3, within(1e-9));
        assertThat(of(b.without("/insertion/date")).modelsAge().missing()).containsExactly("/insertion/date");
    }

    @Test
    void whileThatDayIsOpenARecordIsAtLeastAsOldAsItWasWhenTheOtherWasTaken() {
        CaseBuilder b =
                dated("2026-02-15", "2025-01-15").without("/insertion/date").without("/visits/0/date");
        RecordChecks r = of(b);
        assertThat(r.filmAge().known()).isFalse();
        assertThat(r.filmAgeSoFar().value()).isCloseTo(13, within(1e-9));
        assertThat(r.modelsAgeSoFar().known()).isFalse();
    }
}
