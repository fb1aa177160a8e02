package dev.fairlead.check.whatif;

import dev.fairlead.check.whatif.Trials.Tried;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tries sets of settings of different variables for one warning, the fewest steps first, until a harmless one clears
 * it.
 */
final class Sets {
    private final Trials trials;
    private final int criterion;
    private final int mostSets;
    private int tried;

    Sets(Trials trials, int criterion, int mostSets) {
        this.trials = trials;
        this.criterion = criterion;
        this.mostSets = mostSets;
    }

    /** True when the search was ended before all sets were tried. */
    boolean ended() {
        return tried >= mostSets;
    }

    /** The smallest set of two variables, else of three and so on. */
    Optional<Tried> smallest(List<Variable> variables, int most) {
        for (int size = 2; size <= most; size++) {
            for (int steps = size; steps <= size * Variable.MOST_STEPS; steps++) {
                Optional<Tried> found = of(variables, 0, size, steps, new ArrayList<>());
                if (found.isPresent() || ended()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Sets of {@code size} more settings out of the variables from {@code first} on, with that many steps in all. */
    private Optional<Tried> of(List<Variable> variables, int first, int size, int steps, List<Setting> chosen) {
        if (size == 0) {
            return steps == 0 && !ended() ? harmless(chosen) : Optional.empty();
        }
        for (int v = first; v < variables.size() && !ended(); v++) {
            for (Setting s : variables.get(v).settings()) {
                boolean fits = s.steps() <= steps - (size - 1)
                        && (size > 1 || s.steps() == steps)
                        && chosen.stream().noneMatch(s::touches);
                if (fits) {
                    chosen.add(s);
                    Optional<Tried> found = of(variables, v + 1, size - 1, steps - s.steps(), chosen);
                    chosen.remove(chosen.size() - 1);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Tried> harmless(List<Setting> chosen) {
        tried++;
        Tried t = trials.tryOut(List.copyOf(chosen));
        return trials.clears(t, criterion) && trials.worsened(t).isEmpty() ? Optional.of(t) : Optional.empty();
    }
}
