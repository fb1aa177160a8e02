package dev.fairlead.audit.cohort;

import dev.fairlead.findings.Reach;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Something that goes wrong with a case so that one criterion has to warn.
 *
 * @param criterion the criterion
 * @param stage the stage whose criterion it is: the fault can only be planted in cases that have reached it
 * @param area faults of one area touch the same facts: a case gets one of them at most
 * @param rate share of the cases that can carry it and have no gaps
 * @param says what was done, for people
 * @param follows other criteria that warn as a plain consequence, where their stage has been reached
 * @param fits further condition on the case
 * @param changes gives pointers and new values in turn
 */
public record Fault(
        String criterion,
        Stage stage,
        String area,
        double rate,
        String says,
        List<Follower> follows,
        Predicate<Case> fits,
        Function<Work, Object[]> changes) {
    /** Share of the cases in which a fault is planted when nothing else is stated. */
    public static final double USUAL_RATE = 0.02;
    /**
     * Wire, tubes, folds and travel act on each other: a thinner wire fits a low tube and pushes less, longer legs move
     * the front otherwise.
     */
    static final String STEEL = "steel";

    /**
     * A criterion that ends otherwise as well, and the stage from which it is judged.
     *
     * @param beforeVisits only as long as no visit is recorded
     */
    public record Follower(String criterion, Stage stage, boolean beforeVisits) {
        boolean of(Case c) {
            return reached(c).hasReached(stage) && !(beforeVisits && !c.visits().isEmpty());
        }
    }

    /** What a change may look at: the case before it, and the case's own random numbers. */
    public record Work(Case made, Draws draws) {
        double value(String pointer) {
            return ((dev.fairlead.model.Measured) Edit.get(made, pointer)).value();
        }

        double advance() {
            return made.plan().advanceLeft().value();
        }

        /** Pointer of the last visit. */
        String last() {
            return "/visits/" + (made.visits().size() - 1);
        }
    }

    public Fault {
        follows = List.copyOf(follows);
    }

    static Fault of(String criterion, Stage stage, String area, String says, Function<Work, Object[]> changes) {
        return new Fault(criterion, stage, area, USUAL_RATE, says, List.of(), c -> true, changes);
    }

    Fault at(double otherRate) {
        return new Fault(criterion, stage, area, otherRate, says, follows, fits, changes);
    }

    Fault when(Predicate<Case> condition) {
        return new Fault(criterion, stage, area, rate, says, follows, condition, changes);
    }

    Fault alsoWarns(String other, Stage from) {
        List<Follower> more = new ArrayList<>(follows);
        more.add(new Follower(other, from, false));
        return new Fault(criterion, stage, area, rate, says, more, fits, changes);
    }

    /** True when the fault can be planted in this case. */
    public boolean fits(Case c) {
        return reached(c).hasReached(stage) && fits.test(c);
    }

    /** How far a case is judged, which may be further than the stage that it names. */
    static Stage reached(Case c) {
        return Reach.of(c, Optional.empty(), Optional.empty()).judged();
    }

    Case in(Case c, Draws draws) {
        Object[] pairs = changes.apply(new Work(c, draws));
        Case changed = c;
        for (int i = 0; i < pairs.length; i += 2) {
            changed = Edit.set(changed, (String) pairs[i], pairs[i + 1]);
        }
        return changed;
    }

    Planted planted(Case c) {
        return new Planted(
                criterion,
                Planted.Kind.WARNS,
                says,
                follows.stream().filter(f -> f.of(c)).map(Follower::criterion).toList());
    }
}
