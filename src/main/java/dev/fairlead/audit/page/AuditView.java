package dev.fairlead.audit.page;

import dev.fairlead.audit.agree.Agreement;
import dev.fairlead.audit.agree.Detection;
import dev.fairlead.audit.outcome.Outturn;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.summary.CriterionCount;
import dev.fairlead.audit.summary.Group;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Look;
import dev.fairlead.audit.summary.Summary;
import dev.fairlead.audit.summary.Trends;
import dev.fairlead.drawing.Picture;
import dev.fairlead.model.Stage;
import java.util.List;
import java.util.Optional;

/**
 * All that the page shows.
 *
 * @param burden residents over all criteria; empty with fewer than two
 * @param gaps residents by missing facts; empty likewise
 * @param periods time over all criteria; empty with fewer than two periods
 * @param outcomes whether it came out as planned, kind by kind
 * @param agreement with a reviewer, when one was given
 * @param detection of planted faults, when a truth was given
 * @param pages link to the folder of the cases' full reports; empty when they were not written
 */
public record AuditView(
        Heading heading,
        Summary summary,
        List<CriterionView> criteria,
        List<CaseCard> cases,
        Optional<Picture> burden,
        Optional<Picture> gaps,
        Optional<Picture> periods,
        List<Outcome> outcomes,
        Optional<Agreement.Result> agreement,
        Optional<Detection.Result> detection,
        String style,
        String script,
        String scriptHash,
        String pages) {
    public long stops() {
        return summary.stages().stream().mapToLong(s -> s.stop()).sum();
    }

    public long cautions() {
        return summary.stages().stream().mapToLong(s -> s.caution()).sum();
    }

    public long waiting() {
        return summary.stages().stream().mapToLong(s -> s.waiting()).sum();
    }

    public long clear() {
        return summary.stages().stream().mapToLong(s -> s.clear()).sum();
    }

    public long mostOfStage() {
        return summary.stages().stream().mapToLong(s -> s.cases()).max().orElse(1);
    }

    public List<CriterionView> of(Stage stage) {
        return criteria.stream()
                .filter(c -> c.count().stage() == stage
                        && c.count().judged()
                                        + c.count().notAssessed()
                                        + c.count().failed()
                                        + c.count().doesNotApply()
                                > 0)
                .toList();
    }

    /**
     * End of the scale on which all rates are drawn: the greatest upper end among criteria with some cases, to the next
     * tenth.
     */
    public double scale() {
        double most = summary.criteria().stream()
                .filter(c -> c.judged() >= 30 || c.warn() > 0)
                .mapToDouble(c -> c.warnRate().high())
                .max()
                .orElse(0.1);
        return Math.min(1, Math.ceil(most * 10) / 10);
    }

    public long waived() {
        return summary.criteria().stream().mapToLong(CriterionCount::waived).sum();
    }

    public List<String> residents() {
        return cases.stream()
                .map(c -> c.look().row().resident())
                .filter(r -> !r.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    /** Cases that need a look first, closed ones aside. */
    public List<Look> urgent() {
        return summary.looks().stream()
                .filter(l -> l.row().course() != CaseRow.Course.CLOSED && l.stops() + l.cautions() > 0)
                .limit(10)
                .toList();
    }

    /** Trends that can be told. */
    public List<Trends.Line> trends() {
        return summary.trends().lines().stream().filter(l -> !l.tooFew()).toList();
    }

    public int trendsTooFew() {
        return summary.trends().lines().size() - trends().size();
    }

    /** Warnings of a resident at a step, and how many its overall rates lead to expect. */
    public record Cell(int warned, double expected, int judged) {}

    /** Resident by step: a row for each resident, a cell for each stage. */
    public List<Cell> steps(Group g) {
        double[] rates = summary.rates();
        int[] judged = g.judged();
        int[] warned = g.warned();
        List<Cell> row = new java.util.ArrayList<>();
        for (Stage stage : Stage.values()) {
            int w = 0;
            int j = 0;
            double e = 0;
            for (int i = 0; i < judged.length; i++) {
                if (summary.criteria().get(i).stage() == stage) {
                    w += warned[i];
                    j += judged[i];
                    e += judged[i] * rates[i];
                }
            }
            row.add(new Cell(w, e, j));
        }
        return row;
    }

    /** A count with its noun. */
    public static String n(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** What came of one kind of number, with its calibration plot; without where all predictions are alike. */
    public record Outcome(Outturn.Line line, Optional<Picture> plot) {}

    /**
     * A criterion on the page.
     *
     * @param asks what it demands, with the thresholds in force
     * @param funnel by resident; empty where too few warnings or residents are there to draw
     * @param periods by time; empty likewise
     */
    public record CriterionView(
            CriterionCount count, String asks, Optional<Picture> funnel, Optional<Picture> periods) {}
}
