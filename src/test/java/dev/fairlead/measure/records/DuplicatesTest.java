package dev.fairlead.measure.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class DuplicatesTest {
    private static final double[] DIFFERENCES = {0.1, -0.2, 0.0, 0.1, -0.1};

    @Test
    void dahlbergsFormula() {
        // differences 0.1, -0.2, 0, 0.1, -0.1: sqrt(0.07 / 10) = 0.0837 mm
        Duplicates d = new Duplicates();
        for (double x : DIFFERENCES) {
            d.add(5.5, 5.5 + x);
        }
        assertThat(d.error()).isCloseTo(Math.sqrt(0.07 / 10), within(1e-12)).isCloseTo(0.0837, within(5e-5));
        assertThat(d.enough()).isTrue();
    }

    @Test
    void threeReadingsCountAsTwoPairs() {
        // standard deviation of 1, 2, 3 is 1 (n - 1 in the denominator)
        Duplicates d = new Duplicates();
        d.add(1, 2, 3);
        assertThat(d.pairs()).isEqualTo(2);
        assertThat(d.error()).isCloseTo(1, within(1e-12));
    }

    private static CaseBuilder repeated(int teeth) {
        CaseBuilder b = new CaseBuilder().set("/teeth/36/width", 11.0);
        int[] numbers = {42, 41, 31, 32, 73};
        for (int i = 0; i < teeth; i++) {
            b.set("/teeth/" + numbers[i] + "/width", new double[] {5.5, 5.5 + DIFFERENCES[i]});
        }
        return b;
    }

    @Test
    void ownErrorReplacesTheAssumedOneFromFivePairsOn() {
        Readings four = new Readings(repeated(4).build());
        Readings five = new Readings(repeated(5).build());
        assertThat(four.width(Tooth.of(36)).sd()).isEqualTo(0.10);
        assertThat(five.width(Tooth.of(36)).sd()).isCloseTo(0.0837, within(5e-5));
        assertThat(five.width(Tooth.of(41)).sd())
                .as("mean of two readings")
                .isCloseTo(0.0837 / Math.sqrt(2), within(5e-5));
        assertThat(five.width(Tooth.of(36)).value()).isEqualTo(11.0);
    }

    /** Pairs of one kind are counted over all fields of that kind: segments, angles, lengths on the film. */
    @Test
    void everyFieldOfAKindCounts() {
        double[] twice = {20, 20.4};
        CaseBuilder b = new CaseBuilder();
        for (String segment : List.of("left", "right", "incisors", "perimeter")) {
            b.set("/space/" + segment, twice);
        }
        for (String angle : List.of("incisorMandibular", "mandibularPlane", "anb", "occlusalMandibular")) {
            b.set("/headFilm/" + angle, twice);
        }
        b.set("/headFilm/incisorToAPog", new double[] {1, 2, 3, 2}).set("/headFilm/tippingRadius", twice);
        Readings r = new Readings(b.build());
        assertThat(r.segments().pairs()).isEqualTo(4);
        assertThat(r.angles().pairs()).isEqualTo(4);
        // three pairs and one are too few; four readings of variance 2 / 3 and three of 0.08 / 2 make five
        assertThat(r.incisorToAPog().sd()).isEqualTo(ErrorKind.FILM_LENGTH.defaultSd() / 2);
        Readings five = new Readings(
                b.set("/headFilm/tippingRadius", new double[] {20, 20.2, 20.4}).build());
        assertThat(five.incisorToAPog().sd()).isCloseTo(Math.sqrt((2 + 0.08) / 5) / 2, within(1e-9));
    }

    @Test
    void aStatedErrorStands() {
        Duplicates d = new Duplicates();
        for (double x : DIFFERENCES) {
            d.add(5.5, 5.5 + x);
        }
        Measured stated = Measured.of(11, dev.fairlead.model.Unit.MM, "/teeth/36/width", 0.25);
        assertThat(d.applyTo(stated, ErrorKind.TOOTH_WIDTH)).isSameAs(stated);
    }

    @Test
    void everyKeyLengthHasToBeReadTwice() {
        CaseBuilder b = SampleCase.full().set("/teeth/41/width", 5.4).set("/space/left", 20.5);
        RecordChecks r = RecordChecks.of(new Readings(b.build()), Fact.of(LocalDate.parse("2026-03-01")));
        assertThat(r.duplicateLength().missing())
                .as("the second reading of each")
                .containsExactly("/teeth/41/width/-", "/space/left/-");
        assertThat(r.duplicateAngle().value())
                .as("one pair that differs by 1")
                .isCloseTo(Math.sqrt(1.0 / 2), within(1e-12));
    }

    @Test
    void agesCountFromTheRecordToTheStart() {
        CaseBuilder b = SampleCase.full();
        RecordChecks r = RecordChecks.of(new Readings(b.build()), Fact.of(LocalDate.parse("2026-12-01")));
        assertThat(r.filmAge().value())
                .as("1 December to the first visit on 20 January: a month and 19 of the 31 days of January")
                .isCloseTo(1 + 19.0 / 31, within(1e-9));
        assertThat(r.perimeterGap().value()).isCloseTo(Math.abs(20.5 + 21.1 + 20.9 - 62.4), within(1e-9));
        b.drop("/visits/");
        RecordChecks noDay = RecordChecks.of(
                new Readings(b.without("/date").without("/films/models").build()), Fact.unknown("/date"));
        assertThat(noDay.filmAge().missing()).containsExactly("/date");
        assertThat(noDay.modelsAge().missing()).containsExactly("/films/models", "/date");
    }
}
