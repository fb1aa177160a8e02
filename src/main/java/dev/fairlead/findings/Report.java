package dev.fairlead.findings;

import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.verdict.Judgement.OwnError;
import java.util.List;
import java.util.Optional;

/**
 * All that is known after one case was checked. The same case, day and rulebase give an equal report.
 *
 * @param format version of this report's form
 * @param tool version of the program
 * @param stages stages that were judged, in order
 * @param input problems of the input
 * @param errors failures of our own; criteria named there were not judged
 * @param workings the worked numbers
 * @param certainty how sure the findings are; empty when that was not asked
 * @param caution what the report is for, and what it is not
 */
public record Report(
        int format,
        String tool,
        RulebaseUsed rulebase,
        Subject subject,
        List<Stage> stages,
        Findings findings,
        List<InputNote> input,
        List<OwnError> errors,
        List<Working> workings,
        Optional<Certainty> certainty,
        String caution) {
    public static final int FORMAT = 1;

    /** Printed with every report. */
    public static final String CAUTION =
            "This report supports the judgement of a licensed clinician and does not replace it. It says what was"
                    + " checked against which limits, and nothing of what was not checked. Local rules come first where they differ. A pass is not"
                    + " permission, a fact that is missing is never a pass, and a stop means that a licensed clinician looks before the next step.";

    public Report {
        stages = List.copyOf(stages);
        input = List.copyOf(input);
        errors = List.copyOf(errors);
        workings = List.copyOf(workings);
    }

    /** A report of the present form with the usual caution. */
    public static Report of(
            String tool,
            RulebaseUsed rulebase,
            Subject subject,
            List<Stage> stages,
            Findings findings,
            List<InputNote> input,
            List<OwnError> errors,
            List<Working> workings) {
        return new Report(
                FORMAT, tool, rulebase, subject, stages, findings, input, errors, workings, Optional.empty(), CAUTION);
    }

    /** The same report with the chances of another outcome: findings that carry theirs, and what can be said of all. */
    public Report with(Findings marked, Certainty sure) {
        return new Report(
                format, tool, rulebase, subject, stages, marked, input, errors, workings, Optional.of(sure), caution);
    }

    /**
     * Measurements worth taking again, the one that makes most outcomes surer in front; none when that was not asked.
     */
    public List<RepeatAdvice> repeats() {
        return certainty.map(Certainty::repeats).orElse(List.of());
    }

    public Counts counts() {
        return findings.counts();
    }

    /**
     * The worked numbers that a finding holds against its limits: same value and error, from measurements that the
     * finding rests on.
     */
    public List<Working> workingsOf(Finding f) {
        return workings.stream()
                .filter(w -> w.value().known()
                        && rests(w.value(), f)
                        && f.places().stream().flatMap(p -> p.values().stream()).anyMatch(v -> same(w.value(), v)))
                .toList();
    }

    private static boolean rests(Measured m, Finding f) {
        return m.sources().stream().filter(s -> s.startsWith("/")).allMatch(f.usedFields()::contains);
    }

    private static boolean same(Measured m, SeenValue v) {
        return m.unit().dimension() == v.unit().dimension()
                && near(m.unit().to(v.unit(), m.value()), v.value())
                && near(m.unit().to(v.unit(), m.sd()), v.error());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < Measured.ROUNDING;
    }
}
