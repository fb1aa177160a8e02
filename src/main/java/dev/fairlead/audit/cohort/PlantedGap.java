package dev.fairlead.audit.cohort;

import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Facts left out so that one criterion cannot be assessed.
 *
 * @param criterion the criterion
 * @param stage its stage
 * @param area gaps of one area leave out facts that stand in for each other: a case gets one of them at most
 * @param pointers the facts to leave out, all of them; {@code {last}} stands for the last visit
 * @param follows other criteria that cannot be assessed either, from their stage on
 * @param fits further condition on the case
 */
public record PlantedGap(
        String criterion,
        Stage stage,
        String area,
        List<String> pointers,
        List<Fault.Follower> follows,
        Predicate<Case> fits) {
    static PlantedGap of(Stage stage, String criterion, String... pointers) {
        return new PlantedGap(criterion, stage, criterion, List.of(pointers), List.of(), c -> true);
    }

    PlantedGap also(Stage from, String... others) {
        List<Fault.Follower> more = new ArrayList<>(follows);
        for (String o : others) {
            more.add(new Fault.Follower(o, from, false));
        }
        return new PlantedGap(criterion, stage, area, pointers, List.copyOf(more), fits);
    }

    /** The same while no visit is recorded. */
    PlantedGap alsoBeforeVisits(Stage from, String other) {
        List<Fault.Follower> more = new ArrayList<>(follows);
        more.add(new Fault.Follower(other, from, true));
        return new PlantedGap(criterion, stage, area, pointers, List.copyOf(more), fits);
    }

    PlantedGap when(Predicate<Case> condition) {
        return new PlantedGap(criterion, stage, area, pointers, follows, condition);
    }

    PlantedGap in(String otherArea) {
        return new PlantedGap(criterion, stage, otherArea, pointers, follows, fits);
    }

    /** True when the gap can be made in this case. */
    public boolean fits(Case c) {
        return Fault.reached(c).hasReached(stage) && fits.test(c);
    }

    Case in(Case c) {
        Case changed = c;
        for (String p : pointers) {
            changed = Edit.forget(
                    changed, p.replace("{last}", "/visits/" + (c.visits().size() - 1)));
        }
        return changed;
    }

    Planted planted(Case c) {
        return new Planted(
                criterion,
                Planted.Kind.NOT_ASSESSED,
                "left out: " + String.join(", ", pointers),
                follows.stream()
                        .filter(f -> f.of(c))
                        .map(Fault.Follower::criterion)
                        .toList());
    }
}
