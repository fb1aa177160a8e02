package dev.fairlead.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.model.Measured;
import dev.fairlead.report.Demo;
import dev.fairlead.report.summary.Headline;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** "Missing" is said only of what was not entered: a second reading, a contradiction, a film not read are called so. */
class WaitsForTest {
    @Test
    void aNumberThatWaitsForASecondReadingIsNotCalledMissing() throws IOException {
        Checked checked = Demo.checked("knot-08");
        String work = WorkText.of(
                checked.report().workings().stream()
                        .filter(w -> w.id().equals("records.duplicate-length"))
                        .toList(),
                checked.subject(),
                Map.of());
        assertThat(work)
                .contains("waits for  second reading of width of tooth 42")
                .doesNotContain("missing");
    }

    @Test
    void theHeadlineSaysWhyCriteriaWait() throws IOException {
        assertThat(Headline.meaning(Demo.checked("knot-08").report()))
                .contains("because facts and second readings are missing");
        String unread = Demo.text("heron-07").replace("panoramicRead: yes", "panoramicRead: no");
        String open = unread.replace("missingTeeth: no", "missingTeeth: unknown")
                .replace("supernumerary: no", "supernumerary: unknown")
                .replace("caninePathNormal: yes", "caninePathNormal: unknown");
        assertThat(Headline.meaning(Demo.checked(open, "heron-07.yaml").report()))
                .contains("could not be assessed because the panoramic film was not read")
                .doesNotContain("facts are missing");
    }

    @Test
    void whatIsThereAndContradictsIsCalledSo() throws IOException {
        Checked checked = Demo.checked("heron-07");
        List<Missing> waits = Missing.of(Measured.unknown("/films/secondMolarAngleLeft"), checked.subject());
        assertThat(Missing.line(waits, 2)).startsWith("waits for: ").endsWith("(contradicts other facts)");
        assertThat(Missing.line(Missing.of(Measured.unknown("/site"), checked.subject()), 2))
                .startsWith("missing: ");
    }
}
