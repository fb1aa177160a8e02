package dev.fairlead.check.whatif;

import dev.fairlead.check.whatif.Trials.Tried;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Puts the best change for each warning into one plan, and takes out again what it can do without. */
final class CombinedPlan {
    private final Trials trials;

    CombinedPlan(Trials trials) {
        this.trials = trials;
    }

    /**
     * One harmless plan that clears all that these clear; empty when they get in each other's way, or when there are
     * fewer than two.
     */
    Optional<Suggestion> of(List<Tried> best) {
        if (best.size() < 2) {
            return Optional.empty();
        }
        TreeSet<String> wanted = new TreeSet<>();
        best.forEach(t -> wanted.addAll(trials.cleared(t)));
        List<Setting> all = new ArrayList<>();
        for (Tried t : best) {
            for (Setting s : t.settings()) {
                Optional<Setting> same = all.stream().filter(s::touches).findFirst();
                if (same.isEmpty()) {
                    all.add(s);
                } else if (s.steps() > same.get().steps()) {
                    all.set(all.indexOf(same.get()), s);
                }
            }
        }
        Optional<Tried> found = clearing(all, wanted);
        for (int i = 0; found.isPresent() && i < all.size(); ) {
            List<Setting> fewer = new ArrayList<>(all);
            fewer.remove(i);
            Optional<Tried> without = fewer.isEmpty() ? Optional.empty() : clearing(fewer, wanted);
            if (without.isPresent()) {
                found = without;
                all = fewer;
            } else {
                i++;
            }
        }
        return found.map(trials::suggestion);
    }

    private Optional<Tried> clearing(List<Setting> settings, Set<String> wanted) {
        Tried t = trials.tryOut(List.copyOf(settings));
        return trials.worsened(t).isEmpty() && trials.cleared(t).containsAll(wanted)
                ? Optional.of(t)
                : Optional.empty();
    }
}
