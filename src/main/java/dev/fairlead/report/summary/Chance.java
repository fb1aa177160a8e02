package dev.fairlead.report.summary;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Numbers;

/** Chances that a finding changes on re-measuring, in words: whole per cent, never rounded to impossible or certain. */
public final class Chance {
    /** From this chance on it is told of findings that are not close; common practice, no source. */
    private static final double WORTH_A_WORD = 0.05;

    private Chance() {}

    /** The chance of a finding for which it was worked out. */
    public static String of(Finding f) {
        return "could change on re-measuring, " + Numbers.chance(f.flip().getAsDouble());
    }

    public static boolean worthAWord(Finding f) {
        return f.flip().orElse(0) >= WORTH_A_WORD;
    }

    /** What is told of a finding whose error reaches across a limit. */
    public static String close(Finding f) {
        return f.flip().isEmpty() || worthAWord(f)
                ? "close to a limit" + (worthAWord(f) ? ": " + of(f) : "")
                : "close to a limit by the error of an equation or a model; measuring again would hardly change it";
    }

    /** Close to a limit, and the chance where it is close or worth a word; empty when neither is so. */
    public static String remark(Finding f) {
        return f.close() ? close(f) : worthAWord(f) ? of(f) : "";
    }
}
