package dev.fairlead.audit.cohort;

import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import java.util.List;

/**
 * Facts left out so that one criterion cannot be assessed.
 *
 * @param criterion the criterion
 * @param stage its stage
 * @param pointers the facts to leave out, all of them; {@code {last}} stands for the last visit
 * @param follows other criteria of the same or an earlier stage that cannot be assessed either
 */
public record Gap(String criterion, Stage stage, List<String> pointers, List<Fault.Follower> follows) {
    static Gap of(Stage stage, String criterion, String... pointers) {
        return new Gap(criterion, stage, List.of(pointers), List.of());
    }

    Gap also(Stage from, String... others) {
        List<Fault.Follower> more = new java.util.ArrayList<>(follows);
        for (String o : others) {
            more.add(new Fault.Follower(o, from));
        }
        return new Gap(criterion, stage, pointers, List.copyOf(more));
    }

    boolean fits(Case c) {
        return c.stage().hasReached(stage) && (!pointers.get(0).startsWith("/visits/1/") || c.visits().size() > 1);
    }

    Case in(Case c) {
        Case changed = c;
        for (String p : pointers) {
            changed = Edit.forget(changed, p.replace("{last}", "/visits/" + (c.visits().size() - 1)));
        }
        return changed;
    }

    Planted planted(Case c) {
        return new Planted(criterion, Planted.Kind.NOT_ASSESSED, "left out: " + String.join(", ", pointers),
                follows.stream().filter(f -> c.stage().hasReached(f.stage())).map(Fault.Follower::criterion).toList());
    }
}
