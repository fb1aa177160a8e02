package dev.fairlead.report.sheet;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.FoldReadings;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.measure.wire.WireMeasures;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Plan;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What a criterion of the checklist asks of this case's wire, in its own numbers. */
final class ChecklistNumbers {
    private final SheetCase c;

    ChecklistNumbers(SheetCase c) {
        this.c = c;
    }

    /** The numbers of a criterion; empty where it has none of this case, or they are not known. */
    Optional<String> of(String criterion) {
        Optional<String> bench = bench(criterion);
        return bench.isPresent() ? bench : chair(criterion);
    }

    private Optional<String> bench(String criterion) {
        WirePlan wire = c.subject.wire();
        return switch (criterion) {
            case "wire-is-as-planned" -> wire(wire);
            case "blank-long-enough" -> one("at least ", c.geometry.blank(), "");
            case "arch-form-fits", "shape-kept" ->
                both(
                        one("child's arch ", c.geometry.arch().width(), " wide at the tubes"),
                        one("", c.subject.arch().canineWidth(), " at the canines"));
            case "midline-marked" ->
                one("", c.geometry.blank().times(0.5), " from the ends of a blank as short as it may be");
            case "first-bend-offset" -> marks("", SideMarks::offset, " distal to the tube");
            case "fold-length-is-tube-length" -> folds("", FoldOpening::leg, "");
            case "bends-small" ->
                both(
                        folds("", f -> readings(f).heightOutside(), " high outside"),
                        folds("", FoldOpening::height, " to the wire's middle"));
            case "bends-square" -> Optional.of("square but for the tip of " + degrees(SideMarks.TIP));
            case "legs-parallel" ->
                folds("gap ", f -> readings(f).gapInside(), " inside at both its ends, until it is opened");
            case "exit-clears-gingiva" ->
                Optional.of("tip of " + degrees(SideMarks.TIP)
                        + sides(", and ", s -> WireMeasures.swing(c.subject, s), " of swing at the planned stand-off")
                                .orElse(""));
            case "other-side-marked-seated" ->
                one("left first bend ", c.geometry.left().offset(), " distal to its tube");
            case "sides-match" ->
                both(
                        sides("first bends ", s -> c.geometry.marks(s).firstBend(), " from the midline"),
                        folds("", FoldOpening::leg, " long"));
            case "passive-on-model" -> slots();
            case "planned-activation-fits" -> activation();
            case "planned-force-fits" -> force();
            default -> Optional.empty();
        };
    }

    private Optional<String> chair(String criterion) {
        return switch (criterion) {
            case "stop-seated" ->
                sides("mesial end of the tube ", s -> c.geometry.marks(s).tube(), " from the midline along the wire");
            case "passive-in-mouth" -> slots();
            case "gingival-clearance" -> folds("front sinks ", FoldOpening::drop, " when opened, unless levelled");
            case "cheek-clearance" ->
                sides("swings ", s -> WireMeasures.swing(c.subject, s), " towards the cheek when opened");
            case "all-tied" -> tied();
            case "distal-ends-flush" ->
                sides("tail of ", s -> c.subject.hardware().tube(s).length(), " in the tube");
            case "cut-end-caught" -> sides("pieces of about ", this::piece, "");
            case "instructions-given" ->
                c.subject.plan().intervalWeeks().known()
                        ? Optional.of("next visit in "
                                + Numbers.plain(c.subject.plan().intervalWeeks().value(), 0) + " weeks")
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    private FoldReadings readings(FoldOpening f) {
        return FoldReadings.of(f, c.subject.wire().size());
    }

    private static String degrees(double d) {
        return Numbers.plain(d, 0) + "°";
    }

    private static Optional<String> both(Optional<String> first, Optional<String> second) {
        return first.map(a -> second.map(b -> a + ", " + b).orElse(a)).or(() -> second);
    }

    /**
     * What is cut off distal to a tube: the half of the blank that is in hand, or else of the shortest, less the cut.
     */
    private Measured piece(Side side) {
        Measured blank = c.subject.wire().blankLength();
        Measured half = (blank.known() ? blank : c.geometry.blank()).times(0.5);
        return half.minus(c.geometry.marks(side).cut());
    }

    private Optional<String> slots() {
        return c.subject.wire().size().known()
                ? both(
                        Optional.of("wire of "
                                + Numbers.plain(c.subject.wire().size().value(), 3) + " mm"),
                        one("", c.geometry.line().front(), " before the incisors"))
                : Optional.empty();
    }

    private Optional<String> tied() {
        List<String> teeth = Tooth.LOWER_INCISORS.stream()
                .filter(t -> c.subject.hardware().brackets().containsKey(t))
                .map(Tooth::toString)
                .toList();
        return teeth.isEmpty() ? Optional.empty() : Optional.of("brackets on " + String.join(", ", teeth));
    }

    private Optional<String> activation() {
        Plan plan = c.subject.plan();
        return folds("stand-off ", FoldOpening::standOff, "")
                .map(s -> plan.intervalWeeks().known()
                        ? s + " every " + Numbers.plain(plan.intervalWeeks().value(), 0) + " weeks"
                        : s);
    }

    private Optional<String> force() {
        return c.forces.band().isEmpty()
                ? Optional.empty()
                : Optional.of(Numbers.text(c.forces.end(c.subject, false)).replace(" gf", "") + " to "
                        + Numbers.text(c.forces.end(c.subject, true)) + " by the model");
    }

    private static Optional<String> wire(WirePlan w) {
        return w.plannedSize().known()
                ? Optional.of(Numbers.plain(w.plannedSize().value(), 3) + " mm ("
                        + Numbers.plain(Unit.MM.to(Unit.INCH, w.plannedSize().value()), 3) + " in) planned"
                        + word(w.temper()))
                : Optional.empty();
    }

    private static <T extends Choice> String word(Fact<T> fact) {
        return fact.value().map(v -> ", " + v.word().replace('-', ' ')).orElse("");
    }

    private static Optional<String> one(String before, Measured m, String after) {
        return m.known() ? Optional.of(before + Numbers.plain(m.value(), 1) + " mm" + after) : Optional.empty();
    }

    private Optional<String> marks(String before, Function<SideMarks, Measured> what, String after) {
        return sides(before, s -> what.apply(c.geometry.marks(s)), after);
    }

    private Optional<String> folds(String before, Function<FoldOpening, Measured> what, String after) {
        return sides(before, s -> what.apply(c.geometry.planned(s)), after);
    }

    private static Optional<String> sides(String before, Function<Side, Measured> what, String after) {
        Measured right = what.apply(Side.RIGHT);
        Measured left = what.apply(Side.LEFT);
        if (!right.known() || !left.known()) {
            return Optional.empty();
        }
        String r = Numbers.plain(right.value(), 1);
        String l = Numbers.plain(left.value(), 1);
        return Optional.of(before + (r.equals(l) ? r + " mm" : "right " + r + " mm, left " + l + " mm") + after);
    }
}
