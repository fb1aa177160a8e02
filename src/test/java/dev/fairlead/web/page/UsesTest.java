package dev.fairlead.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a field says of the criteria that look at it, against what forgetting the fact does to the findings. */
class UsesTest {
    private static final Rulebase RULES = Rulebase.load(null);
    /** The beam model takes long, and its inputs are asked for by name. */
    private static final Checker CHECKER = new Checker(RULES, Calculations.plain());

    @Test
    void noFactDecidesACriterionThatItsFieldDoesNotName() throws Exception {
        List<String> faults = new ArrayList<>();
        List<Case> cases = List.of(
                SampleCase.full().build(),
                CaseReader.read(Path.of("cases/whimbrel-06-class-iii-tendency.yaml"))
                        .value()
                        .orElseThrow(),
                CaseReader.read(Path.of("cases/knot-08-half-missing.yaml"))
                        .value()
                        .orElseThrow());
        Uses.Finder finder = new Uses.Finder(RULES);
        for (Case c : cases) {
            CheckOptions options =
                    CheckOptions.USUAL.on(CheckOptions.USUAL.reach(c).day().orElseThrow());
            Checked whole = CHECKER.check(c, "", options);
            Uses uses = finder.of(c);
            Map<String, String> before = seen(whole);
            for (String pointer : Edit.factPointers(c)) {
                Map<String, String> after = seen(CHECKER.check(Edit.forget(c, pointer), "", options.withoutWorkings()));
                before.forEach((id, text) -> {
                    if (!text.equals(after.get(id)) && !uses.of(pointer).contains(id)) {
                        faults.add(c.id() + " " + pointer + " -> " + id + ": " + text + " / " + after.get(id));
                    }
                });
            }
        }
        assertThat(faults).isEmpty();
    }

    private static Map<String, String> seen(Checked checked) {
        return checked.report().findings().all().stream()
                .collect(Collectors.toMap(Finding::id, f -> f.outcome() + " " + f.seen()));
    }
}
