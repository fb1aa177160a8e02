package dev.fairlead.audit.outcome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.Clinic.Spread;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A clinic's own figures against simulated clinics whose truth is known. */
class ClinicFiguresTest {
    private static final SimulatedClinic OTHER =
            new SimulatedClinic(new Spread(1.35, 0.20), new Spread(0.45, 0.10), new Spread(0.85, 0.10));

    private static Map<Attained.Kind, Outturn.Parameter> own(SimulatedClinic clinic, int n, long seed) {
        return SimulatedClinic.outturn(clinic.cases(n, seed), Clinic.PUBLISHED).own();
    }

    /** Mean of 300 cases within three standard errors; spread with the errors of reading taken out. */
    @Test
    void manyCasesShowTheTruth() {
        // two films read with 2 degrees of error hide a spread of tipping that is not wide
        SimulatedClinic wide = new SimulatedClinic(new Spread(1.35, 0.50), OTHER.rate(), OTHER.gain());
        Map<Attained.Kind, Outturn.Parameter> own = own(wide, 300, 11);
        assertThat(own.get(Attained.Kind.TIPPING).mean()).isCloseTo(1.35, within(0.15));
        assertThat(own.get(Attained.Kind.TIPPING).sd()).isCloseTo(0.50, within(0.15));
        assertThat(own.get(Attained.Kind.RATE).mean()).isCloseTo(0.45, within(0.08));
        assertThat(own.get(Attained.Kind.GAIN).mean()).isCloseTo(0.85, within(0.03));
        assertThat(own.get(Attained.Kind.GAIN).sd()).isCloseTo(0.10, within(0.05));
    }

    @Test
    void fewCasesAreDrawnTowardsWhatIsPublishedAndFewerAreRefused() {
        List<Case> cases = OTHER.cases(20, 5);
        ClinicFigures f = ClinicFigures.of(SimulatedClinic.outturn(cases, Clinic.PUBLISHED))
                .orElseThrow();
        double own = f.drawn().get(Attained.Kind.GAIN).own().mean();
        // k0 = 10 published, 20 of one's own
        assertThat(f.clinic().gain().mean()).isCloseTo((10 * 1 + 20 * own) / 30, within(1e-12));
        assertThat(f.clinic().cases()).isEqualTo(20);
        assertThat(f.clinic().faults()).isEmpty();
        assertThat(ClinicFigures.of(SimulatedClinic.outturn(cases.subList(0, 14), Clinic.PUBLISHED)))
                .isEmpty();
    }

    /**
     * Few visits read with a ruler cannot tell the spread of the rate: then the published one stays, and is not
     * narrowed.
     */
    @Test
    void aSpreadThatDrownsInErrorsIsNotTakenForNone() {
        ClinicFigures f = ClinicFigures.of(SimulatedClinic.outturn(OTHER.cases(60, 9), Clinic.PUBLISHED))
                .orElseThrow();
        assertThat(f.drawn().get(Attained.Kind.RATE).own().worth()).isLessThan(60);
        assertThat(f.clinic().rate().sd()).isGreaterThan(0.15);
        assertThat(f.clinic().tipping().sd()).isGreaterThan(0.1);
    }

    /**
     * What the figures are for: in a clinic unlike the published ones, intervals made with 20 of its own cases hold
     * next cases as often as they promise, and intervals as published do not.
     */
    @Test
    void intervalsFitTheClinicOnceItsOwnCasesAreIn() {
        List<Attained> published = new ArrayList<>();
        List<Attained> calibrated = new ArrayList<>();
        for (int clinic = 0; clinic < 12; clinic++) {
            List<Case> cases = OTHER.cases(50, 100 + clinic);
            Clinic own = ClinicFigures.of(SimulatedClinic.outturn(cases.subList(0, 20), Clinic.PUBLISHED))
                    .orElseThrow()
                    .clinic();
            for (Case next : cases.subList(20, 50)) {
                published.addAll(SimulatedClinic.attained(next, Clinic.PUBLISHED));
                calibrated.addAll(SimulatedClinic.attained(next, own));
            }
        }
        for (Attained.Kind kind : List.of(Attained.Kind.INCLINATION, Attained.Kind.SPACE)) {
            double before = within95(published, kind);
            double after = within95(calibrated, kind);
            System.out.printf(
                    "%s: next cases within the 95 %% interval: published %.1f %%, own figures %.1f %%%n",
                    kind, 100 * before, 100 * after);
            assertThat(after).as("%s", kind).isBetween(0.92, 0.99);
            assertThat(after).as("%s", kind).isGreaterThan(before);
        }
    }

    private static double within95(List<Attained> all, Attained.Kind kind) {
        return all.stream()
                .filter(a -> a.kind() == kind)
                .mapToDouble(a -> Math.abs(a.standardised()) <= 1.96 ? 1 : 0)
                .average()
                .orElseThrow();
    }

    /** A clinic just like the published one: no bias is told, and the stated intervals hold what they promise. */
    @Test
    void whereAllIsAsPublishedNothingIsOff() {
        Clinic p = Clinic.PUBLISHED;
        Outturn o = SimulatedClinic.outturn(new SimulatedClinic(p.tipping(), p.rate(), p.gain()).cases(200, 3), p);
        for (Outturn.Line l : o.lines()) {
            if (l.kind() == Attained.Kind.INCLINATION || l.kind() == Attained.Kind.SPACE) {
                assertThat(l.standardised().bias()).as("%s", l.kind()).isCloseTo(0, within(0.25));
                assertThat(l.standardised().spread()).as("%s", l.kind()).isCloseTo(1, within(0.2));
                assertThat(l.within95().share()).as("%s", l.kind()).isCloseTo(0.95, within(0.05));
            }
        }
    }
}
