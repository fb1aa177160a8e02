package dev.fairlead.report.html;

/** Chances in whole per cent; what rounds to nothing or to all is said as such. */
final class Chance {
    private Chance() {}

    static String words(double chance) {
        double percent = 100 * chance;
        return percent < 0.5 ? "under 1 %" : percent > 99.5 ? "over 99 %" : Math.round(percent) + " %";
    }
}
