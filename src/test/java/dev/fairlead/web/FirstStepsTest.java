package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From nothing to a first page, from one missing fact to the next, and from stage to stage. */
class FirstStepsTest {
    @TempDir
    Path folder;

    @Test
    void aFirstConsultAsksForFewFactsAndEndsInAFirstPage() throws Exception {
        try (Pages pages = Pages.over(folder)) {
            assertThat(pages.post("/cases", Map.of("id", "new-1", "consult", "yes"))
                            .headers()
                            .firstValue("Location"))
                    .hasValueSatisfying(l -> assertThat(l).contains("/cases/new-1.json/consult"));
            String consult = pages.get("/cases/new-1.json/consult").body();
            assertThat(consult)
                    .contains(
                            "name=\"/child/age\"",
                            "name=\"/teeth/42/width\"",
                            "name=\"/space/right\"",
                            "name=\"/space/left\"",
                            "name=\"/contacts/41-31\"",
                            "name=\"/bite/overjet\"",
                            "name=\"/bite/overbite\"",
                            "name=\"/headFilm/incisorMandibular\"",
                            "name=\"/teeth/31/gingivaThickness\"",
                            "name=\"/teeth/41/recession\"");
            var saved = pages.post(
                    "/cases/new-1.json/form/child?to=consult",
                    Map.of(
                            "version", pages.version("/cases/new-1.json/consult"),
                            "/child/age", "9.2",
                            "/space/right", "19,8",
                            "/bite/overjet", "3"));
            String first = saved.headers().firstValue("Location").orElseThrow();
            assertThat(first).endsWith("/cases/new-1.json/report");
            assertThat(pages.get("/cases/new-1.json/report").body()).contains("First page alone", "not assessed");
            assertThat(CaseReader.read(folder.resolve("new-1.json"))
                            .value()
                            .orElseThrow()
                            .space()
                            .right()
                            .value())
                    .isEqualTo(19.8);
        }
    }

    @Test
    void nextMissingFactLeadsThroughTenWithTheReason() throws Exception {
        Files.writeString(
                folder.resolve("bare.json"),
                "{\"fairlead\":1,\"id\":\"bare-1\",\"stage\":\"indication\",\"child\":{\"age\":9}}");
        try (Pages pages = Pages.over(folder)) {
            List<String> offered = new ArrayList<>();
            String next = "/cases/bare.json/next";
            for (int i = 0; i < 10; i++) {
                String to = pages.get(next).headers().firstValue("Location").orElseThrow();
                String path = to.replaceFirst("^https?://[^/]*", "").replaceFirst("#.*", "");
                String page = pages.get(path).body();
                Matcher offer = Pattern.compile(
                                "Missing fact (\\d+) of 10: ([^.]+)\\. (\\d+ criteria wait|One criterion waits) for it: \\w")
                        .matcher(page);
                assertThat(offer.find()).as(path).isTrue();
                assertThat(offer.group(1)).isEqualTo(String.valueOf(i + 1));
                offered.add(offer.group(2));
                Matcher on = Pattern.compile("href=\"([^\"]*/next[^\"]*)\"").matcher(page);
                assertThat(on.find()).isTrue();
                next = on.group(1).replace("&amp;", "&");
            }
            assertThat(offered).doesNotHaveDuplicates();
            // what was given in the meantime is not offered again, and nothing is passed over for it
            String first = pages.get("/cases/bare.json/next")
                    .headers()
                    .firstValue("Location")
                    .orElseThrow();
            assertThat(pages.get("/cases/bare.json/next?at=9&was=" + "/no/longer")
                            .headers()
                            .firstValue("Location"))
                    .hasValueSatisfying(l -> assertThat(l).isNotEqualTo(first));
        }
    }

    @Test
    void theStageMovesOnlyWhenSomebodySaysSo() throws Exception {
        Map<String, Map<String, String>> done = Map.of(
                "insertion", Map.of("/insertion/eyeProtection", "yes"),
                "activation", Map.of("/visits/0/date", "2026-02-01"),
                "holding", Map.of("/holding/impression", "2026-02-20"));
        for (String reached : done.keySet()) {
            CaseTree tree = CaseTree.of(SampleCase.full().build());
            List.of("/insertion", "/visits", "/holding").forEach(tree::remove);
            tree.set("/stage", "bench");
            done.get(reached).forEach(tree::set);
            Files.writeString(folder.resolve(reached + ".json"), tree.text(CaseFormat.JSON));
        }
        try (Pages pages = Pages.over(folder)) {
            for (String reached : done.keySet()) {
                String page = "/cases/" + reached + ".json/form/child";
                String body = pages.get(page).body();
                assertThat(body)
                        .as(reached)
                        .contains("stands at <b>bench</b>", "value=\"" + reached + "\">Move it to " + reached);
                pages.post(
                        "/cases/" + reached + ".json/stage?to=child",
                        Map.of("version", pages.version(page), "/stage", reached));
                assertThat(pages.file(reached + ".json")).contains("\"stage\": \"" + reached + "\"");
                assertThat(pages.get(page).body()).doesNotContain("Move it to");
            }
        }
    }

    @Test
    void aWaiverHasAReasonOfTwentyToAThousandLettersWhateverItsWeight() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            pages.post(
                    "/cases/sample.json/form/mouth?changed=/bite/overjet",
                    Map.of("version", pages.version("/cases/sample.json/form/mouth"), "/bite/overjet", "1"));
            String page = "/cases/sample.json/waive/overjet-after";
            Map<String, String> form = new HashMap<>(Map.of(
                    "version", pages.version(page), "by", "director", "date", "2026-03-01", "expires", "2026-09-01"));
            for (String reason : List.of("x y z x y z x y z x", "seen on the model ".repeat(60))) {
                form.put("reason", reason);
                var refused = pages.post(page, form);
                assertThat(refused.statusCode())
                        .as(reason.length() + " letters")
                        .isEqualTo(422);
                assertThat(refused.body()).containsPattern("id=\"reason-said\"><span class=\"note error\">[^<]+");
            }
            form.put("reason", "Seen on the new model, with room to spare.");
            assertThat(pages.post(page, form).statusCode()).isEqualTo(303);
            String findings = pages.get("/cases/sample.json/findings").body();
            assertThat(findings).contains("Seen on the new model, with room to spare.");
            assertThat(pages.get("/cases/sample.json/chair").body())
                    .contains("Seen on the new model, with room to spare.");
        }
    }

    @Test
    void theChairAsksInTheOrderOfTheHandsAndCountsWhatIsOpenBefore() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            pages.post(
                    "/cases/sample.json/form/child?changed=/consent/guardian",
                    Map.of("version", pages.version("/cases/sample.json/form/child"), "/consent/guardian", "no"));
            String chair = pages.get("/cases/sample.json/chair?q=0").body();
            List<String> steps = new ArrayList<>();
            Matcher group =
                    Pattern.compile("class=\"group-row\"><th[^>]*>([^<]*)").matcher(chair);
            while (group.find()) {
                steps.add(group.group(1));
            }
            assertThat(steps)
                    .containsExactly(
                            "Before cutting",
                            "Passive in the mouth",
                            "Seat",
                            "Tie",
                            "Cut and catch",
                            "Before the child leaves");
            // the good answer stands first, whether it is yes or no
            Matcher first = Pattern.compile("<span role=\"group\"[^>]*><button type=\"submit\" class=\"(\\w+)")
                    .matcher(chair);
            int questions = 0;
            for (; first.find(); questions++) {
                assertThat(first.group(1)).isEqualTo("good");
            }
            assertThat(questions).isGreaterThan(10);
            assertThat(chair).containsPattern("id=\"headline\"[^>]*>Not yet: 1 stop<");
            assertThat(chair.substring(chair.indexOf("class=\"verdict")))
                    .contains("consent", "<span class=\"tag\">indication</span>");
        }
    }
}
