package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a report says of how far, and for which day, a case was judged. */
class SubjectTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static String note(Stage stated, Stage recorded, Stage judged, Integer beyond) {
        Reach reach = new Reach(Optional.ofNullable(stated), recorded, judged, Optional.of(DAY), Optional.of(DAY));
        return new Subject("a-1", "", reach, beyond == null ? OptionalInt.empty() : OptionalInt.of(beyond)).note();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            BENCH      | BENCH      | BENCH      |   |
            BENCH      | INDICATION | BENCH      |   | The case says bench; nothing is recorded beyond indication.
            RECORDS    | INDICATION | INDICATION |   | The case says records; facts of indication are recorded, so they are judged too.
                       | INDICATION | INDICATION |   | The case names no stage; facts are recorded as far as indication.
            INDICATION | INDICATION | RECORDS    | 0 | Judged only as far as records, as asked: indication is left out, without a warning there.
            BENCH      | INDICATION | INDICATION | 1 | Judged only as far as indication, as asked: readiness to bench are left out, with 1 warning there.
            RECORDS    | HOLDING    | RECORDS    | 2 | Judged only as far as records, as asked: indication to holding are left out, with 2 warnings there.
                       | BENCH      | RECORDS    |   | Judged only as far as records, as asked: indication to bench are left out, without a warning there.
            INDICATION | INDICATION | BENCH      |   |
            """)
    void aStageThatDiffersIsTold(Stage stated, Stage recorded, Stage judged, Integer beyond, String note) {
        assertThat(note(stated, recorded, judged, beyond)).isEqualTo(note == null ? "" : note);
    }

    @Test
    void aDayThatDiffersIsTold() {
        Reach later = new Reach(
                Optional.of(Stage.BENCH), Stage.BENCH, Stage.BENCH, Optional.of(DAY.plusDays(9)), Optional.of(DAY));
        assertThat(new Subject("a-1", "", later, OptionalInt.empty()).note())
                .isEqualTo("It is dated 2026-03-02; judged for the last recorded day.");
        Reach undated = new Reach(Optional.empty(), Stage.BENCH, Stage.BENCH, Optional.of(DAY), Optional.empty());
        assertThat(new Subject("a-1", "", undated, OptionalInt.empty()).note())
                .isEqualTo("The case names no stage; facts are recorded as far as bench."
                        + " It has no date of its own; judged for the last recorded day.");
        assertThat(new Subject("a-1", "", undated, OptionalInt.empty()).date()).hasValue(DAY);
    }

    @Test
    void allStagesUpToTheLastAreJudged() {
        Reach bench = new Reach(Optional.empty(), Stage.BENCH, Stage.READINESS, Optional.empty(), Optional.empty());
        assertThat(bench.stages()).containsExactly(Stage.RECORDS, Stage.INDICATION, Stage.READINESS);
        assertThat(bench.full()).isEqualTo(Stage.BENCH);
        assertThat(bench.cut()).isTrue();
    }
}
