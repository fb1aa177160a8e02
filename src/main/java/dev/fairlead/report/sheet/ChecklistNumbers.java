package dev.fairlead.report.sheet;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.SideMarks;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Plan;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import dev.fairlead.model.WirePlan;
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
        Plan plan = c.subject.plan();
        return switch (criterion) {
            case "wire-is-as-planned" -> wire(c.subject.wire());
            case "blank-long-enough" -> one("at least ", c.geometry.blank(), "");
            case "first-bend-offset" -> marks("", SideMarks::offset, " distal to the tube");
            case "fold-length-is-tube-length" -> folds("", FoldOpening::leg, "");
            case "bends-small" ->
                folds("planned height ", FoldOpening::height, " to the wire's middle")
                        .map(h -> h + ", "
                                + Numbers.plain(
                                        c.geometry.planned(Side.RIGHT).height().value()
                                                + c.subject.wire().size().value(),
                                        1)
                                + " mm outside");
            case "exit-clears-gingiva" -> Optional.of("tip of " + Numbers.plain(SideMarks.TIP, 0) + "°");
            case "planned-activation-fits" ->
                folds("stand-off ", FoldOpening::standOff, "")
                        .map(s -> plan.intervalWeeks().known()
                                ? s + " every "
                                        + Numbers.plain(plan.intervalWeeks().value(), 0) + " weeks"
                                : s);
            case "planned-force-fits" ->
                c.forces.band().isEmpty()
                        ? Optional.empty()
                        : Optional.of(
                                Numbers.text(c.forces.end(c.subject, false)).replace(" gf", "") + " to "
                                        + Numbers.text(c.forces.end(c.subject, true)) + " by the model");
            default -> Optional.empty();
        };
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
