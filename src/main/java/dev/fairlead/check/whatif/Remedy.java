package dev.fairlead.check.whatif;

import dev.fairlead.findings.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What could clear one open warning.
 *
 * @param finding the warning
 * @param single the smallest change of one thing that makes nothing worse at any stage, away from the limits of others
 *     where there is such a one
 * @param set the smallest set of changes that clears it without harm to others, where no single change does
 * @param rests what the warning rests on that no plan can change, in words
 * @param searched false when the search was ended before all sets were tried
 */
public record Remedy(
        Finding finding, Optional<Suggestion> single, Optional<Suggestion> set, List<String> rests, boolean searched) {
    public Remedy {
        rests = List.copyOf(rests);
    }

    /** True where it was bent, opened or read otherwise than planned: no other plan helps, but doing it again may. */
    public boolean redone() {
        return best().isEmpty()
                && !finding.usedFields().isEmpty()
                && finding.usedFields().stream().anyMatch(p -> p.startsWith("/bench/"));
    }

    /** The best there is; empty when no plan clears it. */
    public Optional<Suggestion> best() {
        return set.isPresent() ? set : single;
    }
}
