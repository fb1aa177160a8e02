package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.report.pdf.Pdfs;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What a person sees of the pages: how much of it, and how large. */
@ExtendWith(WithBrowser.class)
class LookTest {
    /** Every text of an element with its size on the screen, in pixels. */
    private static final String SIZES = "s => [...document.querySelectorAll(s)].filter(e => e.offsetParent !== null && "
            + "e.closest('.sr') === null && [...e.childNodes].some(n => n.nodeType === 3 && n.textContent.trim()))"
            + ".map(e => [parseFloat(getComputedStyle(e).fontSize), e.textContent.trim().slice(0, 40)])";

    private static final String DRAWN = "() => [...document.querySelectorAll('main svg text')].map(t => "
            + "parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a)";

    @TempDir
    Path folder;

    private void twelve() throws Exception {
        for (int i = 10; i < 24; i++) {
            CaseTree tree = CaseTree.of(SampleCase.full().build());
            if (i % 3 == 0) {
                // counts of other lengths
                tree.remove("/films");
                tree.set("/bite/overjet", "0.2");
            }
            tree.set("/id", "case-with-a-long-name-" + i);
            tree.set("/resident", "r" + i);
            Files.writeString(folder.resolve("file-of-another-name-" + i + ".json"), tree.text(CaseFormat.JSON));
        }
    }

    @Test
    void twelveCasesAreSeenAtOnce(Browsing browsing) throws Exception {
        twelve();
        try (Pages pages = Pages.over(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions().setViewportSize(1440, 900))) {
            Page page = browsing.open(c, pages, "/cases");
            page.waitForFunction("() => document.querySelectorAll('.case-card .tally').length === 14");
            Object seen = page.evaluate("() => [...document.querySelectorAll('.case-card')]"
                    + ".filter(e => e.getBoundingClientRect().bottom <= innerHeight).length");
            assertThat(((Number) seen).intValue()).isGreaterThanOrEqualTo(12);
            Object heights = page.evaluate(
                    "() => new Set([...document.querySelectorAll('.case-card')].map(e => e.offsetHeight)).size");
            assertThat(heights).as("different heights of cards").isEqualTo(1);
            assertThat(page.evaluate("() => document.querySelectorAll('#resident option').length"))
                    .isEqualTo(15);
            assertThat(page.evaluate("() => document.querySelector('#resident').value"))
                    .as("residents that were found meanwhile choose nobody")
                    .isEqualTo("");
            browsing.assertQuiet();
        }
    }

    /** On a desk and on a tablet held across, what a line tells stands beside each other and touches nothing. */
    @Test
    void aLineOfTheListIsReadAtAGlance(Browsing browsing) throws Exception {
        twelve();
        try (Pages pages = Pages.over(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions().setViewportSize(1440, 900))) {
            Page page = browsing.open(c, pages, "/cases");
            page.waitForFunction("() => document.querySelectorAll('.case-card .tally').length === 14");
            for (int width : new int[] {1440, 1360, 1280, 1180, 1100}) {
                page.setViewportSize(width, 820);
                Object faults = page.evaluate("() => [...document.querySelectorAll('.case-card')].flatMap(card => {"
                        + " const at = s => card.querySelector(s).getBoundingClientRect();"
                        + " return [at('.case-link').height > 30 && 'name in two lines',"
                        + "   at('.case-progress').right + 8 > at('.tally').left && 'counts touch the bars',"
                        + "   at('.case-main').right > at('.case-progress').left && 'name touches the bars',"
                        + "   at('.tally').right > card.getBoundingClientRect().right && 'counts stand out',"
                        + "   at('.case-progress').left !== document.querySelector('.case-progress').getBoundingClientRect().left && 'bars stand askew']"
                        + "   .filter(Boolean); })");
                assertThat((List<?>) faults).as("at " + width).isEmpty();
            }
        }
    }

    @Test
    void noWordOfASmallDrawingIsCutOff(Browsing browsing) throws Exception {
        try (Pages pages = Pages.withSample(folder);
                BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, "/cases/sample.json/form/bench");
            for (String part : List.of("bench", "insertion", "visits")) {
                page.navigate(pages.at("/cases/sample.json/form/" + part).toString());
                page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
                List<?> words = (List<?>)
                        page.evaluate(
                                "() => [...document.querySelectorAll('svg.caliper text')].map(t => {"
                                        + " const a = t.getBoundingClientRect(), b = t.ownerSVGElement.getBoundingClientRect();"
                                        + " return [a.left >= b.left && a.right <= b.right && a.bottom <= b.bottom, t.textContent]; })");
                assertThat(words).hasSizeGreaterThan(5);
                assertThat(words)
                        .allSatisfy(w -> assertThat(((List<?>) w).get(0))
                                .as(part + " " + w)
                                .isEqualTo(true));
            }
        }
    }

    @Test
    void wordsInPicturesAreNeverSmall(Browsing browsing) throws Exception {
        try (Pages pages = Pages.withSample(folder);
                BrowserContext c = browsing.desktop()) {
            for (String path : List.of("pictures", "visits", "chair?q=3", "chair?part=bench&q=4")) {
                Page page = browsing.open(c, pages, "/cases/sample.json/" + path);
                for (int width : new int[] {1440, 820, 390}) {
                    page.setViewportSize(width, 900);
                    // drawings of where to measure are folded beside their fields
                    page.evaluate("() => document.querySelectorAll('details').forEach(d => { d.open = true; })");
                    List<?> sizes = (List<?>) page.evaluate(DRAWN);
                    assertThat(sizes)
                            .hasSizeGreaterThan(path.startsWith("chair") ? 1 : path.equals("visits") ? 12 : 40);
                    assertThat(sizes)
                            .allSatisfy(s -> assertThat(((Number) s).doubleValue())
                                    .as(path + " at " + width)
                                    .isGreaterThan(11.9));
                }
                page.close();
            }
        }
    }

    @Test
    void atTheChairNothingIsTooSmallToReadOrToPress(Browsing browsing) throws Exception {
        try (Pages pages = Pages.withSample(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions()
                        .setViewportSize(820, 1180)
                        .setHasTouch(true))) {
            for (String part : List.of("part=insertion&q=3", "part=insertion&q=0", "part=bench&q=4")) {
                Page page = browsing.open(c, pages, "/cases/sample.json/chair?" + part);
                for (int[] size : new int[][] {{820, 20}, {390, 18}}) {
                    page.setViewportSize(size[0], 900);
                    List<?> texts = (List<?>) page.evaluate(SIZES, "main *:not(svg *)");
                    assertThat(texts).hasSizeGreaterThan(40);
                    assertThat(texts)
                            .allSatisfy(t -> assertThat(((Number) ((List<?>) t).get(0)).doubleValue())
                                    .as(size[0] + ": " + t)
                                    .isGreaterThanOrEqualTo(size[1]));
                    Object question = page.evaluate(
                            "() => parseFloat(getComputedStyle(document.querySelector('#ask')).fontSize)");
                    assertThat(((Number) question).doubleValue()).isGreaterThanOrEqualTo(26);
                    List<?> low =
                            (List<?>) page.evaluate("() => [...document.querySelectorAll('body.chair :is(a, button,"
                                    + " input:not([type=hidden]), select, summary)')].filter(e => e.offsetParent && !e.closest('p') &&"
                                    + " !e.matches('.skip')).map(e => [e.getBoundingClientRect(), e.textContent]).filter(([r]) =>"
                                    + " r.height < 48).map(([r, t]) => r.height + ' ' + t)");
                    assertThat(low).as("pressed at " + size[0]).isEmpty();
                }
                page.close();
            }
        }
    }

    @Test
    void numbersFitATelephoneAndTheSkipLinkLeadsToTheFirstFact(Browsing browsing) throws Exception {
        try (Pages pages = Pages.withSample(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions().setViewportSize(390, 844))) {
            Page page = browsing.open(c, pages, "/cases/sample.json/numbers");
            assertThat(((Number) page.evaluate("() => document.documentElement.scrollHeight")).intValue())
                    .isLessThan(3000);
            page.locator("details.numbers summary").nth(1).click();
            assertThat(page.locator("details.numbers[open] tr").count()).isGreaterThan(10);
            page.navigate(pages.at("/cases/sample.json/form/child").toString());
            page.keyboard().press("Tab");
            page.keyboard().press("Enter");
            page.keyboard().press("Tab");
            assertThat(page.evaluate("() => document.activeElement.name")).isEqualTo("/id");
            page.navigate(pages.at("/cases/sample.json/findings").toString());
            page.keyboard().press("Tab");
            page.keyboard().press("Enter");
            assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("main");
        }
    }

    @Test
    void onPaperNoChartIsCutInTwo(Browsing browsing) throws Exception {
        try (Pages pages = Pages.withSample(folder);
                BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, "/cases/sample.json/visits");
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            // so that the first chart does not fit on what is left of the first sheet
            page.evaluate("() => { const d = document.createElement('div'); d.style.height = '170mm';"
                    + " document.querySelector('main').prepend(d); }");
            byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4"));
            for (int p = 1; p <= 3; p++) {
                String text = Pdfs.text(pdf, p);
                for (String side : List.of("right", "left")) {
                    boolean heading = text.contains("Space on the " + side);
                    int targets = text.split("target [0-9]", -1).length - 1;
                    int headings = text.split("Space on the ", -1).length - 1;
                    assertThat(targets)
                            .as("charts on sheet " + p + " " + side + " " + heading)
                            .isEqualTo(headings);
                }
            }
        }
    }

    /** Names of formats and folders stand on the help page alone. */
    @Test
    void noPageSpeaksOfFilesButTheHelp() throws Exception {
        try (Pages pages = Pages.withSample(folder)) {
            for (String path : List.of(
                    "/cases",
                    "/cases/sample.json/form/child",
                    "/cases/sample.json/findings",
                    "/cases/sample.json/numbers",
                    "/cases/sample.json/pictures",
                    "/cases/sample.json/visits",
                    "/cases/sample.json/chair",
                    "/cases/sample.json/report",
                    "/cases/sample.json/versions",
                    "/cases/sample.json/consult",
                    "/book",
                    "/help")) {
                String words = pages.get(path)
                        .body()
                        .replaceAll("(?s)<(style|script|title)\\b.*?</\\1>", "")
                        .replaceAll("<[^>]*>", "");
                assertThat(words.contains("YAML") || words.contains(".history") || words.contains("JSON"))
                        .as(path)
                        .isEqualTo(path.equals("/help"));
                assertThat(pages.get(path).body()).contains("href=\"/help\"");
            }
            assertThat(pages.get("/help").body().split("<dt>").length).isGreaterThan(30);
        }
    }
}
