package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.Checker;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.web.page.Checks;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of cases, and the pages that only read a case. */
class ListTest {
    @TempDir
    Path folder;

    /** The lines alone, which wait until all are worked out; a whole page shows at once what it has. */
    private static String lines(Pages pages, String path) throws Exception {
        for (int i = 0; i < 100; i++) {
            String list = pages.send(java.net.http.HttpRequest.newBuilder(
                                    pages.at(path + (path.contains("?") ? "&" : "?") + "more=yes"))
                            .header("HX-Request", "true")
                            .build())
                    .body();
            if (!list.contains("more=yes")) {
                return list;
            }
        }
        throw new AssertionError("the list is never whole");
    }

    @Test
    void eachLineSaysStageCountsProgressAndLastVisitAndCanBeFiltered() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            Files.writeString(folder.resolve("early.yaml"), "fairlead: 1\nid: early-1\nstage: records\n");
            String list = lines(pages, "/cases");
            assertThat(list)
                    .contains("early-1", "Records", "2 of 2 cases")
                    .containsPattern("last visit 20\\d\\d-")
                    .containsPattern("right: [0-9.]+ of [0-9.]+ mm");
            assertThat(lines(pages, "/cases?q=EARLY")).contains("early-1", "1 of 2 cases");
            assertThat(lines(pages, "/cases?stage=records")).contains("early-1", "1 of 2 cases");
        }
    }

    @Test
    void aBadFileTakesNoOtherFromTheList() throws Exception {
        Files.writeString(folder.resolve("torn.json"), "{\"fairlead\": 1, ");
        Files.writeString(folder.resolve("huge.json"), " ".repeat(2_000_001));
        try (Pages pages = Pages.withSample(folder)) {
            String list = lines(pages, "/cases");
            assertThat(list)
                    .contains("sample.json", "torn.json", "huge.json", "3 of 3 cases")
                    .containsPattern("(?s)torn\\.json.*Cannot be read");
            assertThat(pages.get("/cases/torn.json/findings").body()).contains("cannot be read as it stands");
            assertThat(pages.get("/cases/huge.json/findings").body()).contains("larger than any case");
            // a backup holds them as they are
            assertThat(pages.bytes("/export.zip")).hasSizeGreaterThan(1000);
        }
    }

    /** Written out, such a number has a thousand million digits. */
    @Test
    void aNumberThatNoMemoryHoldsIsARowThatSaysSo() throws Exception {
        Files.writeString(
                folder.resolve("huge.json"),
                "{\"fairlead\":1,\"id\":\"huge-1\",\"stage\":\"records\",\"arch\":{\"molarWidth\":1e999999999}}");
        Files.writeString(
                folder.resolve("small.yaml"),
                "fairlead: 1\nid: small-1\nstage: records\narch: {molarWidth: 1e-999999999}\n");
        Files.writeString(folder.resolve("deep.json"), "[".repeat(100_000));
        Files.writeString(folder.resolve("fine.yaml"), "fairlead: 1\nid: fine-1\nstage: records\n");
        try (Pages pages = Pages.over(folder)) {
            for (int i = 0; i < 2; i++) {
                String list = pages.get("/cases?more=yes").body();
                assertThat(list).contains("huge", "small", "deep", "fine-1", "Cannot be read");
            }
            for (String name : java.util.List.of("huge.json", "small.yaml", "deep.json")) {
                for (String page : java.util.List.of(
                        "findings",
                        "form/arch",
                        "numbers",
                        "pictures",
                        "visits",
                        "chair",
                        "report",
                        "versions",
                        "whatif")) {
                    assertThat(pages.get("/cases/" + name + "/" + page).statusCode())
                            .as(name + " " + page)
                            .isLessThan(500);
                }
            }
            assertThat(pages.bytes("/export.zip")).hasSizeGreaterThan(100);
            assertThat(pages.get("/cases/fine.yaml/findings").statusCode()).isEqualTo(200);
        }
    }

    /** The page does not wait for the rulebase, which takes a second or two to load. */
    @Test
    void theListIsThereWhileTheRulesAreStillOnTheirWay() throws Exception {
        Files.writeString(folder.resolve("early.yaml"), "fairlead: 1\nid: early-1\nstage: records\n");
        CountDownLatch gate = new CountDownLatch(1);
        Checks slow = Checks.loading(() -> {
            try {
                gate.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return new Checker(Rulebase.load(null));
        });
        try (WebServer server = WebServer.start(new ServerSettings(
                        folder,
                        0,
                        slow,
                        Optional.empty(),
                        () -> LocalDate.of(2026, 3, 1),
                        folder.resolveSibling("secrets"),
                        Optional.empty()));
                Pages client = Pages.over(folder)) {
            var uri = server.address().resolve("/cases");
            String cookie = Pages.cookie(client.stranger(
                    java.net.http.HttpRequest.newBuilder(server.link()).build()));
            assertThat(client.stranger(java.net.http.HttpRequest.newBuilder(uri)
                                    .header("Cookie", cookie)
                                    .build())
                            .body())
                    .contains("early.yaml", "is being looked at", "hx-trigger=\"load\"");
            gate.countDown();
            assertThat(client.stranger(java.net.http.HttpRequest.newBuilder(uri)
                                    .header("Cookie", cookie)
                                    .header("HX-Request", "true")
                                    .build())
                            .body())
                    .contains("early-1", "Records")
                    .doesNotContain("is being looked at");
        }
    }

    @Test
    void reportsSheetAndPicturesAreOffered() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            Files.writeString(folder.resolve("early.yaml"), "fairlead: 1\nid: early-1\nstage: records\n");
            assertThat(pages.get("/cases/sample.json/report").body())
                    .contains("report.pdf", "report.html", "sheet.pdf");
            assertThat(pages.get("/cases/sample.json/report.html").headers().firstValue("Content-Disposition"))
                    .hasValueSatisfying(d -> assertThat(d).startsWith("attachment"));
            assertThat(pages.get("/cases/sample.json/sheet.pdf").body()).startsWith("%PDF");
            assertThat(pages.get("/cases/sample.json/report").body())
                    .as("without a country")
                    .contains("Bench sheet at 1:1, A4", "or Letter");
            assertThat(pages.get("/cases/sample.json/sheet.pdf").body()).contains("A4");
            assertThat(pages.send(java.net.http.HttpRequest.newBuilder(pages.at("/cases/sample.json/report"))
                                    .header("Accept-Language", "es-MX,es;q=0.8")
                                    .build())
                            .body())
                    .contains("Bench sheet at 1:1, Letter", "or A4");
            assertThat(pages.get("/cases/sample.json/family.pdf?paper=LETTER").body())
                    .startsWith("%PDF-family")
                    .contains("LETTER");
            assertThat(pages.get("/cases/sample.json/report").body()).contains("family.pdf?paper=A4");
            assertThat(pages.get("/cases/sample.json/sheet.pdf?paper=LETTER").body())
                    .contains("LETTER");
            assertThat(pages.get("/cases/sample.json/report").body())
                    .as("what was asked for last")
                    .contains("Bench sheet at 1:1, Letter");
            assertThat(pages.get("/cases/sample.json/sheet.pdf?paper=A3").body())
                    .contains("LETTER");
            assertThat(pages.get("/cases/early.yaml/report").body())
                    .contains("There is no bench sheet yet")
                    .doesNotContain("sheet.pdf");
            assertThat(pages.get("/cases/early.yaml/sheet.pdf").statusCode()).isEqualTo(409);
            assertThat(pages.get("/cases/sample.json/pictures").body())
                    .contains("<svg", "The numbers as a table", "id=\"picture-");
            assertThat(pages.get("/cases/early.yaml/pictures").body()).contains("Cannot be drawn yet. Missing:");
            assertThat(pages.get("/cases/sample.json/wire").body())
                    .contains(
                            "The same plan with other sizes of wire",
                            "Force against stand-off",
                            "fits at, mm",
                            "visits",
                            "5 to 95 % by draws",
                            "customary 140 to 240 gf")
                    .containsPattern("(?s)0\\.016 in</th>.*0\\.018 in</th>");
            assertThat(pages.get("/cases/early.yaml/wire").body()).contains("not assessed", "Missing:");
        }
    }

    /** What is forecast is drawn from the last reading on, as a band, for a case that is still being activated. */
    @Test
    void chartsCarryTheForecastBandAndSayWhatLiesAhead() throws Exception {
        Files.copy(Path.of("cases/stilt-10-gauge-overrides.yaml"), folder.resolve("stilt.yaml"));
        try (Pages pages = Pages.over(folder)) {
            String visits = pages.get("/cases/stilt.yaml/visits").body();
            assertThat(visits)
                    .contains(
                            "class=\"band\"",
                            "class=\"ahead\"",
                            "What lies ahead",
                            "more visits",
                            "See the child for the next activation");
            String form = "/cases/stilt.yaml/visits";
            assertThat(pages.post(
                                    form,
                                    Map.of(
                                            "version",
                                            pages.version(form),
                                            "/visits/2/date",
                                            "2026-06-01",
                                            "/visits/2/activated",
                                            "both",
                                            "/visits/2/right/space",
                                            "21,4"))
                            .statusCode())
                    .isEqualTo(303);
            assertThat(pages.get(form).body()).contains("2026-06-01", "21.4");
        }
    }

    @Test
    void aCaseIsRenamedPutAwayAndTakenOutAndAllOfThemGoIntoOneZipAndBack() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            String arch = "/cases/sample.json/form/arch";
            pages.post(
                    arch + "?changed=/space/left",
                    java.util.Map.of("version", pages.version(arch), "/space/left", "19.9"));
            pages.post("/cases/sample.json/rename", java.util.Map.of("version", pages.version(arch), "id", "other-1"));
            assertThat(folder.resolve("sample.json")).doesNotExist();
            assertThat(pages.file("other-1.json")).contains("\"other-1\"", "19.9");
            assertThat(pages.get("/cases/other-1.json/versions").body()).contains("19.9", "See and compare");
            // as large a log as years make: the zip is larger than a single case may be
            byte[] noise = new byte[3_000_000];
            new java.util.Random(1).nextBytes(noise);
            Files.writeString(
                    folder.resolve(".history/other-1.json/log.ndjson"),
                    java.util.HexFormat.of().formatHex(noise) + "\n",
                    java.nio.file.StandardOpenOption.APPEND);
            byte[] zip = pages.bytes("/export.zip");
            assertThat(zip.length).isGreaterThan(dev.fairlead.web.store.CaseFolder.MOST_BYTES);
            pages.post("/cases/other-1.json/archive", java.util.Map.of());
            assertThat(folder.resolve("archive/other-1.json")).exists();
            assertThat(pages.get("/cases").body()).contains("Closed: 1 case").doesNotContain("/cases/other-1.json/");
            assertThat(pages.upload("folder.zip", zip)).contains("1 of 1 brought in");
            assertThat(pages.upload("folder.zip", zip)).contains("0 of 1 brought in", "already");
            byte[] whole = pages.bytes("/export.zip");
            java.nio.file.Path elsewhere = Files.createDirectories(folder.resolveSibling(folder.getFileName() + "-2"));
            try (Pages other = Pages.over(elsewhere)) {
                assertThat(other.upload("folder.zip", whole)).contains("2 of 2 brought in");
                assertThat(other.get("/cases/other-1.json/versions").body())
                        .contains("19.9", "See and compare")
                        .contains("left segment, space");
                assertThat(other.get("/cases").body()).contains("Closed: 1 case");
                assertThat(elsewhere.resolve("archive/other-1.json")).exists();
                assertThat(kept(elsewhere)).isEqualTo(kept(folder)).hasSizeGreaterThan(2);
            }
            // what is there is never overwritten
            assertThat(pages.post("/restore", java.util.Map.of("name", "other-1.json"))
                            .statusCode())
                    .isEqualTo(409);
        }
    }

    /** What is kept of cases beside them, by path and size. */
    private static java.util.Map<String, Long> kept(java.nio.file.Path folder) throws java.io.IOException {
        java.util.Map<String, Long> all = new java.util.TreeMap<>();
        try (var files = Files.walk(folder.resolve(".history"))) {
            for (java.nio.file.Path p : (Iterable<java.nio.file.Path>) files::iterator) {
                if (Files.isRegularFile(p) && !p.getParent().equals(folder.resolve(".history"))) {
                    all.put(folder.relativize(p).toString(), Files.size(p));
                }
            }
        }
        return all;
    }

    /** A zip made by somebody else names places outside what is kept, and versions that are not what they say. */
    @Test
    void aZipPutsNothingWhereItDoesNotBelong() throws Exception {
        var bytes = new java.io.ByteArrayOutputStream();
        try (var zip = new java.util.zip.ZipOutputStream(bytes)) {
            for (String name : java.util.List.of(
                    "fine.json",
                    ".history/fine.json/0000001-00000000000000000000.txt",
                    ".history/absent.json/log.ndjson",
                    ".history/../../outside.json/log.ndjson",
                    ".history/served-by.txt",
                    "archive/../outside.json")) {
                zip.putNextEntry(new java.util.zip.ZipEntry(name));
                zip.write("{\"fairlead\":1,\"id\":\"x-1\"}".getBytes(java.nio.charset.StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
        try (Pages pages = Pages.over(folder)) {
            assertThat(pages.upload("folder.zip", bytes.toByteArray())).contains("1 of 4 brought in");
        }
        assertThat(kept(folder)).isEmpty();
        assertThat(folder.resolve("fine.json")).exists();
        assertThat(folder.resolveSibling("outside.json")).doesNotExist();
        assertThat(folder.resolve("outside.json")).doesNotExist();
    }

    @Test
    void theListIsSortedByWhatIsDueAndSaysSo() throws Exception {
        Files.writeString(folder.resolve("late.yaml"), """
                fairlead: 1
                id: late-1
                stage: activation
                resident: r9
                plan: {intervalWeeks: 4}
                visits: [{date: 2026-01-25}]
                """);
        Files.writeString(
                folder.resolve("soon.yaml"),
                "fairlead: 1\nid: soon-1\nstage: activation\nplan: {intervalWeeks: 4}\nvisits: [{date: 2026-02-02}]\n");
        Files.writeString(folder.resolve("a.yaml"), "fairlead: 1\nid: a-1\nstage: records\n");
        // eight weeks before the day before; no interval planned: the shortest counts, 4 weeks
        Files.writeString(
                folder.resolve("lost.yaml"),
                "fairlead: 1\nid: lost-1\nstage: activation\nvisits: [{date: 2026-01-03}]\n");
        Files.writeString(
                folder.resolve("plain.yaml"),
                "fairlead: 1\nid: plain-1\nstage: activation\nvisits: [{date: 2026-02-03}]\n");
        // recalls count from the last time the child was seen: three months from 2026-01-01 are 2026-04-02
        Files.writeString(
                folder.resolve("held.yaml"),
                "fairlead: 1\nid: held-1\nstage: holding\nvisits: [{date: 2026-01-01}]\n"
                        + "holding: {cemented: 2025-10-01, recall: 3}\n");
        Files.writeString(
                folder.resolve("forgotten.yaml"),
                "fairlead: 1\nid: forgotten-1\nstage: holding\nholding: {cemented: 2025-08-28, recall: 3}\n");
        try (Pages pages = Pages.over(folder)) {
            String list = pages.get("/cases?more=yes").body();
            while (list.contains("is being looked at")) {
                list = pages.get("/cases?more=yes").body();
            }
            // 2026-01-25 and four weeks are 2026-02-22, seven days before the day of the test
            // that is due, and overdue once the longest interval of eight weeks, 2026-03-22, is over
            assertThat(list).contains("visit due, at the latest in 21 days", "visit due in 1 day<");
            assertThat(list).contains("visit 1 day overdue", "recall due in 32 days", "recall 2 days overdue");
            assertThat(list).contains("visit due in 2 days");
            assertThat(list.indexOf(">late-1<")).isPositive().isLessThan(list.indexOf(">soon-1<"));
            assertThat(list.indexOf(">soon-1<")).isLessThan(list.indexOf(">a-1<"));
            String byName = pages.get("/cases?more=yes&sort=title").body();
            assertThat(byName.indexOf(">a-1<")).isPositive().isLessThan(byName.indexOf(">late-1<"));
            assertThat(pages.get("/cases?more=yes&resident=r9").body())
                    .contains(">late-1<")
                    .doesNotContain(">soon-1<");
        }
    }
}
