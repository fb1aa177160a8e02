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

    private static RegressionLine line(List<double[]> readings) {
        return RegressionLine.of(
                readings.stream().mapToDouble(r -> r[0]).toArray(),
                readings.stream().mapToDouble(r -> r[1]).toArray());
    }

    private static List<double[]> sex(String letter) {
        return CHILDREN.entrySet().stream()
                .filter(e -> e.getKey().startsWith(letter))
                .flatMap(e -> e.getValue().stream())
                .toList();
    }

    private static List<RegressionLine> lines() {
        return CHILDREN.values().stream().map(PopulationTest::line).toList();
    }

    /** Ordinary least squares of all boys and all girls, computed from the same table by another program. */
    @Test
    void linesOfBoysAndGirls() {
        assertThat(line(sex("M")).slope()).isEqualTo(0.7844, within(5e-5));
        assertThat(line(sex("M")).intercept()).isEqualTo(16.3406, within(5e-5));
        assertThat(line(sex("F")).slope()).isEqualTo(0.4795, within(5e-5));
        assertThat(line(sex("F")).intercept()).isEqualTo(17.3727, within(5e-5));
        assertThat(CHILDREN.values().stream()
                        .flatMap(List::stream)
                        .mapToDouble(r -> r[1])
                        .average()
                        .orElseThrow())
                .isEqualTo(24.0231, within(5e-5));
    }

    /**
     * Printed result of lme(distance ~ age, data = Orthodont) of the R package nlme: 0.6601852, SDs 0.2264276 and
     * 1.3100399.
     */
    @Test
    void populationOfRatesIsThatOfTheMixedModel() {
        Population p = Population.of(lines());
        assertThat(p.mean()).isEqualTo(0.6601852, within(1e-7));
        assertThat(p.between()).isEqualTo(0.2264276, within(1e-5));
        assertThat(p.within()).isEqualTo(1.3100399, within(1e-6));
    }

    @Test
    void ownRateCountsByItsCertainty() {
        Population p = Population.of(lines());
        for (RegressionLine own : lines()) {
            NumberWithError shrunk = p.shrunk(own);
            assertThat(shrunk.value()).isBetween(Math.min(own.slope(), p.mean()), Math.max(own.slope(), p.mean()));
            assertThat(shrunk.error()).isLessThan(Math.min(p.between(), own.slopeError(p.within())));
        }
        assertThat(p.shrunk(new NumberWithError(2, 0)).value()).isEqualTo(2);
        assertThat(p.shrunk(new NumberWithError(2, 1e9)).value()).isEqualTo(p.mean(), within(1e-9));
        assertThat(p.shrunk(new NumberWithError(2, 1e9)).error())
                .isEqualTo(p.prior().error(), within(1e-9));
        // precision-weighted mean by hand: prior 1 +- 1, own 3 +- 1 give 2 +- 1/sqrt 2
        NumberWithError halfway = new Population(1, 1, 1).shrunk(new NumberWithError(3, 1));
        assertThat(halfway.value()).isEqualTo(2, within(1e-12));
        assertThat(halfway.error()).isEqualTo(Math.sqrt(0.5), within(1e-12));
        assertThat(halfway.low(2)).isEqualTo(2 - Math.sqrt(2), within(1e-12));
        assertThat(halfway.high(2)).isEqualTo(2 + Math.sqrt(2), within(1e-12));
    }

    /**
     * Each child's first three readings, shrunk towards the other children, foretell the fourth better than the child's
     * own line.
     */
    @Test
    void shrunkRatesForetellBetter() {
        double own = 0;
        double drawn = 0;
        for (String child : CHILDREN.keySet()) {
            List<RegressionLine> others = CHILDREN.entrySet().stream()
                    .filter(e -> !e.getKey().equals(child))
                    .map(e -> line(e.getValue()))
                    .toList();
            List<double[]> readings = CHILDREN.get(child);
            RegressionLine early = line(readings.subList(0, 3));
            double centre = early.at(10);
            double last = readings.get(3)[1];
            own += Math.pow(centre + 4 * early.slope() - last, 2);
            drawn += Math.pow(centre + 4 * Population.of(others).shrunk(early).value() - last, 2);
        }
        assertThat(drawn).isLessThan(own);
    }

    @Test
    void errorsOfSlopes() {
        // y 0, 1, 0 at x 0, 1, 2: slope 0, residual squares 2/3, one degree of freedom, spread 2
        RegressionLine line = RegressionLine.of(new double[] {0, 1, 2}, new double[] {0, 1, 0});
        assertThat(line.slopeError()).isEqualTo(Math.sqrt(1.0 / 3), within(1e-12));
        assertThat(line.at(7)).isEqualTo(1.0 / 3, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RegressionLine.of(new double[] {1, 1}, new double[] {1, 2}));
        assertThatIllegalArgumentException().isThrownBy(() -> Population.of(List.of(line)));
        assertThatIllegalArgumentException().isThrownBy(() -> new NumberWithError(1, -1));
        assertThat(Population.of(List.of(line, line)).between()).isZero();
    }

    /** Anscombe 1973, American Statistician 27:17, first of the four sets: slope 0.500, standard error 0.118. */
    @Test
    void theErrorOfASlopeIsThePublishedOne() {
        RegressionLine line = RegressionLine.of(
                new double[] {10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5},
                new double[] {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68});
        assertThat(line.slope()).isEqualTo(0.5, within(5e-4));
        assertThat(line.slopeError()).isEqualTo(0.118, within(5e-4));
    }

    /** By the formula: a spread of 2 between subjects beside an error of 1 weighs 4 / (4 + 1). */
    @Test
    void theOwnRateWeighsByItsShareOfTheVariance() {
        assertThat(new Population(0, 2, 0).weight(1)).isEqualTo(0.8, within(1e-12));
        assertThat(new Population(0, 2, 0).weight(0)).isEqualTo(1);
        assertThat(new Population(0, 0.5, 0).weight(1.5)).isEqualTo(0.1, within(1e-12));
    }
}
