package dev.fairlead.audit.page;

import dev.fairlead.audit.compare.GroupComparison;
import dev.fairlead.audit.compare.RulesComparison;
import dev.fairlead.audit.compare.Sweep;
import dev.fairlead.drawing.Picture;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes comparisons and sweeps as one page of HTML. */
public final class ComparePage {
    /** All that the page shows; either part may be left out. */
    public record View(
            String a, String b, Optional<RulesComparison.Result> comparison, List<SweepView> sweeps, String style) {}

    /** A sweep with its curves. */
    public record SweepView(Sweep.Result result, List<Picture> curves) {}

    private ComparePage() {}

    /** Two groups of cases side by side. */
    public static String of(GroupComparison.Result groups) {
        StringOutput out = new StringOutput(1 << 16);
        AuditPage.ENGINE.render("audit/groups.jte", Map.of("r", groups, "style", AuditPage.style()), out);
        return out.toString();
    }

    public static String of(
            String a, String b, Optional<RulesComparison.Result> comparison, List<Sweep.Result> sweeps) {
        View view = new View(
                a,
                b,
                comparison,
                sweeps.stream()
                        .map(s -> new SweepView(
                                s,
                                s.curves().stream()
                                        .map(c -> SweepChart.of(c, s.threshold()))
                                        .toList()))
                        .toList(),
                AuditPage.style());
        StringOutput out = new StringOutput(1 << 18);
        AuditPage.ENGINE.render("audit/compare.jte", Map.of("v", view), out);
        return out.toString();
    }
}
