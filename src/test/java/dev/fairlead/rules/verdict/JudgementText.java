package dev.fairlead.rules.verdict;

/** Everything that a judgement says, in words that can be compared. */
public final class JudgementText {
    private JudgementText() {}

    /** The result of one criterion. */
    public static CriterionResult result(Judgement judgement, String criterion) {
        return judgement.results().stream()
                .filter(r -> r.criterion().id().equals(criterion))
                .findFirst()
                .orElseThrow();
    }

    static String of(Judgement judgement) {
        StringBuilder all = new StringBuilder();
        for (CriterionResult r : judgement.results()) {
            all.append(r.criterion().id())
                    .append(' ')
                    .append(r.status())
                    .append(' ')
                    .append(r.failed())
                    .append(r.reasons())
                    .append(r.missing())
                    .append('\n');
            for (PlaceResult p : r.places()) {
                all.append("  ")
                        .append(p.place())
                        .append(' ')
                        .append(p.status())
                        .append(' ')
                        .append(p.missing())
                        .append(' ')
                        .append(p.fact());
                p.verdicts()
                        .forEach(v -> all.append("\n    ")
                                .append(v.criterion())
                                .append(' ')
                                .append(v.ending())
                                .append(' ')
                                .append(v.reason())
                                .append(' ')
                                .append(v.seen())
                                .append(v.fact() == p.fact()));
                all.append('\n');
            }
        }
        return all.append(judgement.errors()).toString();
    }
}
