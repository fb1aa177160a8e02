package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** axe-core (Deque) finds nothing on any page, at desktop, tablet and telephone widths, in light and dark. */
@ExtendWith(WithBrowser.class)
class AxeTest {
    private static final String SHOWN =
            ").violations.map(v => v.id + ': ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 160) + ' ' + n.failureSummary.replace(/\\s+/g, ' ').slice(0, 220)).join(' | '))";
    private static final String ALL =
            "async () => ((await axe.run({ resultTypes: ['violations'], selectors: false, preload: false, rules: { 'target-size': { enabled: true } } }))"
                    + SHOWN;
    /** Colours are all that differs in the dark. */
    private static final String COLOURS =
            "async () => ((await axe.run({ resultTypes: ['violations'], selectors: false, preload: false, runOnly: ['color-contrast', 'link-in-text-block'] }))"
                    + SHOWN;

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
        "/nowhere"
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
            // other plans are searched before they are looked at
            while (pages.get("/cases/early.json/whatif").body().contains("plans searching")) {
                Thread.onSpinWait();
            }
            String axe = Browsing.axe();
            List<String> paths = Stream.of(PATHS)
                    .map(p -> p.replace("/versions/first", "/versions/" + first))
                    .toList();
            assertThat(browsing.lookAt(paths, (b, path, faults) -> look(b, pages, path, axe, faults)))
                    .isEmpty();
        }
    }

    private static void look(Browsing browsing, Pages pages, String path, String axe, List<String> faults) {
        try (BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, path);
            page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
            page.evaluate(axe);
            for (int[] size : new int[][] {{1440, 900}, {390, 844}, {320, 640}}) {
                page.setViewportSize(size[0], size[1]);
                for (ColorScheme scheme : new ColorScheme[] {ColorScheme.LIGHT, ColorScheme.DARK}) {
                    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
                    ((List<?>) page.evaluate(scheme == ColorScheme.LIGHT ? ALL : COLOURS))
                            .forEach(v -> faults.add(path + " " + size[0] + " " + scheme + " " + v));
                }
            }
            for (int width : new int[] {1440, 1180, 820, 390, 320}) {
                page.setViewportSize(width, 820);
                if ((Boolean) page.evaluate("() => document.documentElement.scrollWidth > innerWidth + 1")) {
                    faults.add(path + " " + width + " scrolls sideways");
                }
            }
        }
    }
}
