package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.findings.Missing.Kind;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a criterion waits for: told apart by why it is not there. */
class MissingTest {
    private static final Missing PLAQUE = new Missing("/mouth/plaqueScore", "plaque score, mouth");

    private static Missing in(Case c, String pointer) {
        return Missing.in(c).apply(pointer);
    }

    @Test
    void whatIsThereAndYetWaitedForContradictsOtherFacts() {
        Case c = new CaseBuilder()
                .set("/bite/overjet", 3.0)
                .set("/plan/percentile", CaseBuilder.NOT_APPLICABLE)
                .build();
        assertThat(in(c, "/bite/overjet"))
                .isEqualTo(new Missing("/bite/overjet", "overjet, bite (contradicts other facts)", Kind.CONTRADICTED));
        assertThat(in(c, "/plan/percentile").kind()).isEqualTo(Kind.CONTRADICTED);
        assertThat(in(c, "/mouth/plaqueScore")).isEqualTo(PLAQUE);
        assertThat(in(c, "/mouth/nowhere").kind()).isEqualTo(Kind.NOT_ENTERED);
        assertThat(in(c, "/teeth/42/width/-"))
                .isEqualTo(
                        new Missing("/teeth/42/width/-", "second reading of width of tooth 42", Kind.SECOND_READING));
        assertThat(Missing.of("/teeth/42/width/-").kind()).isEqualTo(Kind.SECOND_READING);
    }

    @Test
    void whatAFilmWouldShowWaitsForItsReading() {
        Case unread = new CaseBuilder().set("/films/panoramicRead", false).build();
        Case read = new CaseBuilder().set("/films/panoramicRead", true).build();
        assertThat(in(unread, "/films/ectopic").kind()).isEqualTo(Kind.FILM_NOT_READ);
        assertThat(in(unread, "/films/ectopic").words()).isEqualTo("ectopic, films (panoramic film not read)");
        assertThat(in(unread, "/mouth/plaqueScore").kind()).isEqualTo(Kind.NOT_ENTERED);
        assertThat(in(read, "/films/ectopic").kind()).isEqualTo(Kind.NOT_ENTERED);
        assertThat(in(new CaseBuilder().build(), "/films/ectopic").kind()).isEqualTo(Kind.NOT_ENTERED);
    }

    @Test
    void aValueWaitsForEachOfItsFactsOnce() {
        Case c = new CaseBuilder().build();
        Measured sum = Measured.unknown("/mouth/plaqueScore").plus(Measured.unknown("/teeth/42/width"));
        assertThat(Missing.of(sum, c))
                .extracting(Missing::pointer)
                .containsExactlyInAnyOrder("/mouth/plaqueScore", "/teeth/42/width");
        assertThat(Missing.of(Measured.exact(1, Unit.MM), c)).isEmpty();
        assertThat(Missing.of(Measured.notApplicable(), c)).isEmpty();
    }

    @Test
    void aLineNamesTheFirstAndCountsTheRest() {
        Missing second = Missing.of("/teeth/42/width/-");
        assertThat(Missing.line(List.of(PLAQUE), 2)).isEqualTo("missing: plaque score, mouth");
        assertThat(Missing.line(List.of(PLAQUE, second), 2))
                .isEqualTo("waits for: plaque score, mouth; second reading of width of tooth 42");
        assertThat(Missing.line(List.of(PLAQUE, PLAQUE, PLAQUE), 1))
                .isEqualTo("missing: plaque score, mouth; and 2 more");
        assertThat(Missing.heading(List.of(PLAQUE))).isEqualTo("Missing");
        assertThat(Missing.heading(List.of(PLAQUE, second))).isEqualTo("Waits for");
        assertThat(Stream.of(Kind.values()).map(Kind::word))
                .containsExactly("missing", "second reading", "contradicts other facts", "panoramic film not read");
    }
}
