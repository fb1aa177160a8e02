package dev.fairlead;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.check.Doubting;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.report.html.ReportHtml;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.text.ReportText;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Demo cases with values exchanged for hostile ones: what is refused is told without a character that cannot be seen;
 * what is accepted is written and read back the same, judged without an error of the program, and rendered in every
 * form.
 */
class AcceptedFuzzTest {
    private static final List<String> VALUES = List.of(
            "0",
            "-1",
            "1e-9",
            "1e15",
            "1e-99999999999",
            "0.020 in",
            "020",
            "unknown",
            "does-not-apply",
            "yes",
            "no",
            "null",
            "\"\"",
            "\"\\u202e\"",
            "\"\\u001b[2J\"",
            "\"<script>\"",
            "\"&amp;\"",
            "2000-01-01",
            "2099-12-31",
            "2026-02-30",
            "[1, 2]",
            "[]",
            "{}",
            "{value: 1, error: 0}",
            "{value: 1, error: 9}",
            "left",
            "both",
            "none",
            "33",
            "85",
            "class-i",
            "999999",
            "0.5",
            "3",
            "25",
            "\"a text of some length that is wrapped where a line of a report ends, and again\"");

    private final Random random = new Random(19);
    private final Checker checker = new Checker(Rulebase.builtIn());
    private int accepted;

    @Test
    void whatIsAcceptedIsRenderedInEveryForm() throws IOException {
        List<String> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                cases.add(Files.readString(file));
            }
        }
        int all = Integer.getInteger("fairlead.fuzz", 2000) / 4;
        for (int i = 0; i < all; i++) {
            String text = spoilt(cases.get(i % cases.size()));
            try {
                look(text);
            } catch (RuntimeException | AssertionError e) {
                throw new AssertionError("input " + i + ":\n" + text, e);
            }
        }
        System.out.printf("Fuzz: of %d inputs %d accepted, judged and rendered%n", all, accepted);
        assertThat(accepted).isGreaterThan(all / 50);
    }

    private String spoilt(String text) {
        String[] lines = text.split("\n", -1);
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            int at = random.nextInt(lines.length);
            String line = lines[at];
            int colon = line.lastIndexOf(": ");
            switch (random.nextInt(5)) {
                case 0 -> lines[at] = "";
                case 1 -> lines[at] = line + "\n" + line;
                default -> {
                    if (colon > 0 && !line.strip().startsWith("#")) {
                        lines[at] = line.substring(0, colon + 2)
                                + VALUES.get(random.nextInt(VALUES.size()))
                                + (line.endsWith("}") ? "}" : "");
                    }
                }
            }
        }
        return String.join("\n", lines);
    }

    private void look(String text) {
        CaseReading reading = CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "case", CaseFormat.YAML);
        reading.problems().forEach(p -> assertThat(Visible.odd(p.toString())).isEmpty());
        if (!reading.read()) {
            return;
        }
        accepted++;
        var c = reading.value().orElseThrow();
        assertThat(CaseReader.read(CaseWriter.json(c).getBytes(StandardCharsets.UTF_8), "case", CaseFormat.JSON)
                        .value())
                .contains(c);
        Checked checked = checker.check(
                c,
                "",
                reading.problems(),
                new CheckOptions(Optional.empty(), Optional.empty(), true, Doubting.NONE).withoutForces());
        assertThat(checked.report().errors()).isEmpty();
        assertThat(Visible.odd(ReportText.of(checked.report(), ReportText.Detail.ALL)))
                .isEmpty();
        assertThat(ReportJson.text(checked.report(), true)).isNotEmpty();
        assertThat(ReportHtml.of(checked, true)).contains("</html>");
        if (accepted % 200 == 1) {
            assertThat(ReportPdf.of(checked, true)).hasSizeGreaterThan(1000);
        }
    }
}
