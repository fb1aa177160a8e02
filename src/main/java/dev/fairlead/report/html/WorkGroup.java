package dev.fairlead.report.html;

import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Report;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import dev.fairlead.report.summary.StageOfWork;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Worked numbers under one heading; on paper without those of later stages that are not known yet. */
public record WorkGroup(String title, String anchor, List<Line> lines) {
    /** One worked number; {@code missing} says what it waits for, and is empty when its value is known. */
    public record Line(Working working, String value, String missing, List<Cited.Note> sources) {}

    static List<WorkGroup> of(Report report, Case subject, Cited cited, String prefix, boolean paper) {
        Stage judged = report.stages().get(report.stages().size() - 1);
        Map<String, List<Line>> groups = new LinkedHashMap<>();
        for (Working w : report.workings()) {
            boolean unknown = !w.value().known() && w.value().applies();
            if (paper && unknown && !judged.hasReached(StageOfWork.of(w.group()))) {
                continue;
            }
            String missing = unknown ? Missing.line(Missing.of(w.value(), subject), Integer.MAX_VALUE) : "";
            groups.computeIfAbsent(w.group(), g -> new ArrayList<>())
                    .add(new Line(w, Numbers.text(w.value()), missing, cited.byKey(w.sources())));
        }
        return groups.entrySet().stream()
                .map(e -> new WorkGroup(
                        e.getKey(),
                        prefix + "work-"
                                + e.getKey().toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-"),
                        e.getValue()))
                .toList();
    }
}
