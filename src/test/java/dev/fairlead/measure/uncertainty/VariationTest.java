package dev.fairlead.measure.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A variant of a case is off by what was drawn, in what was measured, and in nothing else. */
class VariationTest {
    private static Measured at(Case c, String pointer) {
        return (Measured) Edit.get(c, pointer);
    }

    /** One draw of so many standard deviations of one measurement, all others as they were read. */
    private static Case off(Variation v, String pointer, double deviations) {
        double[] normal = new double[v.pointers().size()];
        normal[v.pointers().indexOf(pointer)] = deviations;
        return v.next(normal);
    }

    @Test
    void eachMeasurementMovesByItsOwnErrorAlone() {
        Case c = SampleCase.full().build();
        Variation v = new Variation(c, Map.of());
        Case read = v.next(new double[v.pointers().size()]);
        for (String pointer : List.of(
                "/space/left",
                "/teeth/31/width",
                "/visits/1/left/space",
                "/hardware/contactsNow/42-41",
                "/hardware/brackets/31/fromMidline")) {
            Measured was = at(c, pointer);
            Case moved = off(v, pointer, 0.5);
            assertThat(at(moved, pointer).value()).as(pointer).isCloseTo(was.value() + 0.5 * was.sd(), within(1e-9));
            assertThat(at(moved, pointer).sd()).as("exact").isZero();
            assertThat(Edit.set(moved, pointer, at(read, pointer)))
                    .as("all else")
                    .isEqualTo(read);
        }
        assertThat(at(read, "/space/left").value())
                .isEqualTo(at(c, "/space/left").value());
    }

    @Test
    void aDrawStaysWithinTheRangeOfItsField() {
        Case c = new CaseBuilder().set("/teeth/41/recession", 1.0).build();
        Variation v = new Variation(c, Map.of());
        assertThat(v.pointers()).containsExactly("/teeth/41/recession");
        assertThat(at(off(v, "/teeth/41/recession", -50), "/teeth/41/recession").value())
                .isZero();
        double most =
                at(off(v, "/teeth/41/recession", 1000), "/teeth/41/recession").value();
        assertThat(most)
                .isEqualTo(at(off(v, "/teeth/41/recession", 2000), "/teeth/41/recession")
                        .value());
    }

    /** A probe at nought has found nothing, so no size of it was misread; a gap of nought was measured. */
    @Test
    void nothingFoundInTheMouthIsNotVaried() {
        Case c = new CaseBuilder()
                .set("/teeth/41/recession", 0.0)
                .set("/contacts/42-41", 0.0)
                .build();
        Variation v = new Variation(c, Map.of());
        assertThat(v.pointers()).containsExactly("/contacts/42-41");
        assertThat(at(v.next(new double[1]), "/teeth/41/recession").sd()).isZero();
        assertThat(at(off(v, "/contacts/42-41", 1), "/contacts/42-41").value()).isPositive();
    }

    @Test
    void aFactorMakesTheErrorOfOneMeasurementSmaller() {
        Case c =
                new CaseBuilder().set("/space/left", 20).set("/space/right", 21).build();
        Variation v = new Variation(c, Map.of("/space/left", 0.5));
        double sd = at(c, "/space/left").sd();
        assertThat(at(off(v, "/space/left", 1), "/space/left").value()).isCloseTo(20 + sd / 2, within(1e-9));
        assertThat(at(off(v, "/space/right", 1), "/space/right").value()).isCloseTo(21 + sd, within(1e-9));
        Variation none = new Variation(c, Map.of("/space/left", 0.0));
        assertThat(none.pointers()).containsExactly("/space/right");
        assertThat(at(none.next(new double[1]), "/space/left").sd()).isZero();
    }

    @Test
    void aCaseOfWhichNothingWasMeasuredStaysItself() {
        Case c = new CaseBuilder().set("/plan/advanceLeft", 2).build();
        Variation v = new Variation(c, Map.of());
        assertThat(v.next(new double[0])).isSameAs(c);
    }

    /** Five pairs of readings 0.4 apart have an error of 0.2828, and a mean of two readings 0.2 (Dahlberg). */
    @Test
    void ownDuplicatesReplaceTheAssumedErrorOfTheirKind() {
        CaseBuilder b = new CaseBuilder();
        for (String segment : List.of("left", "right", "incisors")) {
            b.set("/space/" + segment, new double[] {20, 20.4});
        }
        b.set("/space/perimeter", new double[] {60, 60.4, 60.8});
        for (String angle : List.of("mandibularPlane", "anb", "occlusalMandibular")) {
            b.set("/headFilm/" + angle, new double[] {4, 4.4, 4.8});
        }
        b.set("/headFilm/incisorMandibular", new double[] {90, 91, 92, 93, 94, 95});
        b.set("/headFilm/incisorToAPog", new double[] {1, 2, 3, 2, 1, 3});
        Case c = b.build();
        Variation v = new Variation(c, Map.of());
        // squares over degrees of freedom: segments 3 x 0.08 + 0.32 for 5, planes 3 x 0.32 for 6, angle 17.5 for 5,
        // length 4 for 5; the mean of k readings has the error of one over root k
        moves(v, c, "/space/left", Math.sqrt(0.112 / 2));
        moves(v, c, "/space/right", Math.sqrt(0.112 / 2));
        moves(v, c, "/space/incisors", Math.sqrt(0.112 / 2));
        moves(v, c, "/space/perimeter", Math.sqrt(0.112 / 3));
        moves(v, c, "/headFilm/mandibularPlane", Math.sqrt(0.16 / 3));
        moves(v, c, "/headFilm/anb", Math.sqrt(0.16 / 3));
        moves(v, c, "/headFilm/incisorMandibular", Math.sqrt(3.5 / 6));
        moves(v, c, "/headFilm/incisorToAPog", Math.sqrt(0.8 / 6));
    }

    private static void moves(Variation v, Case c, String pointer, double sd) {
        assertThat(at(off(v, pointer, 1), pointer).value() - at(c, pointer).value())
                .as(pointer)
                .isCloseTo(sd, within(1e-9));
    }
}
