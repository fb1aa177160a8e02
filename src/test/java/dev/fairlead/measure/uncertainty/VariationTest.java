package dev.fairlead.measure.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.Edit;
import java.nio.charset.StandardCharsets;
import java.util.List;
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
        Variation v = new Variation(c);
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
        Variation v = new Variation(c);
        assertThat(v.pointers()).containsExactly("/teeth/41/recession");
        assertThat(at(off(v, "/teeth/41/recession", -50), "/teeth/41/recession").value())
                .isZero();
        double most =
                at(off(v, "/teeth/41/recession", 1000), "/teeth/41/recession").value();
        assertThat(most)
                .isEqualTo(at(off(v, "/teeth/41/recession", 2000), "/teeth/41/recession")
                        .value());
    }

    /**
     * A probe at nought has found nothing, so no size of it was misread; a gap of nought was measured, and so was a
     * bite edge to edge, beside which there is one that is open.
     */
    @Test
    void nothingFoundInTheMouthIsNotVaried() {
        Case c = new CaseBuilder()
                .set("/teeth/41/recession", 0.0)
                .set("/teeth/41/keratinised", 0.0)
                .set("/contacts/42-41", 0.0)
                .set("/bite/overbite", 0.0)
                .build();
        Variation v = new Variation(c);
        assertThat(v.pointers()).containsExactlyInAnyOrder("/contacts/42-41", "/bite/overbite");
        Case read = v.next(new double[2]);
        assertThat(at(c, "/teeth/41/keratinised").sd()).isPositive();
        assertThat(at(read, "/teeth/41/keratinised").known()).isTrue();
        assertThat(at(read, "/teeth/41/keratinised").sd()).isZero();
        assertThat(at(read, "/teeth/41/recession").sd()).isZero();
        assertThat(at(off(v, "/contacts/42-41", 1), "/contacts/42-41").value()).isPositive();
        moves(v, c, "/bite/overbite", at(c, "/bite/overbite").sd());
    }

    @Test
    void aCaseOfWhichNothingWasMeasuredStaysItself() {
        Case c = new CaseBuilder().set("/plan/advanceLeft", 2).build();
        Variation v = new Variation(c);
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
        Variation v = new Variation(c);
        // squares over degrees of freedom: segments 3 x 0.08 + 0.32 for 5, planes 3 x 0.32 for 6, angle 17.5 for 5,
        // length 4 for 5; the mean of k readings has the error of one over root k
        moves(v, c, "/space/left", Math.sqrt(0.112 / 2));
        moves(v, c, "/space/right", Math.sqrt(0.112 / 2));
        moves(v, c, "/space/incisors", Math.sqrt(0.112 / 2));
        moves(v, c, "/space/perimeter", Math.sqrt(0.112 / 3));
        moves(v, c, "/headFilm/mandibularPlane", Math.sqrt(0.16 / 3));
        moves(v, c, "/headFilm/anb", Math.sqrt(0.16 / 3));
        moves(v, c, "/headFilm/occlusalMandibular", Math.sqrt(0.16 / 3));
        moves(v, c, "/headFilm/incisorMandibular", Math.sqrt(3.5 / 6));
        moves(v, c, "/headFilm/incisorToAPog", Math.sqrt(0.8 / 6));
    }

    /** A scale of 2 % moves every length of its picture by 2 %; what is left of an error is each length's own. */
    @Test
    void lengthsOfOnePictureMoveTogetherWithItsScale() {
        String incisor = "\"11\":{\"width\":{\"value\":8.5,\"error\":0.1}},";
        Case c = pictured(incisor);
        String scale = "/pictured/0/scaleError";
        Variation v = new Variation(c);
        assertThat(v.pointers())
                .containsExactly("/teeth/11/width", scale, "/teeth/41/width", "/teeth/42/width", "/space/left");
        Case larger = off(v, scale, 1);
        assertThat(at(larger, "/teeth/42/width").value()).isCloseTo(6.12, within(1e-9));
        assertThat(at(larger, "/teeth/41/width").value()).isCloseTo(5.1, within(1e-9));
        assertThat(at(larger, "/space/left").value()).isEqualTo(20);
        assertThat(at(larger, "/teeth/11/width").value()).isEqualTo(8.5);
        moves(v, c, "/teeth/42/width", Math.sqrt(0.04 - 0.12 * 0.12));
        moves(v, c, "/teeth/41/width", 0.24);
    }

    @Test
    void aScaleIsVariedOnce() {
        assertThat(new Variation(pictured("")).pointers())
                .containsExactly("/pictured/0/scaleError", "/teeth/41/width", "/teeth/42/width", "/space/left");
    }

    private static Case pictured(String teeth) {
        String text = "{\"fairlead\":1,\"id\":\"a-1\",\"teeth\":{" + teeth
                + "\"42\":{\"width\":{\"value\":6,\"error\":0.2}},\"41\":{\"width\":{\"value\":5,\"error\":0.26}}},"
                + "\"space\":{\"left\":{\"value\":20,\"error\":0.3}},"
                + "\"pictured\":[{\"field\":\"/teeth/42/width\",\"picture\":1,\"scaleError\":2},"
                + "{\"field\":\"/teeth/41/width\",\"picture\":1,\"scaleError\":2}]}";
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "a.json", CaseFormat.JSON)
                .value()
                .orElseThrow();
    }

    /** A visit at which nothing was measured and a tooth of which only the state is known stand as they were. */
    @Test
    void whatHoldsNoMeasurementIsLeftAlone() {
        Case c = new CaseBuilder()
                .set("/visits/0/date", "2026-03-01")
                .set("/visits/1/left/space", 21.0)
                .set("/teeth/41/state", "erupted")
                .set("/teeth/42/width", 5.5)
                .build();
        Variation v = new Variation(c);
        assertThat(v.pointers()).containsExactly("/teeth/42/width", "/visits/1/left/space");
        Case moved = off(v, "/visits/1/left/space", 1);
        assertThat(moved.visits()).hasSize(2);
        assertThat(moved.visits().get(0)).isEqualTo(c.visits().get(0));
        assertThat(moved.teeth().get(Tooth.of(41))).isEqualTo(c.teeth().get(Tooth.of(41)));
        moves(v, c, "/visits/1/left/space", at(c, "/visits/1/left/space").sd());
    }

    private static void moves(Variation v, Case c, String pointer, double sd) {
        assertThat(at(off(v, pointer, 1), pointer).value() - at(c, pointer).value())
                .as(pointer)
                .isCloseTo(sd, within(1e-9));
    }
}
