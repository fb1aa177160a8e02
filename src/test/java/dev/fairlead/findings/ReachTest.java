package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a case is judged and for which day, by what is recorded, stated and asked for. */
class ReachTest {
    private static final Optional<Stage> NOT_ASKED = Optional.empty();
    private static final Optional<LocalDate> NO_DAY = Optional.empty();

    /** A stage is reached by one fact of it; what is only planned of a later stage is none. */
    @ParameterizedTest
    @CsvSource({
        "/child/age, 9, RECORDS",
        "/teeth/42/width, 5.9, RECORDS",
        "/headFilm/incisorMandibular, 92, INDICATION",
        "/bite/overjet, 3, INDICATION",
        "/mouth/plaqueScore, 12, INDICATION",
        "/consent/guardian, true, INDICATION",
        "/plan/advanceLeft, 2, INDICATION",
        "/plan/advanceRight, 2, INDICATION",
        "/hardware/modelOverBands, true, READINESS",
        "/bench/misfitRms, 0.4, BENCH",
        "/insertion/blanching, false, INSERTION",
        "/visits/0/gauge, 60, ACTIVATION",
        "/holding/passive, true, HOLDING",
        "/holding/recall, 6, RECORDS"
    })
    void oneFactReachesItsStage(String pointer, String value, Stage reached) {
        Object v = value.matches("true|false") ? Boolean.valueOf(value) : Double.valueOf(value);
        Case c = new CaseBuilder().set(pointer, v).set("/stage", "records").build();
        assertThat(Reach.of(c, NOT_ASKED, NO_DAY).recorded()).isEqualTo(reached);
        assertThat(Reach.of(c, NOT_ASKED, NO_DAY).judged()).isEqualTo(reached);
        Case further =
                new CaseBuilder().set(pointer, v).set("/stage", "holding").build();
        assertThat(Reach.of(further, NOT_ASKED, NO_DAY).judged()).isEqualTo(Stage.HOLDING);
        assertThat(Reach.of(further, Optional.of(Stage.RECORDS), NO_DAY).judged())
                .isEqualTo(Stage.RECORDS);
    }

    @Test
    void theDayIsTheOneGivenElseTheLatestOfWhatWasDone() {
        CaseBuilder dated = new CaseBuilder().set("/date", "2026-03-02");
        LocalDate given = LocalDate.of(2026, 9, 9);
        for (String done : new String[] {
            "/insertion/date", "/visits/1/date", "/holding/impression", "/holding/cemented", "/holding/debonded"
        }) {
            Case c = dated.copy().set(done, "2026-07-01").build();
            Reach reach = Reach.of(c, NOT_ASKED, NO_DAY);
            assertThat(reach.day()).as(done).contains(LocalDate.of(2026, 7, 1));
            assertThat(reach.dated()).contains(LocalDate.of(2026, 3, 2));
            Reach asked = Reach.of(c, NOT_ASKED, Optional.of(given));
            assertThat(asked.day()).contains(given);
            assertThat(asked.dated()).contains(given);
        }
        assertThat(Reach.of(new CaseBuilder().build(), NOT_ASKED, NO_DAY).day()).isEmpty();
    }
}
