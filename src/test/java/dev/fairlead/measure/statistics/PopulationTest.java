package dev.fairlead.measure.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Growth of 27 children at 8, 10, 12 and 14 years, mm (Potthoff & Roy, Biometrika 1964;51:313-326). */
class PopulationTest {
    private static final Map<String, List<double[]>> CHILDREN = new LinkedHashMap<>();

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = PopulationTest.class.getResourceAsStream("/orthodont.csv")) {
            new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .skip(1)
                    .map(l -> l.split(","))
                    .forEach(f -> CHILDREN.computeIfAbsent(f[3], k -> new ArrayList<>())
                            .add(new double[] {Double.parseDouble(f[2]), Double.parseDouble(f[1])}));
        }
        assertThat(CHILDREN).hasSize(27);
    }

    /**
     * Printed result of lme(distance ~ age, data = Orthodont) of the R package nlme: mean rate and its SD between
     * children, mm a year, and the SD of a reading about a child's own line, mm.
     */
    private static final Population PRINTED = new Population(0.6601852, 0.2264276, 1.3100399);

    private static SimpleRegression line(List<double[]> readings) {
        SimpleRegression line = new SimpleRegression();
        readings.forEach(r -> line.addData(r[0], r[1]));
        return line;
    }

    /** A child's own rate, its error by what the printed SD of a reading makes of the child's readings. */
    private static NumberWithError own(SimpleRegression line) {
        return new NumberWithError(line.getSlope(), PRINTED.within() / Math.sqrt(line.getXSumSquares()));
    }

    /**
     * Of children seen at the same times, the mean of their own rates is the printed one, before and after shrinking.
     */
    @Test
    void theMeanOfAllRatesIsThatOfTheMixedModel() {
        assertThat(CHILDREN.values().stream()
                        .mapToDouble(r -> own(line(r)).value())
                        .average()
                        .orElseThrow())
                .isEqualTo(PRINTED.mean(), within(1e-7));
        assertThat(CHILDREN.values().stream()
                        .mapToDouble(r -> PRINTED.shrunk(own(line(r))).value())
                        .average()
                        .orElseThrow())
                .isEqualTo(PRINTED.mean(), within(1e-7));
    }

    @Test
    void ownRateCountsByItsCertainty() {
        for (List<double[]> child : CHILDREN.values()) {
            NumberWithError own = own(line(child));
            NumberWithError shrunk = PRINTED.shrunk(own);
            assertThat(shrunk.value())
                    .isBetween(Math.min(own.value(), PRINTED.mean()), Math.max(own.value(), PRINTED.mean()));
            assertThat(shrunk.error()).isLessThan(Math.min(PRINTED.between(), own.error()));
        }
        assertThat(PRINTED.shrunk(new NumberWithError(2, 0)).value()).isEqualTo(2);
        assertThat(PRINTED.shrunk(new NumberWithError(2, 1e9)).value()).isEqualTo(PRINTED.mean(), within(1e-9));
        assertThat(PRINTED.shrunk(new NumberWithError(2, 1e9)).error())
                .isEqualTo(PRINTED.prior().error(), within(1e-9));
        // precision-weighted mean by hand: prior 1 +- 1, own 3 +- 1 give 2 +- 1/sqrt 2
        NumberWithError halfway = new Population(1, 1, 1).shrunk(new NumberWithError(3, 1));
        assertThat(halfway.value()).isEqualTo(2, within(1e-12));
        assertThat(halfway.error()).isEqualTo(Math.sqrt(0.5), within(1e-12));
        assertThat(halfway.low(2)).isEqualTo(2 - Math.sqrt(2), within(1e-12));
        assertThat(halfway.high(2)).isEqualTo(2 + Math.sqrt(2), within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> new NumberWithError(1, -1));
    }

    /** Each child's first three readings, shrunk towards all children, foretell the fourth better than the own line. */
    @Test
    void shrunkRatesForetellBetter() {
        double own = 0;
        double drawn = 0;
        for (List<double[]> readings : CHILDREN.values()) {
            SimpleRegression early = line(readings.subList(0, 3));
            double centre = early.predict(10);
            double last = readings.get(3)[1];
            own += Math.pow(centre + 4 * early.getSlope() - last, 2);
            drawn += Math.pow(centre + 4 * PRINTED.shrunk(own(early)).value() - last, 2);
        }
        assertThat(drawn).isLessThan(own);
    }

    /** By the formula: a spread of 2 between subjects beside an error of 1 weighs 4 / (4 + 1). */
    @Test
    void theOwnRateWeighsByItsShareOfTheVariance() {
        assertThat(new Population(0, 2, 0).weight(1)).isEqualTo(0.8, within(1e-12));
        assertThat(new Population(0, 2, 0).weight(0)).isEqualTo(1);
        assertThat(new Population(0, 0.5, 0).weight(1.5)).isEqualTo(0.1, within(1e-12));
    }
}
