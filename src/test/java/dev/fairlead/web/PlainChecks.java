package dev.fairlead.web;

import dev.fairlead.findings.Findings;
import dev.fairlead.findings.Report;
import dev.fairlead.findings.RulebaseUsed;
import dev.fairlead.findings.Subject;
import dev.fairlead.intake.Reading;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Rulebase;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

final class PlainChecks implements Checks {
    private final Rulebase rules = Rulebase.load(null);

    public Report check(Reading reading, LocalDate today) {
        Case c = reading.value().orElseThrow();
        LocalDate day = c.date().value().orElse(today);
        var worked = Measures.of(c, Optional.of(day), Workbook.kept());
        var judged = rules.judge().judge(worked.facts(), c.stage());
        return Report.of("0", RulebaseUsed.of(rules), new Subject(c.id(), "", Optional.of(day)), Arrays.asList(dev.fairlead.model.Stage.values()),
                Findings.of(judged, rules.catalogue(), c.waivers(), Optional.of(day)), List.of(), judged.errors(), worked.workings());
    }

    public Catalogue catalogue() {
        return rules.catalogue();
    }

    public Catalogue standard() {
        return rules.catalogue();
    }
}
