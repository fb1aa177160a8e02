package dev.fairlead.measure.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.space.Irregularity;
import dev.fairlead.measure.uncertainty.Simulation;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** In a sum of lengths of one picture the error of its scale adds up (JCGM 100:2008, 5.2.2, full correlation). */
class SharedScalesTest {
    private static Case read(int pictureOfTheSecond, String widthOfTheFirst) {
        String text = "{\"fairlead\":1,\"id\":\"a-1\",\"teeth\":{\"42\":{\"width\":" + widthOfTheFirst
                + "},\"41\":{\"width\":{\"value\":5,\"error\":0.2}},\"31\":{\"width\":{\"value\":5,\"error\":0.2}}},"
                + "\"pictured\":[{\"field\":\"/teeth/42/width\",\"picture\":1,\"scaleError\":2},"
                + "{\"field\":\"/teeth/41/width\",\"picture\":" + pictureOfTheSecond + ",\"scaleError\":2}]}";
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "a.json", CaseFormat.JSON)
                .value()
                .orElseThrow();
    }

    private static Measured sum(Case c) {
        Readings r = new Readings(c);
        return r.width(Tooth.of(42)).plus(r.width(Tooth.of(41)));
    }

    @Test
    void oneScaleAddsUpAndTwoDoNot() {
        String plain = "{\"value\":6,\"error\":0.2}";
        Readings r = new Readings(read(1, plain));
        assertThat(r.width(Tooth.of(42)).sd()).as("the whole error stays").isCloseTo(0.2, within(1e-12));
        double own = (0.04 - 0.12 * 0.12) + (0.04 - 0.1 * 0.1);
        assertThat(sum(read(1, plain)).sd()).isCloseTo(Math.sqrt(own + 0.22 * 0.22), within(1e-12));
        assertThat(sum(read(2, plain)).sd()).isCloseTo(Math.sqrt(0.08), within(1e-12));
        assertThat(r.width(Tooth.of(31)).sources()).containsExactly("/teeth/31/width");
    }

    /** Of a mean of a typed reading and one by picture, half of the scale's error is left. */
    @Test
    void besideATypedReadingTheShareIsSmaller() {
        Case c = read(1, "{\"repeats\":[5.8,6.2],\"error\":0.2}");
        Measured width = new Readings(c).width(Tooth.of(42));
        assertThat(width.part("/pictured/0/scaleError")).isCloseTo(6 * 0.02 / 2, within(1e-12));
        assertThat(width.repeats()).containsExactly(5.8, 6.2);
        assertThat(width.sd()).isCloseTo(0.2, within(1e-12));
    }

    /**
     * Five pairs of widths that differ by 0.4 have an error of 0.4 / root 2; three such pairs of segments and 60, 60.4,
     * 60.8 (squares of 0.32 for two degrees of freedom) one of root 0.112; six readings of 2 with squares of 4 one of
     * root 0.8. It replaces the assumed one, the scale stays.
     */
    @Test
    void theErrorOfOnesOwnReadingsKeepsTheScale() {
        StringBuilder facts = new StringBuilder("\"space\":{\"left\":[20,20.4],\"right\":[20,20.4],")
                .append("\"incisors\":[20,20.4],\"perimeter\":[60,60.4,60.8]},")
                .append("\"headFilm\":{\"incisorToAPog\":[1,2,3,2,1,3]},\"teeth\":{");
        for (int tooth : new int[] {42, 41, 31, 32, 33}) {
            facts.append('"').append(tooth).append("\":{\"width\":[5.8,6.2]}").append(tooth == 33 ? "}" : ",");
        }
        String[] fields = {
            "/teeth/42/width", "/space/left", "/space/right", "/space/incisors", "/headFilm/incisorToAPog"
        };
        Readings r = new Readings(pictured(facts.toString(), fields));
        Measured[] lengths = {
            r.width(Tooth.of(42)), r.segment(Side.LEFT), r.segment(Side.RIGHT), r.incisorSegment(), r.incisorToAPog()
        };
        for (int i = 0; i < lengths.length; i++) {
            int readings = i == 4 ? 6 : 2;
            double one = i == 0 ? 0.4 / Math.sqrt(2) : Math.sqrt(i == 4 ? 0.8 : 0.112);
            assertThat(lengths[i].sd()).as(fields[i]).isCloseTo(one / Math.sqrt(readings), within(1e-9));
            assertThat(lengths[i].part("/pictured/0/scaleError"))
                    .as(fields[i])
                    .isCloseTo(0.02 * lengths[i].value() / readings, within(1e-9));
        }
    }

    private static Case pictured(String rest, String... fields) {
        StringBuilder text = new StringBuilder("{\"fairlead\":1,\"id\":\"a-1\"," + rest + ",\"pictured\":[");
        for (int i = 0; i < fields.length; i++) {
            text.append(i == 0 ? "" : ",")
                    .append("{\"field\":\"")
                    .append(fields[i])
                    .append("\",\"picture\":1,\"scaleError\":2}");
        }
        return CaseReader.read(text.append("]}").toString().getBytes(StandardCharsets.UTF_8), "a.json", CaseFormat.JSON)
                .value()
                .orElseThrow();
    }

    /** Five contacts of 1 mm, each ± 0.1, of which 0.02 is the scale's: 0.1 in the sum, not 0.02 root 5. */
    @Test
    void aSumOfContactsCarriesTheScale() {
        Case c = pictured(
                "\"contacts\":{\"43-42\":{\"value\":1,\"error\":0.1},\"42-41\":{\"value\":1,\"error\":0.1},"
                        + "\"41-31\":{\"value\":1,\"error\":0.1},\"31-32\":{\"value\":1,\"error\":0.1},"
                        + "\"32-33\":{\"value\":1,\"error\":0.1}}",
                "/contacts/43-42",
                "/contacts/42-41",
                "/contacts/41-31",
                "/contacts/31-32",
                "/contacts/32-33");
        Measured sum = Irregularity.index(c.contacts());
        assertThat(sum.value()).isCloseTo(5, within(1e-12));
        assertThat(sum.part("/pictured/0/scaleError")).isCloseTo(0.1, within(1e-12));
        assertThat(sum.sd()).isCloseTo(Math.sqrt(5 * (0.01 - 0.0004) + 0.01), within(1e-12));
    }

    /** Width and depth of one picture grow together, so the blank's error holds one share of the scale. */
    @Test
    void theWireCarriesTheScaleOfTheArch() {
        String arch =
                "\"arch\":{\"molarWidth\":{\"value\":44,\"error\":1},\"molarDepth\":{\"value\":23,\"error\":0.6}}";
        Case one = pictured(arch, "/arch/molarWidth", "/arch/molarDepth");
        Measured tube = WireGeometry.of(one).right().tube();
        Measured apart =
                WireGeometry.of(pictured(arch, "/nowhere/at/all")).right().tube();
        assertThat(tube.part("/pictured/0/scaleError"))
                .as("an arch that is 2 % larger has a half that is 2 % longer")
                .isCloseTo(0.02 * tube.value(), within(0.1));
        assertThat(tube.sd()).isGreaterThan(apart.sd());
    }

    /** Landmarks of one picture move apart together: an arch that is 2 % too large is so on both sides at once. */
    @Test
    void theWidthThroughLandmarksCarriesTheScale() {
        double[][] points = {{46, -22, 0}, {43, -13, 17}, {41, -3, 23}, {31, 3, 23}, {33, 13, 17}, {36, 22, 0}};
        StringBuilder text = new StringBuilder("\"landmarks\":[");
        for (double[] p : points) {
            text.append(String.format(
                    java.util.Locale.ROOT,
                    "%s{\"tooth\":%.0f,\"x\":{\"value\":%.0f,\"error\":%.4f},\"y\":{\"value\":%.0f,\"error\":%.4f}}",
                    p == points[0] ? "" : ",",
                    p[0],
                    p[1],
                    Math.hypot(0.1, 0.02 * p[1]),
                    p[2],
                    Math.hypot(0.1, 0.02 * p[2])));
        }
        String landmarks = text.append(']').toString();
        Measured width = PatientArch.of(pictured(landmarks, "/landmarks")).width();
        assertThat(width.part("/pictured/0/scaleError"))
                .as("of the whole width, not of each half by itself")
                .isCloseTo(0.02 * width.value(), within(0.02));
        Measured apart = PatientArch.of(pictured(landmarks, "/nowhere/at/all")).width();
        assertThat(width.sd()).isGreaterThan(1.25 * apart.sd());
    }

    /** In draws one deviation of the scale moves all lengths of the picture the same way. */
    @Test
    void drawsMoveAllLengthsOfAPictureTogether() {
        String teeth = "\"teeth\":{\"42\":{\"width\":{\"value\":5,\"error\":0.101}},"
                + "\"41\":{\"width\":{\"value\":5,\"error\":0.101}}}";
        double both = above(pictured(teeth, "/teeth/42/width", "/teeth/41/width"));
        double single = above(pictured(teeth, "/teeth/42/width"));
        // correlation of 0.98 leaves both above in half of all draws but 1 / pi acos 0.98 halves; independent in a
        // quarter
        assertThat(both).isCloseTo(0.5 - Math.acos(0.9803) / (2 * Math.PI), within(0.03));
        assertThat(single).isCloseTo(0.25, within(0.03));
    }

    /** Share of draws in which both widths are larger than they were. */
    private static double above(Case c) {
        return Simulation.of(
                        c,
                        v -> new int[] {
                            v.tooth(Tooth.of(42)).width().value() > 5
                                            && v.tooth(Tooth.of(41)).width().value() > 5
                                    ? 1
                                    : 0
                        },
                        measurements -> (criterion, deviations) -> false,
                        4000,
                        7)
                .flips()[0];
    }
}
