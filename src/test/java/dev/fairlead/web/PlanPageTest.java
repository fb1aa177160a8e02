package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What would clear a warning, without any script: the page, and taking a suggestion over. */
class PlanPageTest {
    private static final String BASE = "/cases/sample.json";

    @TempDir
    Path folder;

    private static String settled(Pages pages, String path) throws Exception {
        for (int i = 0; i < 200; i++) {
            HttpResponse<String> r = pages.get(path);
            assertThat(r.statusCode()).isEqualTo(200);
            if (!r.body().contains("plans searching")) {
                return r.body();
            }
        }
        throw new AssertionError("the search never ended");
    }

    /** A case holds what was read, never what a suggestion would like to read. */
    @Test
    void forWhatHasToBeMadeANewReadingIsAskedForAndNothingIsWritten() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            String before = pages.file("sample.json");
            Map<String, String> bend =
                    Map.of("version", pages.version(BASE + "/form/bench"), "/bench/left/height", "4.5");
            HttpResponse<String> asked = pages.post(BASE + "/whatif", bend);
            assertThat(asked.statusCode()).isEqualTo(200);
            assertThat(asked.body()).contains("measure again", "aim 4.5", "name=\"/bench/left/height\" value=\"\"");
            assertThat(pages.file("sample.json")).isEqualTo(before);
            Map<String, String> both = new HashMap<>(bend);
            both.put("/plan/advanceLeft", "0.5");
            assertThat(pages.post(BASE + "/whatif", both).body()).contains("1 planned value is in the case", "aim 4.5");
            assertThat(CaseReader.read(folder.resolve("sample.json")).value().orElseThrow())
                    .satisfies(c -> assertThat(c.plan().advanceLeft().value()).isEqualTo(0.5))
                    .satisfies(
                            c -> assertThat(c.bench().left().height().value()).isNotEqualTo(4.5));
            pages.post(
                    BASE + "/readings",
                    Map.of("version", pages.version(BASE + "/form/bench"), "/bench/left/height", "4.4"));
            assertThat(CaseReader.read(folder.resolve("sample.json"))
                            .value()
                            .orElseThrow()
                            .bench()
                            .left()
                            .height()
                            .value())
                    .isEqualTo(4.4);
        }
    }

    @Test
    void aFactThatStandsInNoPartOfTheFormIsRefusedBeforeAnythingIsChanged() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            String before = pages.file("sample.json");
            HttpResponse<String> sent = pages.post(
                    BASE + "/readings",
                    Map.of("version", pages.version(BASE + "/form/bench"), "/waivers/0/reason", "as agreed"));
            assertThat(sent.statusCode()).isEqualTo(400);
            assertThat(sent.body()).contains("No part of the form holds /waivers/0/reason");
            assertThat(pages.file("sample.json")).isEqualTo(before);
        }
    }

    @Test
    void aSuggestionIsTakenOverInOneStepAndUndoneInOne() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            // what is done already no plan can clear
            CaseTree planned = CaseTree.of(SampleCase.full().build());
            List.of("/bench", "/insertion", "/visits", "/holding").forEach(planned::remove);
            Files.writeString(folder.resolve("sample.json"), planned.text(CaseFormat.JSON));
            Map<String, String> form = new HashMap<>(Map.of(
                    "version",
                    pages.version(BASE + "/form/mouth"),
                    "/bite/overjet",
                    "4.2",
                    "/stage",
                    "indication",
                    "/plan/advanceLeft",
                    "4",
                    "/plan/advanceRight",
                    "4"));
            pages.post(BASE + "/form/mouth", form);
            String before = pages.file("sample.json");
            assertThat(pages.get(BASE + "/findings").body())
                    .contains(BASE + "/whatif\"", BASE + "/whatif/overjet-after");
            assertThat(settled(pages, BASE + "/whatif"))
                    .contains("Take over into the case", "other plans were measured and judged");
            String page = settled(pages, BASE + "/whatif/overjet-after");
            Map<String, String> sent = new HashMap<>();
            Matcher m = Pattern.compile("<input type=\"hidden\" name=\"(version|/[^\"]+)\" value=\"([^\"]*)\">")
                    .matcher(page.substring(page.indexOf("class=\"offer\"")));
            while (m.find()) {
                sent.put(m.group(1), m.group(2));
            }
            assertThat(sent)
                    .containsEntry("/plan/advanceLeft", "3")
                    .containsEntry("/plan/advanceRight", "3")
                    .containsKey("version");
            HttpResponse<String> taken = pages.post(BASE + "/whatif", sent);
            assertThat(taken.statusCode()).isEqualTo(303);
            String to = taken.headers().firstValue("Location").orElseThrow();
            assertThat(to).contains("/form/plan?taken=2#f_plan_advance");
            assertThat(pages.get(to.substring(to.indexOf("/cases"), to.indexOf('#')))
                            .body())
                    .contains("2 values were changed", "Undo takes it back");
            assertThat(CaseReader.read(folder.resolve("sample.json"))
                            .value()
                            .orElseThrow()
                            .plan()
                            .advanceLeft()
                            .value())
                    .isEqualTo(3);
            assertThat(pages.get(BASE + "/findings").body())
                    .containsPattern("class=\"finding pass\" id=\"overjet-after\"");
            pages.post(BASE + "/undo?to=plan", Map.of("version", pages.version(BASE + "/form/plan")));
            assertThat(pages.file("sample.json")).isEqualTo(before);
            assertThat(pages.post(BASE + "/whatif", Map.of("version", pages.version(BASE + "/form/plan")))
                            .statusCode())
                    .isEqualTo(400);
            assertThat(pages.get(BASE + "/whatif/no-such-criterion").statusCode())
                    .isEqualTo(404);
        }
    }

    @Test
    void aValueThatAnotherWindowChangedMeanwhileIsNotOverwritten() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            String seen = pages.version(BASE + "/form/plan");
            pages.post(BASE + "/form/plan", Map.of("version", seen, "/plan/advanceLeft", "1.5"));
            HttpResponse<String> r = pages.post(BASE + "/whatif", Map.of("version", seen, "/plan/advanceLeft", "0.5"));
            assertThat(r.statusCode()).isEqualTo(409);
            assertThat(r.body()).contains("Two windows changed the same facts");
            assertThat(CaseReader.read(folder.resolve("sample.json"))
                            .value()
                            .orElseThrow()
                            .plan()
                            .advanceLeft()
                            .value())
                    .isEqualTo(1.5);
        }
    }
}
