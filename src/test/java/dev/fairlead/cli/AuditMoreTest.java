package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fairlead.audit.cohort.CohortFiles;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Calibration, comparison of groups, what is new, feedback and sharing: as a director calls them. */
class AuditMoreTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    static Path folder;

    private static Path cases;

    @BeforeAll
    static void invent() throws IOException {
        cases = folder.resolve("c.ndjson");
        try (Writer out = Files.newBufferedWriter(cases)) {
            CohortFiles.withEffects(160, 3, out, n -> {});
        }
    }

    private static CasesTest.Run run(Object... words) {
        return CasesTest.run(Stream.of(words).map(Object::toString).toArray(String[]::new));
    }

    private static JsonNode json(CasesTest.Run run) throws IOException {
        return JSON.readTree(run.out());
    }

    @Test
    void aClinicsOwnFiguresBecomeAnOverlayThatChecksUse() throws IOException {
        Path overlay = folder.resolve("clinic");
        CasesTest.Run made = run("calibrate", cases, "-o", overlay);
        assertThat(made.err()).contains("--rules");
        assertThat(made.code()).as(made.err()).isZero();
        assertThat(made.out()).contains("tipping over the predicted", "own share");
        assertThat(made.out().lines().mapToInt(String::length).max().orElse(0)).isLessThanOrEqualTo(80);
        JsonNode clinic = JSON.readTree(overlay.resolve("clinic.json").toFile());
        assertThat(clinic.path("cases").asInt()).isGreaterThanOrEqualTo(15);
        assertThat(run("work", "cases/heron-07-clean.yaml", "--rules", overlay)
                        .out()
                        .replaceAll("\\s+", " "))
                .contains("cases of this clinic have shown");
        assertThat(run("work", "cases/heron-07-clean.yaml").out()).doesNotContain("of this clinic");
        assertThat(run("calibrate", cases, "-o", overlay).code())
                .as("not over it")
                .isEqualTo(2);
        assertThat(run("calibrate", cases, "-o", overlay, "--force").code()).isZero();
    }

    @Test
    void fewCasesMakeNoFiguresAndLeaveNothing() {
        Path overlay = folder.resolve("few");
        CasesTest.Run run = run("calibrate", "cases/heron-07-clean.yaml", "-o", overlay);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("need 15", "Nothing was written");
        assertThat(overlay).doesNotExist();
    }

    @Test
    void aFaultyClinicFileIsRefusedWithWhatIsExpected() throws IOException {
        Path overlay = Files.createDirectories(folder.resolve("faulty"));
        Files.writeString(
                overlay.resolve("clinic.json"),
                "{\"tipping\":{\"mean\":9,\"sd\":0.1},\"rate\":{\"mean\":0.6,\"sd\":0.1},\"gain\":{\"mean\":1,\"sd\":0.1},\"cases\":3}");
        CasesTest.Run run = run("check", "cases/heron-07-clean.yaml", "--rules", overlay);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("clinic.json: tipping", "clinic.json: cases");
    }

    @Test
    void sitesPeriodsAndAuditsAreLaidSideBySide() throws IOException {
        List<String> lines = Files.readAllLines(cases);
        List<String> sited = new ArrayList<>();
        for (String line : lines) {
            boolean north = line.contains("\"resident\":\"r03\"") || line.contains("\"resident\":\"r06\"");
            sited.add(
                    line.replaceFirst("\"resident\"", "\"site\":\"" + (north ? "north" : "south") + "\",\"resident\""));
        }
        Path two = folder.resolve("two.ndjson");
        Files.write(two, sited);
        JsonNode sites = json(run("compare", "--sites", "north,south", "--without-forces", "--format", "json", two));
        assertThat(sites.path("casesA").asInt()).isEqualTo(40);
        assertThat(sites.path("casesB").asInt()).isEqualTo(120);
        // who goes without consent and who leaves films and mouth out both work in the north
        assertThat(sites.path("factsGiven").path("high").asDouble()).isNegative();
        assertThat(sites.path("standsOut"))
                .anyMatch(s -> s.path("group").asText().equals("north")
                        && s.path("item").asText().equals("consent-recorded"));
        CasesTest.Run text = run("compare", "--sites", "north,south", "--without-forces", two);
        assertThat(text.out()).contains("STANDS OUT", "consent-recorded", "First: north, 40 cases");
        assertThat(text.out()
                        .lines()
                        .mapToInt(l -> l.codePointCount(0, l.length()))
                        .max()
                        .orElse(0))
                .isLessThanOrEqualTo(80);
        assertThat(run("compare", "--sites", "north,south", "--without-forces", "--format", "html", two)
                        .out())
                .contains("<h1>north and south</h1>");
        JsonNode periods = json(run(
                "compare",
                "--periods",
                "2024-07..2025-06,2025-07..2026-06",
                "--without-forces",
                "--format",
                "json",
                cases));
        assertThat(periods.path("casesA").asInt()).isPositive();
        assertThat(periods.path("casesB").asInt()).isPositive();
        JsonNode audits = json(run("compare", "--audits", "--without-forces", "--format", "json", two, cases));
        assertThat(audits.path("both").asInt()).isEqualTo(160);
        // the same cases twice: no difference at all, and every interval holds none
        assertThat(audits.path("withStop").path("value").asDouble()).isZero();
        assertThat(audits.path("criteria"))
                .allMatch(c -> c.path("difference").path("low").asDouble() <= 0);
        // where nothing stands out, page and text say how large a difference would have
        for (String form : List.of("text", "html")) {
            assertThat(run("compare", "--audits", "--without-forces", "--format", form, two, cases)
                            .out()
                            .replaceAll("\\s+", " "))
                    .as(form)
                    .containsIgnoringCase("nothing stands out")
                    .contains("would be named four times in five");
        }
        assertThat(run("compare", "--sites", "north", two).code()).isEqualTo(2);
        assertThat(run("compare", "--sites", "north,west", "--without-forces", two)
                        .err())
                .contains("west");
        assertThat(run("compare", "--periods", "2025-13,2024-01", cases).code()).isEqualTo(2);
    }

    @Test
    void whatIsNewSinceTheLastAuditIsTold() throws IOException {
        Path last = folder.resolve("last.ndjson");
        Path before = folder.resolve("before.ndjson");
        List<String> lines = Files.readAllLines(cases);
        Files.write(before, lines.subList(0, lines.size() - 30));
        run("audit", before, "--without-forces", "--format", "ndjson", "-o", last);
        JsonNode same = json(run("audit", before, "--without-forces", "--format", "json", "--since", last));
        assertThat(same.path("sinceLastAudit").toString())
                .isEqualTo("{\"newCases\":0,\"newWarnings\":0,\"noLongerOpen\":0}");
        JsonNode more = json(run("audit", cases, "--without-forces", "--format", "json", "--since", last));
        assertThat(more.path("sinceLastAudit").path("newCases").asInt()).isBetween(20, 30);
        assertThat(more.path("looks")).anyMatch(l -> l.path("new").asInt() > 0);
        assertThat(run("audit", cases, "--without-forces", "--since", last).out())
                .contains("Since the last audit: ");
        assertThat(run("audit", cases, "--since", cases).err()).contains("no row of an audit");
    }

    @Test
    void eachResidentGetsOnePageAndNothingIsWrittenOver() throws IOException {
        Path to = folder.resolve("sheets");
        CasesTest.Run run = run("audit", cases, "--without-forces", "--feedback", to);
        assertThat(run.err()).contains("Wrote 8 sheets");
        try (PDDocument sheet = Loader.loadPDF(Files.readAllBytes(to.resolve("r06.pdf")))) {
            assertThat(sheet.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(sheet).replaceAll("\\s+", " "))
                    .contains("Feedback for r06", "missing facts in all", "Nobody is ranked", "supports the judgement");
        }
        assertThat(run("audit", cases, "--without-forces", "--feedback", to).code())
                .isEqualTo(2);
        Path pages = folder.resolve("pages");
        Files.createDirectories(pages);
        Files.writeString(pages.resolve("heron-07.html"), "mine");
        CasesTest.Run refused = run("audit", "cases/heron-07-clean.yaml", "--pages", pages);
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("--force");
        assertThat(pages.resolve("heron-07.html")).hasContent("mine");
    }

    @Test
    void whatIsSharedTellsNoCodeNoDayAndNoSmallCount() throws IOException {
        CasesTest.Run rows = run("audit", cases, "--without-forces", "--recode", "--format", "csv");
        CasesTest.Run plain = run("audit", cases, "--without-forces", "--format", "csv");
        assertThat(rows.out().lines().count()).isEqualTo(plain.out().lines().count());
        List<String> first = rows.out().lines().skip(1).toList();
        List<String> open = plain.out().lines().skip(1).toList();
        for (int i = 0; i < first.size(); i += 97) {
            String[] made = first.get(i).split(",", -1);
            String[] was = open.get(i).split(",", -1);
            assertThat(made[1]).startsWith("c").isNotEqualTo(was[1]);
            assertThat(made[2]).as("hash").isEmpty();
            assertThat(made[4]).as("resident").startsWith("r").isNotEqualTo(was[4]);
            assertThat(made[6]).as("day").isNotEqualTo(was[6]);
            assertThat(made[7]).as("criterion").isEqualTo(was[7]);
            assertThat(made[9]).as("outcome").isEqualTo(was[9]);
        }
        assertThat(rows.out()).doesNotContain("c.ndjson").doesNotContain("r03,");
        JsonNode summary = json(run("audit", cases, "--without-forces", "--recode", "--format", "json"));
        assertThat(summary.has("looks")).isFalse();
        List<String> small = new ArrayList<>();
        counts("", summary, small);
        assertThat(small).isEmpty();
        for (String form : List.of("text", "html", "xlsx")) {
            assertThat(run("audit", cases, "--recode", "--format", form, "-o", folder.resolve("shared." + form))
                            .code())
                    .as(form)
                    .isEqualTo(2);
        }
    }

    @Test
    void sharedLinesNameNobodyAndNoDayEither() throws IOException {
        List<String> open = run("audit", cases, "--without-forces", "--format", "ndjson")
                .out()
                .lines()
                .toList();
        List<String> shared = run("audit", cases, "--without-forces", "--recode", "--format", "ndjson")
                .out()
                .lines()
                .toList();
        assertThat(shared).hasSameSizeAs(open);
        for (int i = 0; i < shared.size(); i++) {
            JsonNode was = JSON.readTree(open.get(i));
            JsonNode made = JSON.readTree(shared.get(i));
            for (String told : List.of("case", "resident", "site", "day", "recorded", "hash", "source")) {
                String before = was.path(told).asText();
                if (!before.isEmpty()) {
                    assertThat(shared.get(i)).as(told).doesNotContain("\"" + before + "\"");
                }
            }
            assertThat(made.path("pass")).isEqualTo(was.path("pass"));
            assertThat(made.path("stop")).isEqualTo(was.path("stop"));
        }
    }

    private static void counts(String at, JsonNode node, List<String> small) {
        if (node.isIntegralNumber() && node.asLong() > 0 && node.asLong() < 5 && !at.equals("/format")) {
            small.add(at + " " + node);
        }
        node.properties().forEach(p -> counts(at + "/" + p.getKey(), p.getValue(), small));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            counts(at + "/" + i, node.get(i), small);
        }
    }
}
