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
import dev.fairlead.model.Case;
import dev.fairlead.report.html.ReportHtml;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.sheet.BenchSheet;
import dev.fairlead.report.sheet.Paper;
import dev.fairlead.report.text.ReportText;
import dev.fairlead.report.wire.WireJson;
import dev.fairlead.report.wire.WireReport;
import dev.fairlead.report.wire.WireText;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.testing.Damage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
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

    private final Damage damage = new Damage(19);
    private final Checker checker = new Checker(Rulebase.builtIn());
    private int accepted;
    private int printed;

    @Test
    void whatIsAcceptedIsRenderedInEveryForm() throws IOException {
        List<String> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                cases.add(Files.readString(file));
            }
        }
        int all = Damage.Kind.ACCEPTED.inputs();
        for (int i = 0; i < all; i++) {
            String text = spoilt(cases.get(i % cases.size()));
            try {
                look(text);
            } catch (RuntimeException | AssertionError e) {
                throw new AssertionError("input " + i + ":\n" + text, e);
            }
        }
        System.out.printf(
                "Fuzz: of %d inputs %d accepted, judged and rendered, %d of them with forces and in print%n",
                all, accepted, printed);
        assertThat(accepted).isGreaterThan(all / 50);
    }

    private String spoilt(String text) {
        String[] lines = text.split("\n", -1);
        for (int n = 1 + damage.below(3); n > 0; n--) {
            int at = damage.below(lines.length);
            String line = lines[at];
            int colon = line.lastIndexOf(": ");
            switch (damage.below(5)) {
                case 0 -> lines[at] = "";
                case 1 -> lines[at] = line + "\n" + line;
                default -> {
                    if (colon > 0 && !line.strip().startsWith("#")) {
                        lines[at] =
                                line.substring(0, colon + 2) + damage.pick(VALUES) + (line.endsWith("}") ? "}" : "");
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
        boolean slowly = accepted % 50 == 1;
        Checked checked = checker.check(
                c,
                "",
                reading.problems(),
                slowly
                        ? CheckOptions.USUAL
                        : CheckOptions.USUAL.with(Doubting.NONE).withoutForces());
        assertThat(checked.report().errors()).isEmpty();
        assertThat(Visible.odd(ReportText.of(checked.report(), ReportText.Detail.ALL)))
                .isEmpty();
        assertThat(ReportJson.text(checked.report(), true)).isNotEmpty();
        assertThat(ReportHtml.of(checked, true)).contains("</html>");
        if (slowly) {
            everyOtherForm(c, checked);
        }
    }

    /** What takes long: the wire's forces, its sheet, and everything that is printed. */
    private void everyOtherForm(Case c, Checked checked) {
        WireReport wire = WireReport.of(c, checker.rulebase().catalogue(), OptionalInt.empty(), List.of(0.4, 0.5));
        assertThat(Visible.odd(WireText.of(wire))).isEmpty();
        assertThat(WireJson.of(wire).toString()).isNotEmpty();
        assertThat(ReportPdf.of(List.of(checked), List.of(), true, any -> List.of()))
                .hasSizeGreaterThan(1000);
        assertThat(ReportPdf.onePage(List.of(checked), List.of())).hasSizeGreaterThan(1000);
        BenchSheet sheet = new BenchSheet(checker.rulebase().catalogue());
        if (sheet.refusal(checked).isEmpty()) {
            assertThat(sheet.pdf(checked, Paper.A4)).hasSizeGreaterThan(1000);
            assertThat(sheet.svg(checked, Paper.LETTER)).contains("</svg>");
        }
        printed++;
    }
}
