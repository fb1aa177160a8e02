package dev.fairlead.audit.run;

import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads off a judgement, for each criterion, the number that came closest to its limit or went farthest beyond it. */
final class ClosestNumbers {
    private final Catalogue catalogue;

    ClosestNumbers(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<CaseRow.Value> of(Judgement judgement) {
        List<CaseRow.Value> all = new ArrayList<>();
        for (CriterionResult r : judgement.results()) {
            CaseRow.Value v = r.failed() ? null : of(r);
            if (v != null) {
                all.add(v);
            }
        }
        return all;
    }

    /** Of the places that decide, the one whose number is worst; null where there is neither number nor reason. */
    private CaseRow.@Nullable Value of(CriterionResult r) {
        CaseRow.Value worst = null;
        double least = Double.POSITIVE_INFINITY;
        for (PlaceResult p : r.places()) {
            if (p.ending() != r.ending()) {
                continue;
            }
            for (Verdict verdict : p.verdicts()) {
                if (worst == null && !verdict.reason().isEmpty()) {
                    worst = CaseRow.Value.reason(
                            r.criterion().id(), p.place().pointer(), String.join(" ", r.reasons()));
                }
                for (Verdict.Seen s : verdict.seen()) {
                    CaseRow.Value v = value(r, p, s);
                    double at = v.margin() / (v.error() > 0 ? v.error() : step(s));
                    if (at < least) {
                        least = at;
                        worst = v;
                    }
                }
            }
        }
        return worst;
    }

    private double step(Verdict.Seen s) {
        return catalogue.threshold(s.limit()).step();
    }

    private CaseRow.Value value(CriterionResult r, PlaceResult p, Verdict.Seen s) {
        Threshold t = catalogue.threshold(s.limit());
        Measured m = s.value();
        double margin = t.bound() == Threshold.Bound.UPPER ? t.value() - m.value() : m.value() - t.value();
        return new CaseRow.Value(
                r.criterion().id(),
                p.place().pointer(),
                String.join(" ", r.reasons()),
                m.value(),
                m.sd(),
                t.unit().symbol(),
                t.value(),
                margin);
    }
}
