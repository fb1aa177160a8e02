package dev.fairlead.measure.position;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.records.Readings;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Measured;
import org.junit.jupiter.api.Test;

/** Where a plan of 2 mm on the left and 1 mm on the right puts incisors, by hand: 1.5 mm in the mean. */
class TippedIncisorsTest {
    private static CaseBuilder plan() {
        return new CaseBuilder()
                .set("/headFilm/incisorMandibular", 92)
                .set("/headFilm/mandibularPlane", 30)
                .set("/headFilm/incisorToAPog", 1)
                .set("/bite/overjet", 5)
                .set("/bite/overbite", 3)
                .set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 1);
    }

    private static PredictedIncisors after(CaseBuilder b) {
        return after(b, Clinic.PUBLISHED);
    }

    private static PredictedIncisors after(CaseBuilder b, Clinic clinic) {
        return new TippedIncisors(clinic).after(new Readings(b.build()), Workbook.none());
    }

    private static void is(Measured m, double value) {
        assertThat(m.value()).isEqualTo(value, within(1e-9));
    }

    /**
     * Planes 16 + 0.7 (30 - 25) = 19.5 degrees apart, 15 more at the steepest: leans of 21.5 and 36.5. A lever turns by
     * 57.2958 / R degrees for each mm.
     */
    @Test
    void withoutACentreItIsSoManyDegreesAMillimetre() {
        PredictedIncisors p = after(plan());
        is(p.inclination(), 92 + 2.9 * 1.5);
        is(p.compensated(), 92 + 2.9 * 1.5 + 5);
        is(p.inclinationMost(), 92 + 3.6 * 1.5);
        is(p.compensatedMost(), 92 + 3.6 * 1.5 + 5);
        is(p.toAPog(), 2.5);
        is(p.overjet(), 3);
        is(p.overbite(), 3 - new Tipping(Math.toDegrees(1) / 2.9, 21.5).edgeDrop(1.5));
        is(p.overbiteLeast(), 3 - new Tipping(Math.toDegrees(1) / 3.6, 36.5).edgeDrop(1.5));
        is(p.mildest().overbite(), p.overbite().value());
    }

    @Test
    void aboutACentreItIsTheTurnFromTheOcclusalPlane() {
        PredictedIncisors p = after(plan().set("/headFilm/tippingRadius", 20));
        is(p.inclination(), 92 + new Tipping(20, 21.5).inclinationChange(1.5));
        is(p.inclinationMost(), 92 + new Tipping(20, 36.5).inclinationChange(1.5));
        is(p.mildest().inclination(), p.inclination().value());
        is(p.mildest().overbite(), 3 - new Tipping(20, 21.5).edgeDrop(1.5));
        // leaning by 30 degrees an edge can come forward by half of R: a shorter R is taken as 3 / 0.5
        PredictedIncisors tooShort = after(plan().set("/headFilm/incisorMandibular", 90)
                .set("/headFilm/occlusalMandibular", 30)
                .set("/headFilm/tippingRadius", 1)
                .set("/plan/advanceLeft", 3)
                .set("/plan/advanceRight", 3));
        is(tooShort.inclination(), 150);
    }

    @Test
    void aClinicThatTipsMoreIsFollowedAndOneThatTipsLessMakesNothingMilder() {
        Clinic.Spread gain = new Clinic.Spread(1, 0.1);
        Clinic more = new Clinic(new Clinic.Spread(1.2, 0.1), gain, gain, 20);
        Clinic less = new Clinic(new Clinic.Spread(0.8, 0.1), gain, gain, 20);
        is(after(plan(), more).inclination(), 92 + 1.2 * 2.9 * 1.5);
        is(after(plan(), more).inclinationMost(), 92 + 1.2 * 3.6 * 1.5);
        is(after(plan(), less).inclination(), 92 + 0.8 * 2.9 * 1.5);
        is(after(plan(), less).inclinationMost(), 92 + 3.6 * 1.5);
    }

    /** What is missing is taken as mild as it can be: a side that is not advanced, an incisor at 60 degrees. */
    @Test
    void theMildestStandsInWhereSomethingIsMissing() {
        PredictedIncisors oneSide = after(plan().without("/plan/advanceLeft"));
        assertThat(oneSide.overjet().missing()).containsExactly("/plan/advanceLeft");
        is(oneSide.mildest().overjet(), 5 - 1);
        is(oneSide.mildest().toAPog(), 1 + 0.5);
        is(oneSide.mildest().inclination(), 92 + 2.9 * 0.5);
        is(oneSide.mildest().compensated(), 92 + 2.9 * 0.5 + 5);
        PredictedIncisors noAngle = after(plan().without("/headFilm/incisorMandibular"));
        assertThat(noAngle.mildest().inclination().missing()).containsExactly("/headFilm/incisorMandibular");
        is(
                noAngle.mildest().overbite(),
                after(plan().set("/headFilm/incisorMandibular", 60)).overbite().value());
        PredictedIncisors never = after(plan().set("/headFilm/incisorMandibular", CaseBuilder.NOT_APPLICABLE));
        assertThat(never.mildest().overbite().applies()).isFalse();
    }
}
