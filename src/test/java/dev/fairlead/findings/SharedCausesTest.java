package dev.fairlead.findings;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.model.Case;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One steep incisor is one cause, however many criteria warn of it. */
class SharedCausesTest {
    @Test
    void whatIsDisputedOfOneCauseIsToldOnceUnderTheHeaviest() throws IOException {
        Case steep = CaseReader.read(Path.of("cases/avocet-03-thin-and-steep.yaml"))
                .value()
                .orElseThrow();
        Case steeper = dev.fairlead.model.shape.Edit.set(steep, "/headFilm/incisorMandibular", 101);
        Rulebase rules = Rulebase.builtIn();
        List<String> shared = rules.catalogue().causes().get("inclination of the incisors");
        List<Finding> all = new Checker(rules)
                .check(steeper, "", CheckOptions.USUAL.with(Doubting.NONE)).report().findings().all().stream()
                        .filter(f -> shared.contains(f.id()))
                        .toList();
        assertThat(all).hasSize(3).allMatch(Finding::warns);
        Finding head =
                all.stream().filter(f -> !f.dispute().isEmpty()).findFirst().orElseThrow();
        assertThat(head.weight()).isEqualTo(Weight.STOP);
        assertThat(all).filteredOn(f -> !f.equals(head)).allSatisfy(f -> {
            assertThat(f.dispute()).isEmpty();
            assertThat(f.why()).contains(head.title()).contains(head.id());
            assertThat(f.todo()).isNotEmpty();
        });
    }
}
