package dev.fairlead.audit.summary;

import dev.fairlead.model.Stage;
import java.util.function.IntPredicate;

/**
 * What each case shows and what would be expected of it if all were alike: the overall rates of the criteria that were
 * judged in it, made to add up to what was seen at each stage.
 *
 * @param observed by case
 * @param expected by case
 */
record Expectation(double[] observed, double[] expected) {
    /** Warnings of the criteria that are meant. */
    static Expectation warnings(CaseStore s, IntPredicate meant) {
        return of(s, meant, false);
    }

    /** Stops. */
    static Expectation stops(CaseStore s) {
        return of(s, c -> true, true);
    }

    private static Expectation of(CaseStore s, IntPredicate meant, boolean stops) {
        int mark = stops ? CaseStore.STOPPED : CaseStore.WARNED;
        double[] rate = new double[s.criteria()];
        for (int c = 0; c < rate.length; c++) {
            int judged = s.count(CaseStore.JUDGED, c);
            rate[c] = meant.test(c) && judged > 0 ? (double) s.count(mark, c) / judged : 0;
        }
        double[] observed = new double[s.size()];
        double[] expected = new double[s.size()];
        s.sums(mark, rate, observed, expected);
        return new Expectation(observed, expected).levelled(s);
    }

    /** Missing facts among those asked. */
    static Expectation missing(CaseStore s) {
        double[] observed = new double[s.size()];
        double[] expected = new double[s.size()];
        for (int i = 0; i < s.size(); i++) {
            observed[i] = s.missing(i);
            expected[i] = s.asked(i);
        }
        return new Expectation(observed, expected).levelled(s);
    }

    private Expectation levelled(CaseStore s) {
        double[] o = new double[Stage.values().length];
        double[] e = new double[o.length];
        for (int i = 0; i < s.size(); i++) {
            o[s.stage(i)] += observed[i];
            e[s.stage(i)] += expected[i];
        }
        for (int i = 0; i < s.size(); i++) {
            int at = s.stage(i);
            expected[i] = e[at] > 0 ? expected[i] * o[at] / e[at] : 0;
        }
        return this;
    }
}
