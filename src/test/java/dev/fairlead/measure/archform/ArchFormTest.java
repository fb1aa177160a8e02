package dev.fairlead.measure.archform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchFormTest {

    /**
     * Noroozi, Nik & Saeeda 2001: Y = A X^6 + B X^2 through (0,0), (Wc/2, Dc) and (Wm/2, Dm), so both equations must
     * hold.
     */
    @Test
    void sixthDegreePolynomialSolvesItsTwoEquations() {
        Random random = new Random(21);
        int solved = 0;
        for (int n = 0; n < 50; n++) {
            ArchDimensions m = measures(random);
            SixthDegreeArch arch;
            try {
                arch = SixthDegreeArch.through(m);
            } catch (IllegalArgumentException turnsBack) {
                assertThat(turnsBack).hasMessageContaining("turns back");
                continue;
            }
            solved++;
            double c = m.canineWidth() / 2;
            double w = m.molarWidth() / 2;
            assertThat(arch.a() * Math.pow(c, 6) + arch.b() * c * c).isEqualTo(m.canineDepth(), within(1e-9));
            assertThat(arch.a() * Math.pow(w, 6) + arch.b() * w * w).isEqualTo(m.molarDepth(), within(1e-9));
            assertThat(ArchFamily.SIXTH_DEGREE.of(m)).isEqualTo(arch);
        }
        assertThat(solved).isGreaterThan(25);
        // by hand: c = 1, m = 2, Dc = 3, Dm = 72: B = 3 - A, 64 A + 4 B = 72, so A = 1, B = 2
        assertThat(SixthDegreeArch.through(new ArchDimensions(4, 72, 2, 3))).isEqualTo(new SixthDegreeArch(4, 1, 2));
    }

    private static ArchDimensions measures(Random random) {
        double wm = Arches.between(random, 40, 56);
        double dm = Arches.between(random, 20, 40);
        return new ArchDimensions(
                wm, dm, wm * Arches.between(random, 0.45, 0.65), dm * Arches.between(random, 0.15, 0.35));
    }

    @Test
    void conicRunsThroughCaninesAndMolars() {
        Random random = new Random(22);
        for (int n = 0; n < 50; n++) {
            ArchDimensions m = measures(random);
            ConicArch conic = ConicArch.through(m);
            Point canine = new Point(m.canineWidth() / 2, m.molarDepth() - m.canineDepth());
            assertThat(Math.abs(new Projector(conic).nearest(canine).outside())).isLessThan(1e-8);
            assertThat(conic.at(1).x()).isEqualTo(m.molarWidth() / 2, within(1e-9));
        }
        // points of a circle of radius 5 and of the parabola x^2 = 4h
        assertThat(ConicArch.through(new ArchDimensions(10, 5, 8, 2)).weight()).isEqualTo(0, within(1e-12));
        assertThat(ConicArch.through(new ArchDimensions(8, 4, 4, 1)).weight()).isEqualTo(1, within(1e-12));
        assertThat(new ConicArch(8, 4, 1).name()).isEqualTo("parabola");
    }

    /** The index of a parabola is Wc/Wm; that of the other two curves follows from their formulas at Wc/Wm = 0.56. */
    @Test
    void limitsOfTheClassesLieBetweenThreeKnownCurves() {
        double k = 0.56;
        double ellipse = (1 - Math.sqrt(1 - k * k)) / k;
        double beta = (1 - Math.pow(1 - k * k, 0.8)) / k;
        ArchForm.CutOffs own = ArchForm.CutOffs.OWN_CONVENTION;
        assertThat((own.squareTo() + own.ovoidFrom()) / 2).isEqualTo((ellipse + beta) / 2, within(3e-3));
        assertThat((own.ovoidTo() + own.taperedFrom()) / 2).isEqualTo((beta + k) / 2, within(3e-3));
        assertThat(ArchForm.of(ellipse, own)).isEqualTo(ArchForm.SQUARE);
        assertThat(ArchForm.of(beta, own)).isEqualTo(ArchForm.OVOID);
        assertThat(ArchForm.of(k, own)).isEqualTo(ArchForm.TAPERED);
    }

    @ParameterizedTest
    @CsvSource({
        "0.20, SQUARE",
        "0.37, SQUARE",
        "0.371, BETWEEN_SQUARE_AND_OVOID",
        "0.399, BETWEEN_SQUARE_AND_OVOID",
        "0.40, OVOID",
        "0.495, OVOID",
        "0.51, BETWEEN_OVOID_AND_TAPERED",
        "0.524, BETWEEN_OVOID_AND_TAPERED",
        "0.525, TAPERED",
        "0.9, TAPERED"
    })
    void limitsBelongToTheClassTheyBound(double index, ArchForm form) {
        assertThat(ArchForm.of(index, ArchForm.CutOffs.OWN_CONVENTION)).isEqualTo(form);
    }

    @Test
    void indexIsThePublishedRatio() {
        // (6/24)/(26/44)
        assertThat(new ArchDimensions(44, 24, 26, 6).formIndex()).isEqualTo(0.4230769, within(1e-7));
        BetaArch beta = new BetaArch(44, 24);
        ArchDimensions m = ArchDimensions.of(beta, 14);
        assertThat(beta.height(m.canineWidth() / 2)).isEqualTo(24 - m.canineDepth(), within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> ArchForm.of(0, ArchForm.CutOffs.OWN_CONVENTION));
        assertThatIllegalArgumentException().isThrownBy(() -> new ArchDimensions(44, 24, 45, 6));
        assertThatIllegalArgumentException().isThrownBy(() -> new ArchForm.CutOffs(0.4, 0.4, 0.5, 0.6));
    }

    /**
     * Hawley 1905: points J on the first circle at a chord of R from A; triangle CDE equilateral, its side DE the
     * second radius; AFG equilateral in the second circle. The lines to the molars enclose the published "constant 42
     * degrees".
     */
    @Test
    void hawleyConstruction() {
        double r = 18.2; // 5.4 + 5.9 + 6.9 (Black)
        HawleyArch arch = new HawleyArch(r);
        Point apex = arch.at(0);
        Point j = arch.canineDistal();
        Point end = arch.at(1);
        assertThat(apex.distance(j)).isEqualTo(r, within(1e-9));
        assertThat(apex.distance(end)).isEqualTo(4 * r, within(1e-9));
        assertThat(arch.width()).isEqualTo(4 * r, within(1e-9));
        assertThat(arch.at(-1).distance(end)).isEqualTo(4 * r, within(1e-9));
        assertThat(arch.secondRadius()).isEqualTo(2.3094 * r, within(1e-3));
        // C is the end of the first diameter; the ray C-J meets the tangent at A half a side from A, at 30 degrees from
        // CA
        Point c = new Point(0, apex.y() - 2 * r);
        double half = 2 * r * (j.x() - c.x()) / (j.y() - c.y());
        assertThat(2 * half).isEqualTo(arch.secondRadius(), within(1e-9));
        Point centre = new Point(0, apex.y() - arch.secondRadius());
        assertThat(centre.distance(end)).isEqualTo(arch.secondRadius(), within(1e-9));
        assertThat(arch.posteriorAngle()).isEqualTo(20.94, within(5e-3));
        assertThat(2 * arch.posteriorAngle()).isEqualTo(42, within(0.2));
        assertThat(arch.arcLength(arch.breaks()[1], arch.breaks()[3])).isEqualTo(2 * Math.PI / 3 * r, within(1e-9));
        assertThat(arch.perimeter()).isEqualTo(2 * Math.PI / 3 * r + 2 * j.distance(end), within(1e-9));
        assertThat(j).isEqualTo(new Point(Math.sqrt(3) / 2 * r, apex.y() - r / 2));
    }

    @Test
    void reshapedCurvesHaveTheWantedSize() {
        Landmarks landmarks = Landmarks.of(Arches.crowded(new Random(23)));
        for (ArchFit fit : ArchFit.all(landmarks)) {
            ArchCurve other = fit.curve().reshaped(50, 27);
            assertThat(other.width()).isEqualTo(50, within(1e-9));
            assertThat(other.depth()).isEqualTo(27, within(1e-9));
        }
        ArchCurve hawley = new HawleyArch(12).reshaped(50, 27);
        assertThat(hawley.width()).isEqualTo(50, within(1e-9));
        assertThat(hawley.depth()).isEqualTo(27, within(1e-9));
        assertThat(hawley.name()).isEqualTo("Hawley construction, stretched");
    }
}
