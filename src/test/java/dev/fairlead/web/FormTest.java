package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.model.Case;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.web.form.FormSection;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The form without any script: plain pages and plain posts. */
class FormTest {
    private static final String ARCH = "/cases/sample.json/form/arch";

    @TempDir
    Path folder;

    private Pages pages;

    @BeforeEach
    void start() throws IOException {
        pages = Pages.withSample(folder);
    }

    @AfterEach
    void stop() {
        pages.close();
    }

    private Case read(String name) throws IOException {
        return CaseReader.read(folder.resolve(name)).value().orElseThrow();
    }

    /** What a browser would send of a page's form as it stands. */
    private Map<String, String> formOf(String page) throws Exception {
        Map<String, String> form = new HashMap<>();
        Matcher m = Pattern.compile(
                        "<input type=\"(?:text|hidden|date)\"[^>]*? name=\"([^\"]+)\"[^>]*? value=\"([^\"]*)\"")
                .matcher(pages.get(page).body());
        while (m.find()) {
            form.merge(m.group(1), m.group(2), (a, b) -> a + "; " + b);
        }
        return form;
    }

    @Test
    void everyFactOfACaseHasItsFieldOnExactlyOnePage() throws Exception {
        Map<String, Integer> seen = new HashMap<>();
        for (FormSection s : FormSection.ALL) {
            Matcher m = Pattern.compile("hx-post=\"[^\"]*/form/" + s.key() + "\\?changed=([^\"]+)\"")
                    .matcher(pages.get("/cases/sample.json/form/" + s.key()).body());
            while (m.find()) {
                seen.merge(m.group(1), 1, Integer::sum);
            }
        }
        List<String> facts = Edit.factPointers(SampleCase.full().build()).stream()
                .filter(p -> !p.startsWith("/waivers/"))
                // gingiva is measured at the lower incisors only
                .filter(p -> !p.matches("/teeth/(?!42|41|31|32)../(gingivaThickness|keratinised|recession)"))
                .toList();
        assertThat(seen.keySet()).containsAll(facts).contains("/id", "/stage");
        assertThat(seen.values()).allMatch(n -> n == 1);
        assertThat(seen.keySet()).allSatisfy(p -> assertThat(CasePaths.field(p)).isPresent());
        assertThat(RecordShape.ofCase().fields().stream()
                        .map(f -> "/" + f.key())
                        .filter(r -> !r.equals("/waivers") && !r.equals("/fairlead")))
                .allSatisfy(r -> assertThat(FormSection.holding(r)).isNotNull());
    }

    @Test
    void aWholeSectionIsSavedByOnePlainPost() throws Exception {
        Map<String, String> form = formOf(ARCH);
        form.put("/space/left", "21,4; 21,6");
        form.put("/arch/molarWidth", "1.75 in");
        form.put("/space/perimeter", "?");
        HttpResponse<String> r = pages.post(
                ARCH, form, "Origin", pages.server.address().toString().replaceAll("/$", ""));
        assertThat(r.statusCode()).isEqualTo(303);
        assertThat(read("sample.json").space().left().value()).isEqualTo(21.5);
        // one inch is exactly 25.4 mm: international yard and pound agreement of 1959
        assertThat(read("sample.json").arch().molarWidth().value()).isEqualTo(44.45);
        assertThat(read("sample.json").space().perimeter().known()).isFalse();
        assertThat(pages.file("sample.json")).contains("\"perimeter\": \"unknown\"");
        assertThat(read("sample.json").space().right())
                .isEqualTo(SampleCase.full().build().space().right());
    }

    @Test
    void wireSizesAreShownInInchesAndMillimetres() throws Exception {
        Map<String, String> form =
                Map.of("version", pages.version("/cases/sample.json/form/wire"), "/wire/size", "0.018 in");
        pages.post("/cases/sample.json/form/wire?changed=/wire/size", form);
        assertThat(read("sample.json").wire().size().value()).isEqualTo(0.4572);
        assertThat(pages.get("/cases/sample.json/form/wire").body())
                .contains("0.457 mm = 0.018 in")
                .contains("0.508 mm = 0.020 in");
    }

    @Test
    void aStatedErrorHasABoxOfItsOwnAndStaysWhenTheValueChanges() throws Exception {
        pages.post(ARCH, Map.of("version", pages.version(ARCH), "/space/left", "21,4 ± 0,5 mm"));
        assertThat(read("sample.json").space().left()).satisfies(m -> {
            assertThat(m.value()).isEqualTo(21.4);
            assertThat(m.sd()).isEqualTo(0.5);
        });
        String page = pages.get(ARCH).body();
        assertThat(page)
                .contains(
                        "name=\"/space/left\" id=\"f_space_left\" value=\"21.4 mm\"",
                        "name=\"error:/space/left\"",
                        "value=\"0.5 mm\"",
                        "21.4 mm ± 0.5: one standard deviation, stated with this value.")
                .doesNotContain("{&#34;value", "{\"value");
        String before = pages.file("sample.json");
        pages.post(
                ARCH, Map.of("version", pages.version(ARCH), "/space/left", "21.4 mm", "error:/space/left", "0.5 mm"));
        assertThat(pages.file("sample.json")).as("sent as it stands").isEqualTo(before);
        pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "/space/left", "22", "error:/space/left", "0.5 mm"));
        assertThat(read("sample.json").space().left().value()).isEqualTo(22);
        assertThat(read("sample.json").space().left().sd()).isEqualTo(0.5);
        pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "/space/left", "22 ± 0.1", "error:/space/left", "0.5"));
        assertThat(read("sample.json").space().left().sd()).isEqualTo(0.1);
        pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "/space/left", "22", "error:/space/left", ""));
        assertThat(read("sample.json").space().left().sd())
                .as("the usual one")
                .isEqualTo(SampleCase.full()
                        .set("/space/left", 22)
                        .build()
                        .space()
                        .left()
                        .sd());
        HttpResponse<String> r = pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "/space/left", "22", "error:/space/left", "-1"),
                "HX-Request",
                "true");
        assertThat(r.body()).contains("note error");
    }

    @Test
    void whatCannotBeTrueIsNotWrittenAndStaysBesideItsField() throws Exception {
        String before = pages.file("sample.json");
        HttpResponse<String> r = pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "/space/left", "210"),
                "HX-Request",
                "true");
        assertThat(r.statusCode()).isEqualTo(200);
        assertThat(r.body()).contains("note error", "5 to 35 mm", "id=\"findings\"");
        assertThat(pages.file("sample.json")).isEqualTo(before);
        assertThat(pages.get(ARCH).body())
                .as("a fresh page shows it still")
                .contains("value=\"210\"", "Not in the case");
        pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "/space/left", "21.0"),
                "HX-Request",
                "true");
        assertThat(pages.get(ARCH).body()).doesNotContain("value=\"210\"");
        assertThat(read("sample.json").space().left().value()).isEqualTo(21.0);
    }

    @Test
    void findingsFollowAChange() throws Exception {
        String body = pages.post(
                        "/cases/sample.json/form/mouth?changed=/bite/overjet",
                        Map.of("version", pages.version("/cases/sample.json/form/mouth"), "/bite/overjet", "1"),
                        "HX-Request",
                        "true")
                .body();
        assertThat(body).containsPattern("class=\"finding (caution|stop)\" id=\"overjet-after\"");
        String preview = pages.post(
                        "/cases/sample.json/form/mouth/preview?changed=/bite/overjet",
                        Map.of("/bite/overjet", "5"),
                        "HX-Request",
                        "true")
                .body();
        assertThat(preview)
                .containsPattern("class=\"finding pass\" id=\"overjet-after\"")
                .contains("as you type");
        assertThat(read("sample.json").bite().overjet().value())
                .as("looking changes nothing")
                .isEqualTo(1);
    }

    @Test
    void twoWindowsOnOneFactAreShownBothAndAPersonChooses() throws Exception {
        Map<String, String> first = formOf(ARCH);
        Map<String, String> second = formOf(ARCH);
        first.put("/space/left", "21.1");
        first.put("/arch/molarWidth", "45");
        assertThat(pages.post(ARCH, first).statusCode()).isEqualTo(303);
        second.put("/space/left", "22.2");
        second.put("/arch/canineWidth", "25");
        HttpResponse<String> r = pages.post(ARCH, second);
        assertThat(r.statusCode()).isEqualTo(409);
        assertThat(r.body()).contains("21.1", "22.2", "Nothing was overwritten");
        assertThat(read("sample.json").space().left().value()).isEqualTo(21.1);
        assertThat(read("sample.json").arch().molarWidth().value())
                .as("what only the first changed")
                .isEqualTo(45);
        assertThat(read("sample.json").arch().canineWidth().value())
                .as("what only the second changed")
                .isEqualTo(25);
        Matcher version = Pattern.compile("name=\"version\" id=\"version\" value=\"([0-9a-f]+)\"")
                .matcher(r.body());
        assertThat(version.find()).isTrue();
        pages.post(
                "/cases/sample.json/choose?back=arch", Map.of("version", version.group(1), "/space/left", "here:22.2"));
        assertThat(read("sample.json").space().left().value()).isEqualTo(22.2);
    }

    /** Yes, no and yes again, before the answer to the first has come back. */
    @Test
    void aValueThatIsPutBackQuicklyIsTakenFromTheWindowThatChangedItAndFromNoOther() throws Exception {
        String seen = pages.version(ARCH);
        String there = String.valueOf(read("sample.json").space().left().value());
        Map<String, String> typed =
                new HashMap<>(Map.of("version", seen, "window", "0".repeat(18), "/space/left", "21"));
        pages.post(ARCH + "?changed=/space/left", typed);
        assertThat(read("sample.json").space().left().value()).isEqualTo(21);
        typed.put("/space/left", there);
        typed.put("window", "1".repeat(18));
        pages.post(ARCH, typed);
        assertThat(read("sample.json").space().left().value())
                .as("another window, which never touched it")
                .isEqualTo(21);
        typed.put("window", "0".repeat(18));
        pages.post(ARCH + "?changed=/space/left", typed);
        assertThat(String.valueOf(read("sample.json").space().left().value())).isEqualTo(there);
    }

    /**
     * A page that is loaded again mid-edit sends along what was typed, and so does the page after it; either may come
     * first.
     */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void whatAPageAndTheOneAfterItBothSendIsTheirOwn(boolean leftPageFirst) throws Exception {
        String left = "a".repeat(18);
        String fresh = "b".repeat(18);
        Map<String, String> typed = new HashMap<>(Map.of("version", pages.version(ARCH), "/space/left", "21"));
        for (String window : leftPageFirst ? List.of(left, fresh) : List.of(fresh, left)) {
            typed.put("window", window);
            pages.post(ARCH + "?changed=/space/left", typed);
        }
        typed.putAll(Map.of("window", fresh, "/space/left", "21.5"));
        pages.post(ARCH + "?changed=/space/left", typed);
        assertThat(read("sample.json").space().left().value())
                .as("before any answer has come back")
                .isEqualTo(21.5);
        typed.putAll(Map.of("window", "c".repeat(18), "/space/left", "20"));
        assertThat(pages.post(ARCH, typed).statusCode())
                .as("a third window has seen none of it")
                .isEqualTo(409);
    }

    /** What a page sends when it is left may arrive late, after the page that followed it was refused a value. */
    @Test
    void whatWasRefusedStaysWhenALeftPageIsHeardLate() throws Exception {
        String first = pages.version(ARCH);
        pages.post(
                ARCH + "?changed=/space/left", Map.of("version", first, "window", "b".repeat(18), "/space/left", "21"));
        pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "window", "b".repeat(18), "/space/left", "210"));
        pages.post(
                ARCH + "?changed=/space/left", Map.of("version", first, "window", "a".repeat(18), "/space/left", "21"));
        assertThat(pages.get(ARCH).body()).contains("value=\"210\"", "Not in the case");
        // whoever was refused takes it back
        pages.post(
                ARCH + "?changed=/space/left",
                Map.of("version", pages.version(ARCH), "window", "b".repeat(18), "/space/left", "21"));
        assertThat(pages.get(ARCH).body()).contains("value=\"21\"").doesNotContain("Not in the case");
    }

    /**
     * A page that is left and the one that follows it send the same, perhaps at the same moment: neither is a stranger.
     */
    @Test
    void whatAPageAndItsSuccessorSendTogetherIsNoClash() throws Exception {
        for (int i = 0; i < 40; i++) {
            String seen = pages.version(ARCH);
            String value = String.valueOf(20 + i / 10.0);
            String left = String.format("%018x", 2 * i + 1);
            String next = String.format("%018x", 2 * i + 2);
            Thread beacon = new Thread(() -> send(seen, left, value));
            beacon.start();
            send(seen, next, value);
            beacon.join();
            assertThat(send(seen, next, "210")).as(value).contains("Not in the case");
            assertThat(pages.get(ARCH).body()).contains("value=\"210\"");
            send(pages.version(ARCH), next, value);
        }
    }

    private String send(String version, String window, String value) {
        try {
            return pages.post(
                            ARCH + "?changed=/space/left",
                            Map.of("version", version, "window", window, "/space/left", value))
                    .body();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void undoTakesBackAndRedoBringsAgain() throws Exception {
        String before = pages.file("sample.json");
        pages.post(ARCH + "?changed=/space/left", Map.of("version", pages.version(ARCH), "/space/left", "21"));
        String after = pages.file("sample.json");
        pages.post("/cases/sample.json/undo?to=arch", Map.of("version", pages.version(ARCH)));
        assertThat(pages.file("sample.json")).isEqualTo(before).isNotEqualTo(after);
        pages.post("/cases/sample.json/redo?to=arch", Map.of("version", pages.version(ARCH)));
        assertThat(pages.file("sample.json")).isEqualTo(after);
    }

    @Test
    void aYamlFileSaysThatItsCommentsGoAndKeepsThem() throws Exception {
        Files.writeString(
                folder.resolve("hand.yaml"),
                "# from the practice\nfairlead: 1\nid: hand-1\nstage: indication # early\n");
        String page = "/cases/hand.yaml/form/arch";
        assertThat(pages.get(page).body()).contains("are lost by a change here");
        pages.post(page + "?changed=/space/left", Map.of("version", pages.version(page), "/space/left", "21,5"));
        assertThat(read("hand.yaml").space().left().value()).isEqualTo(21.5);
        try (var kept = Files.list(folder.resolve(".history/hand.yaml"))) {
            assertThat(kept.filter(p -> p.toString().endsWith(".txt")).toList())
                    .singleElement()
                    .satisfies(p -> assertThat(p).content().contains("# from the practice"));
        }
    }

    @Test
    void aNewCaseIsBlankOrACopyWithoutWaivers() throws Exception {
        assertThat(pages.post("/cases", Map.of("id", "new-7", "from", ""))
                        .headers()
                        .firstValue("Location"))
                .hasValueSatisfying(l -> assertThat(l).endsWith("/cases/new-7.json/form/child#f_child_age"));
        assertThat(read("new-7.json").id()).isEqualTo("new-7");
        pages.post("/cases", Map.of("id", "copy-7", "from", "sample.json"));
        assertThat(read("copy-7.json").space()).isEqualTo(read("sample.json").space());
        assertThat(read("copy-7.json").waivers()).isEmpty();
        assertThat(pages.post("/cases", Map.of("id", "new-7", "from", "")).statusCode())
                .isEqualTo(409);
        assertThat(pages.post("/cases", Map.of("id", "Anna Schmidt", "from", ""))
                        .statusCode())
                .isEqualTo(422);
        assertThat(folder.resolve("Anna Schmidt.json")).doesNotExist();
    }

    @Test
    void waiversNeedAReasonOfSubstanceAndAreShown() throws Exception {
        pages.post(
                "/cases/sample.json/form/mouth?changed=/bite/overjet",
                Map.of("version", pages.version("/cases/sample.json/form/mouth"), "/bite/overjet", "1"));
        String page = "/cases/sample.json/waive/overjet-after";
        Map<String, String> form = new HashMap<>(Map.of(
                "version",
                pages.version(page),
                "reason",
                "",
                "by",
                "supervisor",
                "date",
                "2026-03-01",
                "expires",
                "2026-09-01"));
        assertThat(pages.post(page, form)).satisfies(r -> {
            assertThat(r.statusCode()).isEqualTo(422);
            assertThat(r.body())
                    .containsPattern("id=\"reason-said\"><span class=\"note error\">Say why")
                    .containsPattern("id=\"expires-said\"><span class=\"note error\"></span>");
        });
        form.put("reason", "the overjet was measured again and is well enough");
        form.put("expires", "2026-02-01");
        assertThat(pages.post(page, form).body())
                .containsPattern("id=\"expires-said\"><span class=\"note error\">[^<]+")
                .containsPattern("id=\"reason-said\"><span class=\"note error\"></span>");
        form.put("expires", "2026-09-01");
        form.put("reason", "the overjet was measured again on a new model and discussed with the guardian");
        assertThat(pages.post(page, form).statusCode()).isEqualTo(303);
        assertThat(read("sample.json").waivers())
                .hasSize(SampleCase.full().build().waivers().size() + 1);
        assertThat(pages.get("/cases/sample.json/findings").body()).contains("Waived", "measured again on a new model");
        int waivers = read("sample.json").waivers().size();
        assertThat(pages.get(page).body()).contains("Take it back").doesNotContain("name=\"reason\"");
        assertThat(pages.post(
                                "/cases/sample.json/remove?entry=/waivers/" + (waivers - 1),
                                Map.of("version", pages.version(page)))
                        .headers()
                        .firstValue("Location"))
                .hasValueSatisfying(l -> assertThat(l).endsWith("/findings"));
        assertThat(read("sample.json").waivers()).hasSize(waivers - 1);
    }

    @Test
    void aStopIsAnsweredForByThoseWhoMay() throws Exception {
        pages.post(
                "/cases/sample.json/form/child?changed=/consent/guardian",
                Map.of("version", pages.version("/cases/sample.json/form/child"), "/consent/guardian", "no"));
        String page = "/cases/sample.json/waive/consent-recorded";
        Map<String, String> form = new HashMap<>(Map.of(
                "version",
                pages.version(page),
                "reason",
                "both guardians agreed by telephone, the letter is on its way",
                "by",
                "resident",
                "date",
                "2026-03-01",
                "expires",
                "2026-09-01"));
        assertThat(pages.get(page).body()).contains("For a stop a clinician, supervisor or director answers");
        assertThat(pages.post(page, form)).satisfies(r -> {
            assertThat(r.statusCode()).isEqualTo(422);
            assertThat(r.body())
                    .containsPattern("id=\"by-said\"><span class=\"note error\">[^<]*not by the role resident");
        });
        form.put("by", "supervisor");
        assertThat(pages.post(page, form).statusCode()).isEqualTo(303);
    }

    @Test
    void aNameThatIsNoneIsAnsweredForBesideIt() throws Exception {
        String form = "/cases/sample.json/form/child";
        pages.post(form + "?changed=/resident", Map.of("version", pages.version(form), "/resident", "anna-07"));
        String link = "/cases/sample.json/nobody?at=/resident";
        assertThat(pages.get(form).body()).contains("This may name somebody.", "href=\"" + link + "\"");
        assertThat(pages.get(link).body()).contains("<b>anna-07</b>");
        assertThat(pages.post(link, Map.of("version", pages.version(link), "initials", "x")))
                .satisfies(r -> {
                    assertThat(r.statusCode()).isEqualTo(422);
                    assertThat(r.body()).contains("Not written");
                });
        assertThat(read("sample.json").notPersons()).isEmpty();
        assertThat(pages.post(link, Map.of("version", pages.version(link), "initials", "kl"))
                        .headers()
                        .firstValue("Location"))
                .hasValue(form);
        assertThat(read("sample.json").notPersons()).singleElement().satisfies(n -> {
            assertThat(n.words().get()).isEqualTo("anna-07");
            assertThat(n.by().get()).isEqualTo("kl");
        });
        assertThat(pages.get(form).body()).doesNotContain("This may name somebody.");
        assertThat(pages.get(link).statusCode())
                .as("there is nothing left to answer")
                .isEqualTo(422);
    }
}
