package dev.fairlead.check.whatif;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Pattern;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What is still open to planning in a case: never a fact of the patient, and never what is done already. The plan
 * itself until the target is reached, the wire and its bends until it goes in, today's visit, dates that lie ahead,
 * recalls.
 */
final class PlanVariables {
    /** Round wires that are sold, inches: 0.012 to 0.022. */
    private static final double[] WIRES_INCH = {0.012, 0.014, 0.016, 0.018, 0.020, 0.022};

    private static final double HALF = 0.5;
    private static final double TENTH = 0.1;
    /** Degrees by which a fold is tipped at a time. */
    private static final double TIP = 5;

    private static final int MOST_WEEKS = 8;
    /** A midline that is off by less is left alone, mm; common practice. */
    private static final double OFF_CENTRE = 1;

    private final Case c;
    private final Optional<LocalDate> day;
    private final List<Variable> all = new ArrayList<>();

    private PlanVariables(Case c, Optional<LocalDate> day) {
        this.c = c;
        this.day = day;
    }

    /** The variables of a case judged as of a stage, on a day; without a day nothing dated is open. */
    static List<Variable> of(Case c, Optional<LocalDate> day, Stage reached) {
        PlanVariables v = new PlanVariables(c, day);
        if (reached.compareTo(Stage.ACTIVATION) <= 0) {
            v.plan();
        }
        if (reached.compareTo(Stage.BENCH) <= 0) {
            v.wire();
            v.folds();
        }
        v.visit();
        v.end();
        v.all.removeIf(x -> x.settings().isEmpty());
        return List.copyOf(v.all);
    }

    /**
     * Tells which fields of a case are plan, as of a stage and on a day: those that the search may set, and those that
     * only say what is meant.
     */
    static Predicate<String> isPlan(Case c, Optional<LocalDate> day, Stage reached) {
        Set<String> open = of(c, day, reached).stream()
                .flatMap(v -> v.settings().stream())
                .flatMap(s -> s.changes().stream())
                .map(Change::pointer)
                .collect(Collectors.toSet());
        return p -> open.contains(p)
                || CasePaths.field(p).filter(f -> f.about().planned()).isPresent();
    }

    private void plan() {
        stepped(HALF, "/plan/advanceLeft");
        stepped(HALF, "/plan/advanceRight");
        stepped(HALF, "/plan/advanceLeft", "/plan/advanceRight");
        stepped(HALF, "/plan/standOff");
        stepped(HALF, "/plan/standOffLeft");
        stepped(HALF, "/plan/standOffRight");
        stepped(1, "/plan/intervalWeeks");
        if (c.plan().pattern().known()) {
            other(
                    "/plan/pattern",
                    c.plan().pattern().is(Pattern.BOTH_SIDES) ? Pattern.ALTERNATING : Pattern.BOTH_SIDES);
        }
        sided();
    }

    /**
     * A front that is to go to one side needs more advance on the other; half a millimetre more makes the plan a sided
     * one.
     */
    private void sided() {
        Measured midline = c.bite().lowerMidline();
        Measured left = c.plan().advanceLeft();
        Measured right = c.plan().advanceRight();
        if (!midline.known()
                || Math.abs(midline.value()) < OFF_CENTRE
                || !left.known()
                || !right.known()
                || c.plan().moreOn().isOther(Sides.BOTH)) {
            return;
        }
        // the lower midline is positive to the left: it comes back by more advance on the left
        boolean more = midline.value() > 0;
        double least = Math.max(left.value(), right.value()) + HALF;
        all.add(new Variable(List.of(new Setting(
                1,
                List.of(
                        Change.of(c, "/plan/moreOn", (more ? Sides.LEFT : Sides.RIGHT).word()),
                        Change.of(c, more ? "/plan/advanceLeft" : "/plan/advanceRight", least))))));
    }

    private void wire() {
        if (c.wire().size().known()) {
            List<Double> sizes = new ArrayList<>();
            for (double inch : WIRES_INCH) {
                double mm = Math.rint(Unit.INCH.to(Unit.MM, inch) * 1000) / 1000;
                if (Math.abs(mm - c.wire().size().value()) > 0.002) {
                    sizes.add(mm);
                }
            }
            sizes.sort(Comparator.comparingDouble(
                    mm -> Math.abs(mm - c.wire().size().value())));
            all.add(planned(sizes));
        }
        stepped(HALF, "/wire/formMolarWidth");
        stepped(HALF, "/wire/formCanineWidth");
        stepped(HALF, "/wire/formDepth");
        stepped(TENTH, "/wire/beakRadius");
        stepped(5, "/wire/blankLength");
    }

    /** Another wire, planned as well as taken. */
    private Variable planned(List<Double> sizes) {
        List<Setting> settings = new ArrayList<>();
        for (double mm : sizes) {
            settings.add(new Setting(
                    settings.size() + 1,
                    List.of(Change.of(c, "/wire/size", mm), Change.of(c, "/wire/plannedSize", mm))));
        }
        return new Variable(settings);
    }

    /** What the hand sets when a fold is bent; what comes of it (square, parallel, gaps) is measured again. */
    private void folds() {
        for (Side side : Side.values()) {
            String fold = "/bench/" + side.word();
            for (String length : new String[] {"/firstBendOffset", "/length", "/height", "/firstMark"}) {
                stepped(HALF, fold + length);
            }
            stepped(TENTH, fold + "/bendRadius");
            tip(fold, c.bench().fold(side));
        }
    }

    /** The tip towards the cheek takes the fold off the gingiva and brings it to the cheek: height times its sine. */
    private void tip(String at, Fold fold) {
        if (!fold.buccalTip().known()
                || !fold.height().known()
                || !fold.clearGingiva().known()) {
            return;
        }
        List<Setting> settings = new ArrayList<>();
        for (Setting s : Variable.stepped(c, TIP, at + "/buccalTip").settings()) {
            double before = Math.toRadians(fold.buccalTip().value());
            double after = Math.toRadians((double) s.changes().get(0).value());
            double moved = fold.height().value() * (Math.sin(after) - Math.sin(before));
            List<Change> follows = new ArrayList<>();
            follows.add(Change.of(
                    c,
                    at + "/clearGingiva",
                    tenth(Math.max(0, fold.clearGingiva().value() + moved))));
            if (fold.clearCheek().known()) {
                follows.add(Change.of(
                        c,
                        at + "/clearCheek",
                        tenth(Math.max(0, fold.clearCheek().value() - moved))));
            }
            settings.add(new Setting(s.steps(), s.changes(), follows));
        }
        all.add(new Variable(settings));
    }

    private static double tenth(double value) {
        return Math.rint(value * 10) / 10;
    }

    /** What is done today can still be done otherwise, or on another day. */
    private void visit() {
        int last = c.visits().size() - 1;
        if (last < 0 || !open(c.visits().get(last).date(), true)) {
            return;
        }
        String at = "/visits/" + last;
        opening(at, c.visits().get(last), Side.LEFT);
        opening(at, c.visits().get(last), Side.RIGHT);
        opening(at, c.visits().get(last), Side.values());
        oneSide(at, c.visits().get(last));
        weeks(at + "/date", c.visits().get(last).date(), 1);
    }

    /** Only one fold is opened: the other side then stands off by nothing. */
    private void oneSide(String at, Visit v) {
        if (!v.activated().is(Sides.BOTH)) {
            return;
        }
        List<Setting> settings = new ArrayList<>();
        for (Side side : Side.values()) {
            List<Change> follows = new ArrayList<>();
            for (String field : new String[] {"standOff", "gapOpened"}) {
                String pointer = at + "/" + (side == Side.LEFT ? Side.RIGHT : Side.LEFT).word() + "/" + field;
                if (!Double.isNaN(Variable.value(c, pointer))) {
                    follows.add(Change.of(c, pointer, 0.0));
                }
            }
            settings.add(new Setting(1, List.of(Change.of(c, at + "/activated", side.word())), follows));
        }
        all.add(new Variable(settings));
    }

    /** A fold that is opened to another stand-off has its gap opened in proportion, to a tenth of a millimetre. */
    private void opening(String visit, Visit v, Side... sides) {
        String[] pointers = new String[sides.length];
        for (int i = 0; i < sides.length; i++) {
            pointers[i] = visit + "/" + sides[i].word() + "/standOff";
        }
        List<Setting> settings = new ArrayList<>();
        for (Setting s : Variable.stepped(c, HALF, pointers).settings()) {
            List<Change> changes = new ArrayList<>(s.changes());
            for (int i = 0; i < sides.length; i++) {
                Measured gap = v.side(sides[i]).gapOpened();
                double now = v.side(sides[i]).standOff().value();
                if (gap.known() && now > 0) {
                    double share = (double) s.changes().get(i).value() / now;
                    changes.add(Change.of(
                            c, visit + "/" + sides[i].word() + "/gapOpened", Math.rint(gap.value() * share * 10) / 10));
                }
            }
            settings.add(new Setting(s.steps(), changes));
        }
        all.add(new Variable(settings));
    }

    private void end() {
        weeks("/holding/impression", c.holding().impression(), -1, 1);
        weeks("/holding/cemented", c.holding().cemented(), -1, 1);
        weeks("/holding/debonded", c.holding().debonded(), -1, 1);
        stepped(1, "/holding/secondMolarRecall");
        stepped(1, "/holding/recall");
    }

    private boolean open(Fact<LocalDate> date, boolean today) {
        return date.known()
                && day.isPresent()
                && (date.get().isAfter(day.get()) || today && date.get().equals(day.get()));
    }

    /** A day that lies ahead, by whole weeks; never before the day of judging. */
    private void weeks(String pointer, Fact<LocalDate> date, int... directions) {
        if (!open(date, directions.length == 1)) {
            return;
        }
        List<Setting> settings = new ArrayList<>();
        for (int direction : directions) {
            for (int k = 1; k <= MOST_WEEKS; k++) {
                LocalDate then = date.get().plusWeeks((long) direction * k);
                if (!then.isBefore(day.orElseThrow())) {
                    settings.add(new Setting(k, List.of(Change.of(c, pointer, then.toString()))));
                }
            }
        }
        all.add(new Variable(settings));
    }

    private void stepped(double step, String... pointers) {
        for (String p : pointers) {
            if (Double.isNaN(Variable.value(c, p))) {
                return;
            }
        }
        all.add(Variable.stepped(c, step, pointers));
    }

    private void other(String pointer, Pattern value) {
        all.add(Variable.listed(c, pointer, List.of(value.word())));
    }
}
