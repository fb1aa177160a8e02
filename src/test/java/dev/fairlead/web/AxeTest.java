package dev.fairlead.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Route;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * axe-core (Deque) finds nothing on any page, at desktop, tablet and telephone widths, in light and dark. With
 * {@code -Dfairlead.axe=PATTERN} only pages whose address it is found in are looked at.
 */
@ExtendWith(WithBrowser.class)
class AxeTest {
    /** Pages that answer what was sent; they have no address of their own. */
    private static final String ANSWER = "/answer/";

    private static final String[] PATHS = {
        "/cases",
        "/help",
        "/cases/sample.json/form/child",
        "/cases/sample.json/form/teeth",
        "/cases/sample.json/form/hardware",
        "/cases/sample.json/form/wire",
        "/cases/sample.json/form/insertion",
        "/cases/sample.json/form/visits",
        "/cases/sample.json/form/holding",
        "/cases/sample.json/form/films?more=/images",
        "/cases/sample.json/form/bench?again=yes",
        "/cases/early.json/findings",
        "/cases/early.json/numbers",
        "/cases/sample.json/pictures",
        "/cases/sample.json/wire",
        "/cases/early.json/report",
        "/cases/sample.json/visits",
        "/cases/sample.json/chair?q=1",
        "/cases/sample.json/chair?q=0",
        "/cases/sample.json/chair?q=19",
        "/cases/early.json/chair?part=bench",
        "/cases/early.json/versions",
        "/devices",
        "/cases/early.json/consult",
        "/book",
        "/book/stand-off-in-range",
        "/cases/early.json/waive/overjet-after",
        "/cases/early.json/whatif",
        "/cases/early.json/measure",
        "/cases/changed.json/versions",
        "/cases/changed.json/versions/first",
        "/cases/changed.json/waive/overjet-after",
        "/cases/early.json/form/arch",
        "/cases/doubted.json/form/child",
        "/cases/doubted.json/nobody?at=/resident",
        "/nowhere",
        ANSWER + "clash",
        ANSWER + "refused",
        ANSWER + "brought-in"
    };

    @TempDir
    Path folder;

    @Test
    void nothingStandsInTheWay(Browsing browsing) throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            // at an early stage there are findings of every kind, and few enough to look at all of them in six ways
            CaseTree early = CaseTree.of(SampleCase.full().build());
            // what is done already is judged whatever the stage says
            List.of("/bench", "/insertion", "/visits", "/holding").forEach(early::remove);
            early.set("/stage", "indication");
            early.set("/bite/overjet", "1");
            early.set("/mouth/activeGingivitis", "unknown");
            early.set("/space/left", "21.4 ± 0.5");
            Files.writeString(folder.resolve("early.json"), early.text(CaseFormat.JSON));
            Files.writeString(folder.resolve("changed.json"), early.text(CaseFormat.JSON));
            CaseTree doubted = early.copy();
            doubted.set("/resident", "anna-07");
            Files.writeString(folder.resolve("doubted.json"), doubted.text(CaseFormat.JSON));
            String first = pages.version("/cases/changed.json/form/arch");
            pages.post(
                    "/cases/changed.json/form/arch?changed=/space/right",
                    Map.of("version", first, "/space/right", "20"));
            String waive = "/cases/changed.json/waive/overjet-after";
            assertThat(pages.post(
                                    waive,
                                    Map.of(
                                            "version", pages.version(waive),
                                            "by", "director",
                                            "date", "2026-03-01",
                                            "expires", "2026-09-01",
                                            "reason", "Seen on the new model, with room to spare."))
                            .statusCode())
                    .isEqualTo(303);
            Map<String, String> answers = answers(pages, first);
            Pattern wanted = Pattern.compile(System.getProperty("fairlead.axe", ""));
            List<String> paths = Stream.of(PATHS)
                    .map(p -> p.replace("/versions/first", "/versions/" + first))
                    .filter(p -> wanted.matcher(p).find())
                    .toList();
            // other plans are searched before they are looked at
            while (wanted.matcher("/cases/early.json/whatif").find()
                    && pages.get("/cases/early.json/whatif").body().contains("plans searching")) {
                Thread.onSpinWait();
            }
            assertThat(browsing.lookAt(paths, (b, path, faults) -> look(b, pages, path, answers, faults)))
                    .isEmpty();
        }
    }

    /** Answers by name: two windows that changed one fact, a file that is no case, a zip with one case in it. */
    private static Map<String, String> answers(Pages pages, String version) throws Exception {
        ByteArrayOutputStream zip = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(zip)) {
            for (String name : List.of("brought.json", "brought-too.json")) {
                out.putNextEntry(new ZipEntry(name));
                out.write((name.equals("brought.json") ? pages.file("early.json") : "{").getBytes(UTF_8));
            }
        }
        String clash = pages.post("/cases/changed.json/form/arch", Map.of("version", version, "/space/right", "19"))
                .body();
        assertThat(clash).contains("Two windows changed the same facts");
        String refused = pages.upload(
                "slips.yaml", "fairlead: 1\nid: a-1\nstage: nowhere\nspace: {left: many}\n".getBytes(UTF_8));
        assertThat(refused).contains("was not brought in");
        String broughtIn = pages.upload("all.zip", zip.toByteArray());
        assertThat(broughtIn).contains("1 of 2 brought in");
        return Map.of(ANSWER + "clash", clash, ANSWER + "refused", refused, ANSWER + "brought-in", broughtIn);
    }

    private static void look(
            Browsing browsing, Pages pages, String path, Map<String, String> answers, List<String> faults)
            throws IOException {
        try (BrowserContext c = browsing.desktop()) {
            if (answers.containsKey(path)) {
                c.route(
                        "**" + path,
                        r -> r.fulfill(new Route.FulfillOptions()
                                .setContentType("text/html; charset=utf-8")
                                .setBody(answers.get(path))));
            }
            Axe.look(browsing.open(c, pages, path), path, faults);
        }
    }
}
