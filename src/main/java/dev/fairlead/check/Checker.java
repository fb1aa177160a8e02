package dev.fairlead.check;

import dev.fairlead.base.Background;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.findings.Findings;
import dev.fairlead.findings.InputNote;
import dev.fairlead.findings.Reach;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.findings.Subject;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judge;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.Rulebase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Checks cases by one rulebase: measures, judges, and puts the outcome into words. Safe to share between threads. */
public final class Checker {
    private final Supplier<Rulebase> loaded;
    private final Calculations parts;
    private volatile @Nullable Doubts doubts;
    private volatile @Nullable Ready ready;

    /** What is made of the rulebase, once it is there. */
    private record Ready(Rulebase rulebase, Judge judge, RulebaseUsed used) {}

    /** A checker with the full set of measurements. */
    public Checker(Rulebase rulebase) {
        this(rulebase, Calculations.full().of(rulebase.clinic()));
    }

    public Checker(Rulebase rulebase, Calculations parts) {
        this(() -> rulebase, parts);
    }

    /**
     * A checker whose rulebase may still be loading: it is asked for when the first case has been measured, so it is
     * one without a clinic's own figures.
     */
    public Checker(Supplier<Rulebase> loading) {
        this(loading, Calculations.full());
    }

    private Checker(Supplier<Rulebase> loaded, Calculations parts) {
        this.loaded = loaded;
        this.parts = parts;
    }

    private Ready ready() {
        Ready r = ready;
        if (r == null) {
            Rulebase rulebase = loaded.get();
            r = new Ready(rulebase, rulebase.judge(), RulebaseUsed.of(rulebase));
            ready = r;
        }
        return r;
    }

    /** What cases are measured with. */
    public Calculations parts() {
        return parts;
    }

    public Rulebase rulebase() {
        return ready().rulebase();
    }

    /** Checks a case that was read without problems from content with that hash. */
    public Checked check(Case c, String hash, CheckOptions options) {
        return check(c, hash, List.of(), options);
    }

    /** Checks a case; {@code doubts} are what its reading left open. */
    public Checked check(Case c, String hash, List<Problem> doubts, CheckOptions options) {
        Reach reach = options.reach(c);
        Calculations needed = parts(reach.cut() ? reach.full() : reach.judged(), options);
        if (options.doubting().wanted()) {
            // one case alone: its forces are worked out beside the rest; of many, each has a thread already
            Background.start("forces", () -> {
                needed.force().ahead(c);
                return null;
            });
        }
        Worked worked = Measures.of(c, reach.day(), options.workings() ? Workbook.kept() : Workbook.none(), needed);
        Ready with = ready();
        Supplier<Doubt> doubt = options.doubting().wanted()
                ? Background.start("doubts", () -> doubts().of(c, worked.facts(), options))
                : null;
        Judgement judgement = with.judge().judge(worked.facts(), reach.judged());
        Findings findings = Findings.of(judgement, with.rulebase().catalogue(), c, reach.day());
        Report report = Report.of(
                Version.ofProgram(),
                with.used(),
                new Subject(c.id(), hash, reach, beyond(reach, with, worked)),
                reach.stages(),
                findings,
                notes(doubts),
                judgement.errors(),
                worked.workings());
        if (doubt == null) {
            return new Checked(c, report, worked, with.rulebase().catalogue(), Optional.empty());
        }
        Doubt found = doubt.get();
        return new Checked(c, found.mark(report), worked, with.rulebase().catalogue(), Optional.of(found));
    }

    /** Made when first asked for: audits of many cases do without. Two that are made at once learn the same. */
    private Doubts doubts() {
        Doubts made = doubts;
        if (made == null) {
            made = new Doubts(ready().rulebase(), parts);
            doubts = made;
        }
        return made;
    }

    /** The bare verdicts on a case, without words and workings: for audits of many cases. */
    public Judgement judge(Case c, CheckOptions options) {
        return ready().judge().judge(facts(c, options), options.reach(c).judged());
    }

    /** What is made of a case before it is judged. */
    public Worked measured(Case c, CheckOptions options) {
        Reach reach = options.reach(c);
        return Measures.of(c, reach.day(), Workbook.none(), parts(reach.judged(), options));
    }

    /**
     * What is made of a case, as far as criteria of the stages that are judged look at it: for audits of many cases.
     */
    public Worked judgeable(Case c, Reach reach, CheckOptions options) {
        Calculations asking =
                parts(reach.judged(), options).asking(ready().judge().about(reach.judged()));
        return Measures.of(c, reach.day(), Workbook.none(), asking);
    }

    /** The bare verdicts on a case that was {@link #measured}. */
    public Judgement judge(Worked measured, Stage judged) {
        return ready().judge().judge(measured.facts(), judged);
    }

    /** What the rules look at, for those who judge one case by several rulebases. */
    public List<CaseFact> facts(Case c, CheckOptions options) {
        return measured(c, options).facts();
    }

    /** Forces are judged from the bench on; before, the beam model would work for nothing. */
    private Calculations parts(Stage reached, CheckOptions options) {
        return options.forces() && reached.hasReached(Stage.BENCH) ? parts : parts.withoutForces();
    }

    /** How many warnings stand in stages that were left out; empty when none was. */
    private static OptionalInt beyond(Reach reach, Ready with, Worked worked) {
        if (!reach.cut()) {
            return OptionalInt.empty();
        }
        int warnings = 0;
        for (CriterionResult r :
                with.judge().judge(worked.facts(), reach.full()).results()) {
            warnings += r.status() == Status.WARN
                            && !reach.judged().hasReached(r.criterion().stage())
                    ? 1
                    : 0;
        }
        return OptionalInt.of(warnings);
    }

    private static List<InputNote> notes(List<Problem> problems) {
        List<InputNote> notes = new ArrayList<>();
        for (Problem p : problems) {
            notes.add(new InputNote(
                    p.error() ? InputNote.Severity.ERROR : InputNote.Severity.WARNING,
                    p.pointer(),
                    p.line(),
                    p.column(),
                    p.toString()));
        }
        return notes;
    }
}
