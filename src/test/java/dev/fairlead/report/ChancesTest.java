package dev.fairlead.report;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Doubt;
import dev.fairlead.check.Doubting;
import dev.fairlead.check.Doubts;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Chances that are told beside those of many draws of errors, each of which measures and judges the case anew. */
class ChancesTest {
    private static final Doubts DOUBTS = new Doubts(Rulebase.builtIn(), Calculations.full());
    private static final int DRAWS = 800;

    static List<Path> files() throws IOException {
        return Demo.files();
    }

    @ParameterizedTest
    @MethodSource("files")
    void whatIsToldAgreesWithManyDraws(Path file) {
        Checked checked = Demo.checked(file);
        Doubt drawn = DOUBTS.of(checked.subject(), CheckOptions.USUAL.with(Doubting.drawn(DRAWS, 4)));
        for (Doubt.Flip f : drawn.flips()) {
            double told = checked.report().findings().of(f.criterion()).flip().orElse(0);
            double share = f.simulated().orElseThrow();
            // 0.05, and twice the sampling error of the comparison itself
            double slack = 0.05 + 2 * Math.sqrt(share * (1 - share) / DRAWS);
            assertThat(Math.abs(told - share))
                    .as(
                            "%s of %s: told %.3f, drawn %.3f, first order %.3f",
                            f.criterion(), file, told, share, f.analytic())
                    .isLessThan(slack);
        }
    }

    @Test
    void theCleanCaseExpectsFewResultsToChange() throws IOException {
        assertThat(Demo.checked("heron-07").report().certainty().orElseThrow().expectedFlips())
                .isLessThan(4);
    }
}
