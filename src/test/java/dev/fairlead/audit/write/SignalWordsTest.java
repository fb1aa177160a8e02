package dev.fairlead.audit.write;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.statistics.Trend;
import dev.fairlead.audit.summary.Trends;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a trend is called follows from its interval and from all the trends that are told beside it. */
class SignalWordsTest {

    @Test
    void aTrendIsOnlyUnclearWhereItsOwnIntervalHoldsNoChange() {
        assertThat(SignalWords.trend(line(1.18, 3.08, true))).isEqualTo("rises: ×1.91 a year (1.18–3.08)");
        assertThat(SignalWords.trend(line(1.18, 3.08, false))).isEqualTo("may rise: ×1.91 a year (1.18–3.08)");
        assertThat(SignalWords.trend(line(0.50, 0.98, false))).startsWith("may fall: ");
        assertThat(SignalWords.trend(line(0.50, 0.98, true))).startsWith("falls: ");
        assertThat(SignalWords.trend(line(0.96, 1.37, false))).startsWith("no clear change: ");
    }

    @Test
    void mayIsExplainedWhereItIsSaid() {
        assertThat(SignalWords.may(List.of(line(0.96, 1.37, false), line(1.5, 2.5, true))))
                .isFalse();
        assertThat(SignalWords.may(List.of(line(0.96, 1.37, false), line(1.18, 3.08, false))))
                .isTrue();
    }

    private static Trends.Line line(double low, double high, boolean out) {
        // so many cases that the quantile of t is that of the normal distribution, 1.96
        double error = Math.log(high / low) / (2 * 1.95996);
        Trend trend = new Trend(0, Math.log(low * high) / 2, error, 1, 1_000_000, 0.05);
        return new Trends.Line(Trends.Of.STEP, "insertion", 40, 20, trend, out);
    }
}
