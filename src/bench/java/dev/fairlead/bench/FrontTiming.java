package dev.fairlead.bench;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.Format;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Workbook;
import dev.fairlead.measure.arch.FormMisfit;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.model.Case;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** Warm processor time per case of what arch form and incisor position add to an audit, and of a case with all working; plain loops, no harness. */
public final class FrontTiming {
    private static final String PLAIN = """
            {"fairlead": 1, "id": "timing", "stage": "holding",
             "teeth": {"42": {"width": 5.9}, "41": {"width": 5.4}, "31": {"width": 5.5}, "32": {"width": 6.0}},
             "space": {"left": 20.5, "right": 20.9, "incisors": 21.8},
             "arch": {"molarWidth": 44, "molarDepth": 24, "canineWidth": 26, "canineDepth": 6},
             "headFilm": {"incisorMandibular": 89, "mandibularPlane": 27, "incisorToAPog": 0.5, "tippingRadius": 22},
             "bite": {"overjet": 4, "overbite": 3},
             "plan": {"advanceLeft": 2, "advanceRight": 1.5},
             "wire": {"formMolarWidth": 45, "formCanineWidth": 27, "formDepth": 24.5}%s}
            """;
    private static final String LANDMARKS = """
            , "landmarks": [
              {"tooth": 46, "x": -22, "y": 0}, {"tooth": 45, "x": -20.6, "y": 6.5}, {"tooth": 44, "x": -18.2, "y": 12.6},
              {"tooth": 43, "x": -13.1, "y": 18.1}, {"tooth": 42, "x": -8.3, "y": 21.9}, {"tooth": 41, "x": -2.8, "y": 23.6},
              {"tooth": 31, "x": 2.7, "y": 24.1}, {"tooth": 32, "x": 8.1, "y": 21.8}, {"tooth": 33, "x": 13.0, "y": 18.2},
              {"tooth": 34, "x": 17.9, "y": 12.7}, {"tooth": 35, "x": 20.4, "y": 6.6}, {"tooth": 36, "x": 22, "y": 0}]""";

    /** Processor time of this thread, so that a busy machine does not count. */
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private FrontTiming() {}

    public static void main(String[] args) {
        Case plain = read(PLAIN.formatted(""));
        Case digitised = read(PLAIN.formatted(LANDMARKS));
        time("misfit of the wire, widths", 200_000, i -> FormMisfit.of(plain, PatientArch.of(plain)).rms().value());
        time("misfit of the wire, landmarks", 2_000, i -> FormMisfit.of(digitised, PatientArch.of(digitised)).rms().value());
        time("all facts, widths", 100_000, i -> Measures.of(plain, Optional.empty(), Workbook.none()).facts().size());
        time("all facts, landmarks", 2_000, i -> Measures.of(digitised, Optional.empty(), Workbook.none()).facts().size());
        time("facts and working, widths", 3_000, i -> Measures.of(plain, Optional.empty(), Workbook.kept()).workings().size());
        time("facts and working, landmarks", 1_000, i -> Measures.of(digitised, Optional.empty(), Workbook.kept()).workings().size());
    }

    private static Case read(String json) {
        return CaseReader.read(json.getBytes(StandardCharsets.UTF_8), "timing", Format.JSON).value().orElseThrow();
    }

    private static void time(String what, int times, IntToDoubleFunction run) {
        double sink = 0;
        long best = Long.MAX_VALUE;
        for (int round = 0; round < 5; round++) {
            long start = CLOCK.getCurrentThreadCpuTime();
            for (int i = 0; i < times; i++) {
                sink += run.applyAsDouble(i);
            }
            best = Math.min(best, (CLOCK.getCurrentThreadCpuTime() - start) / times);
        }
        System.out.printf(Locale.ROOT, "%-32s %9.1f us  (%s)%n", what, best / 1000.0, Double.isFinite(sink) ? "ok" : "not finite");
    }
}
