package dev.fairlead.audit.summary;

import dev.fairlead.rules.Ending;

/**
 * Cases that belong together: of one resident, or of one period.
 *
 * @param name code of the resident, or the period
 * @param judged how often each criterion was judged, in catalogue order
 * @param warned how often each warned
 */
public record Group(String name, int cases, int[] judged, int[] warned) {
    static Group of(String name, int criteria) {
        return new Group(name, 0, new int[criteria], new int[criteria]);
    }

    /** Counts how one criterion ended in one case. */
    void count(int criterion, Ending e) {
        if (e.warns() || e == Ending.PASS) {
            judged[criterion]++;
            warned[criterion] += e.warns() ? 1 : 0;
        }
    }

    Group with(Group other) {
        Group sum = new Group(name, cases + other.cases, judged.clone(), warned.clone());
        for (int i = 0; i < judged.length; i++) {
            sum.judged[i] += other.judged[i];
            sum.warned[i] += other.warned[i];
        }
        return sum;
    }

    /** All warnings. */
    public int warnings() {
        return java.util.Arrays.stream(warned).sum();
    }

    /** Warnings that the overall rates would lead to expect, given what was judged here. */
    public double expected(double[] rates) {
        double sum = 0;
        for (int i = 0; i < judged.length; i++) {
            sum += judged[i] == 0 ? 0 : judged[i] * rates[i];
        }
        return sum;
    }
}
