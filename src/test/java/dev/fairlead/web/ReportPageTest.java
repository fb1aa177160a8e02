package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import dev.fairlead.report.Demo;
import dev.fairlead.report.html.ReportHtml;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The report as a file in a real browser: axe-core (Deque) finds nothing, nothing is fetched, nothing runs, it fits
 * telephone and paper.
 */
@ExtendWith(WithBrowser.class)
class ReportPageTest {
    private static final String AXE =
            "async () => (await axe.run({ resultTypes: ['violations']%s })).violations.map(v => v.id + ': ' + v.nodes.slice(0, 3)"
                    + ".map(n => n.html.slice(0, 160) + ' ' + n.failureSummary.replace(/\\s+/g, ' ').slice(0, 220)).join(' | '))";
    private static final String ALL = AXE.formatted("");
    private static final String COLOURS = AXE.formatted(", runOnly: ['color-contrast', 'link-in-text-block']");

    @Test
    void nothingStandsInTheWayOfAReader(Browsing browsing) throws Exception {
        assertThat(browsing.lookAt(List.of("avocet-03", "turnstone-11"), ReportPageTest::look))
                .isEmpty();
    }

    private static void look(Browsing browsing, String id, List<String> faults) throws IOException {
        try (BrowserContext c = browsing.desktop()) {
            Page page = c.newPage();
            page.setContent(ReportHtml.of(Demo.checked(id), true));
            page.evaluate(
                    "() => document.querySelectorAll('details').forEach((d, i) => { if (i % 5 == 0) d.open = true; })");
            page.evaluate(Browsing.axe());
            faults(page, id + " 1280 light", ALL, faults);
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
            faults(page, id + " 1280 dark", COLOURS, faults);
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
            for (int width : new int[] {820, 390}) {
                page.setViewportSize(width, 900);
                if (Boolean.TRUE.equals(page.evaluate("() => document.documentElement.scrollWidth > innerWidth + 1"))) {
                    faults.add(id + " " + width + " scrolls sideways");
                }
            }
            faults(page, id + " 390 light", ALL, faults);
        }
    }

    private static void faults(Page page, String where, String what, List<String> faults) {
        ((List<?>) page.evaluate(what)).forEach(v -> faults.add(where + " " + v));
    }

    @Test
    void readsWithoutScriptsAndWarningsStandOpen(Browsing browsing) throws IOException {
        try (BrowserContext c = browsing.context(new Browser.NewContextOptions().setJavaScriptEnabled(false))) {
            Page page = c.newPage();
            page.setContent(ReportHtml.of(Demo.checked("avocet-03")));
            assertThat(page.locator("#f-gingiva-thickness .todo").isVisible()).isTrue();
            assertThat(page.locator("#f-ratio-of-widths .facts").isVisible()).isFalse();
            page.locator("#f-ratio-of-widths summary").click();
            assertThat(page.locator("#f-ratio-of-widths .facts").first().isVisible())
                    .isTrue();
        }
    }

    @Test
    void onPaperTheSummaryHasTheFirstSheetAndFoldedPartsAreUnfolded(Browsing browsing) throws IOException {
        try (BrowserContext c = browsing.desktop()) {
            Page page = c.newPage();
            page.setContent(ReportHtml.of(Demo.checked("knot-08")));
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            byte[] pdf = page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
            String first = dev.fairlead.report.pdf.Pdfs.text(pdf, 1);
            assertThat(first).contains("Case knot-08", "Key numbers", "What decides");
            assertThat(dev.fairlead.report.pdf.Pdfs.text(pdf, 2)).containsPattern("^([0-9]+ / [0-9]+\\s+)?Records");
            StringBuilder all = new StringBuilder();
            for (int p = 2; p <= 8; p++) {
                all.append(dev.fairlead.report.pdf.Pdfs.text(pdf, p));
            }
            // what is asked for stands inside a folded part
            String asked = Demo.checked("knot-08")
                    .report()
                    .findings()
                    .of("consent-recorded")
                    .asks();
            assertThat(all.toString().replaceAll("\\s+", " ")).contains(asked);
        }
    }
}
