package dev.fairlead.audit.agree;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Draws cases for reviewers, without a word on how the program judged them; the same seed draws the same cases. */
public final class BlindSample {
    private final int n;
    private final SplittableRandom random;
    private final List<CaseRow> drawn = new ArrayList<>();
    private long met;

    public BlindSample(int n, long seed) {
        this.n = n;
        this.random = new SplittableRandom(seed);
    }

    /** Every case that counts is drawn with the same chance (Vitter 1985, algorithm R). */
    public void add(CaseRow row) {
        if (!row.judged() || row.superseded()) {
            return;
        }
        met++;
        if (drawn.size() < n) {
            drawn.add(row);
        } else {
            long at = random.nextLong(met);
            if (at < n) {
                drawn.set((int) at, row);
            }
        }
    }

    /** A table to fill in, as {@code --verdicts} reads it: a row for each criterion that a case has come to. */
    public String table(Catalogue catalogue) {
        StringBuilder out = new StringBuilder("case,criterion,asks,reviewer,verdict\r\n");
        List<Criterion> criteria = catalogue.criteria();
        List<CaseRow> order = new ArrayList<>(drawn);
        for (int i = order.size() - 1; i > 0; i--) {
            int with = random.nextInt(i + 1);
            CaseRow row = order.get(i);
            order.set(i, order.get(with));
            order.set(with, row);
        }
        for (CaseRow row : order) {
            for (int c = 0; c < criteria.size(); c++) {
                if (row.endings()[c] >= 0 && row.ending(c) != Ending.DOES_NOT_APPLY) {
                    out.append(row.id())
                            .append(',')
                            .append(criteria.get(c).id())
                            .append(",\"")
                            .append(criteria.get(c).title().replace("\"", "\"\""))
                            .append("\",,\r\n");
                }
            }
        }
        return out.toString();
    }

    public int size() {
        return drawn.size();
    }
}
