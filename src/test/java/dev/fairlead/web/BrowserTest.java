package dev.fairlead.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.JSHandle;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The pages in a real browser: touch, commas, two windows, refresh and back. */
@ExtendWith(WithBrowser.class)
class BrowserTest {
    @TempDir
    static Path folder;

    private static Pages pages;
    private final Browsing browsing;
    private String name;
    private String base;

    BrowserTest(Browsing browsing) {
        this.browsing = browsing;
    }

    @BeforeAll
    static void start() throws IOException {
        pages = Pages.over(folder);
        PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
    }

    @AfterAll
    static void stop() {
        pages.close();
    }

    /** Each test has a case of its own. */
    @BeforeEach
    void sample() throws IOException {
        name = pages.sample();
        base = "/cases/" + name;
    }

    @AfterEach
    void quiet() {
        browsing.assertQuiet();
    }

    private Case read() throws IOException {
        return CaseReader.read(folder.resolve(name)).value().orElseThrow();
    }

    @Test
    void aGermanTypesCommasAndSeesFindingsFollow() throws Exception {
        try (BrowserContext c = browsing.context(
                new Browser.NewContextOptions().setViewportSize(1280, 900).setLocale("de-DE"))) {
            Page page = browsing.open(c, pages, base + "/form/mouth");
            Locator overjet = page.getByLabel("Overjet");
            overjet.fill("1,2");
            assertThat(page.locator("#findings .typed")).isVisible();
            assertThat(page.locator("#findings #overjet-after")).hasClass(Pattern.compile("caution|stop"));
            overjet.press("Tab");
            assertThat(page.locator("#n" + "f_bite_overjet .echo")).hasText("1.2 mm");
            assertThat(page.locator("#findings .typed")).hasCount(0);
            assertThat(read().bite().overjet().value()).isEqualTo(1.2);
            overjet.fill("3;9,5");
            overjet.press("Tab");
            assertThat(page.locator("#nf_bite_overjet .error, #nf_bite_overjet .doubt"))
                    .isVisible();
            overjet.fill("0,5 mm");
            overjet.press("Tab");
            assertThat(page.locator("#nf_bite_overjet .echo")).hasText("0.5 mm");
            assertThat(read().bite().overjet().value()).isEqualTo(0.5);
        }
    }

    @Test
    void twoWindowsNeverOverwriteEachOtherSilently() throws Exception {
        try (BrowserContext c = browsing.desktop()) {
            Page one = browsing.open(c, pages, base + "/form/arch");
            Page two = browsing.open(c, pages, base + "/form/arch");
            Locator first = one.locator("#f_space_perimeter");
            first.fill("61");
            first.press("Tab");
            assertThat(one.locator("#version"))
                    .not()
                    .hasValue(two.locator("#version").inputValue());
            Locator second = two.locator("#f_space_perimeter");
            second.fill("63");
            second.press("Tab");
            assertThat(two.locator(".clash")).containsText("There: 61. Here: 63.");
            assertThat(read().space().perimeter().value()).isEqualTo(61);
            two.getByText("Use this one").click();
            two.waitForCondition(() -> perimeter() == 63);
            // another fact in the window that is behind: taken, and the window told
            Locator other = one.locator("#f_arch_molarWidth");
            other.fill("45");
            other.press("Tab");
            assertThat(one.locator("#others")).containsText("changed in another window");
            assertThat(read().arch().molarWidth().value()).isEqualTo(45);
            assertThat(read().space().perimeter().value()).isEqualTo(63);
        }
    }

    @Test
    void quickEditsOfOneWindowAreNoConflict() throws Exception {
        try (BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, base + "/form/mouth");
            for (int i = 0; i < 4; i++) {
                for (String value : new String[] {"no", "yes"}) {
                    page.locator("input[name='/mouth/untreatedCaries'][value=" + value + "]")
                            .check();
                    page.locator("input[name='/mouth/activeGingivitis'][value=" + value + "]")
                            .check();
                }
            }
            assertThat(page.locator("#findings #hygiene-and-caries")).hasClass(Pattern.compile("caution|stop"));
            // saves wait for each other: the last one is under way when the page shows no request for a moment
            page.waitForCondition(() -> bothYes(name));
            Browsing.settle(page);
            assertThat(page.locator(".clash")).hasCount(0);
            org.assertj.core.api.Assertions.assertThat(bothYes(name)).isTrue();
        }
    }

    private double perimeter() {
        try {
            return read().space().perimeter().value();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private boolean bothYes(String file) {
        try {
            var mouth =
                    CaseReader.read(folder.resolve(file)).value().orElseThrow().mouth();
            return mouth.untreatedCaries().yes() && mouth.activeGingivitis().yes();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void refreshAndBackInMidEditLoseNothing() throws Exception {
        try (BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, base + "/form/arch");
            page.locator("#f_space_perimeter").fill("61.5");
            page.reload();
            assertThat(page.locator("#f_space_perimeter")).hasValue("61.5");
            page.locator("#f_space_perimeter").fill("610");
            page.locator("#f_space_perimeter").press("Tab");
            assertThat(page.locator("#nf_space_perimeter .error")).isVisible();
            page.navigate(pages.at(base + "/findings").toString());
            page.goBack();
            assertThat(page.locator("#f_space_perimeter")).hasValue("610");
            assertThat(page.locator("#nf_space_perimeter .error")).containsText("Not in the case");
            assertThat(read().space().perimeter().value()).isEqualTo(61.5);
            page.getByText("Undo", new Page.GetByTextOptions().setExact(true)).click();
            page.waitForLoadState();
            assertThat(page.locator("#f_space_perimeter")).hasValue("62.4");
        }
    }

    @Test
    void aFileIsChosenOrDroppedThenFoundAndTakenAway() throws Exception {
        Files.writeString(folder.resolveSibling("drop-1.yaml"), "fairlead: 1\nid: drop-1\nstage: indication\n");
        try (BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, "/cases");
            page.setInputFiles("#import input[type=file]", folder.resolveSibling("drop-1.yaml"));
            page.getByText("Bring in", new Page.GetByTextOptions().setExact(true))
                    .click();
            page.waitForURL("**/cases/drop-1.yaml/form/child");
            page.navigate(pages.at("/cases").toString());
            JSHandle dropped = page.evaluateHandle(
                    "() => { const d = new DataTransfer(); d.items.add(new File(['fairlead: 1\\nid: drop-2\\nstage: indication\\n'], 'drop-2.yaml')); return d; }");
            page.dispatchEvent("main", "drop", Map.of("dataTransfer", dropped));
            page.waitForURL("**/cases/drop-2.yaml/form/child");
            page.navigate(pages.at("/cases").toString());
            page.getByPlaceholder("Find by").fill("drop-2");
            assertThat(page.locator(".case-card")).hasCount(1);
            assertThat(page.locator(".case-card")).containsText("drop-2");
            Download taken =
                    page.waitForDownload(() -> page.getByText("Download", new Page.GetByTextOptions().setExact(true))
                            .click());
            assertThat(Files.readString(taken.path())).isEqualTo(pages.file("drop-2.yaml"));
        }
    }

    /** In the panel beside the form, while typing goes on. */
    @Test
    void whatClearsAWarningIsSearchedBesideTheFormAndTakenOverByOnePress() throws Exception {
        // a plan is open to change before it is carried out
        CaseTree early = CaseTree.of(read());
        early.set("/stage", "indication");
        List.of("/bench", "/insertion", "/visits", "/holding").forEach(early::remove);
        Files.writeString(folder.resolve(name), early.text(CaseFormat.JSON));
        try (BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, base + "/form/mouth");
            page.locator("#f_bite_overjet").fill("1.5");
            page.locator("#f_bite_overjet").press("Tab");
            Locator finding = page.locator("#findings #overjet-after");
            assertThat(finding).hasClass(Pattern.compile("caution|stop"));
            finding.locator("summary").first().click();
            finding.getByText("What would clear it").click();
            Locator plaque = page.locator("#f_mouth_plaqueScore");
            plaque.focus();
            assertThat(finding.locator(".offer").first()).isVisible();
            assertThat(plaque).isFocused();
            double planned = read().plan().advanceLeft().value();
            finding.getByText("Take over into the case").first().click();
            page.waitForURL("**/form/plan?taken=*");
            assertThat(page.locator("main")).containsText("Undo takes it back in one step");
            assertThat(page.locator("#findings #overjet-after")).hasClass(Pattern.compile("pass"));
            assertThat(read().plan().advanceLeft().value()).isLessThan(planned);
            page.getByText("Undo", new Page.GetByTextOptions().setExact(true)).click();
            page.waitForURL("**/form/plan");
            assertThat(read().plan().advanceLeft().value()).isEqualTo(planned);
            assertThat(read().bite().overjet().value()).isEqualTo(1.5);
        }
    }

    @Test
    void aStatedErrorStaysBesideItsValueWhenOnlyTheValueIsTypedAnew() throws Exception {
        Files.writeString(
                folder.resolve("stated.json"),
                "{\"fairlead\":1,\"id\":\"stated\",\"stage\":\"indication\",\"bite\":{\"overjet\":{\"value\":2.5,\"error\":0.4}}}");
        try (BrowserContext c = browsing.context(
                new Browser.NewContextOptions().setViewportSize(820, 1180).setLocale("de-DE"))) {
            Page page = browsing.open(c, pages, "/cases/stated.json/form/mouth");
            assertThat(page.locator("#f_bite_overjet")).hasValue("2.5");
            assertThat(page.locator("#ef_bite_overjet")).hasValue("0.4");
            page.locator("#f_bite_overjet").fill("3,5");
            page.locator("#f_bite_overjet").press("Tab");
            assertThat(page.locator("#nf_bite_overjet .echo")).containsText("3.5 mm ± 0.4");
            page.locator("#ef_bite_overjet").fill("0,2");
            page.locator("#ef_bite_overjet").press("Tab");
            assertThat(page.locator("#nf_bite_overjet .echo")).containsText("3.5 mm ± 0.2");
            Case now = CaseReader.read(folder.resolve("stated.json")).value().orElseThrow();
            assertThat(now.bite().overjet().value()).isEqualTo(3.5);
            assertThat(now.bite().overjet().sd()).isEqualTo(0.2);
        }
    }

    /** A unit that is cut off reads as another: "0.022 in" under mm. */
    @Test
    void noValueIsCutOffInItsField() throws Exception {
        Files.writeString(
                folder.resolve("cut.yaml"),
                "fairlead: 1\nid: cut-1\nstage: bench\nwire: {size: 0.020 in, modulus: 180.5 GPa}\nteeth: {36: {width: 11.05}, 46: {width: 10.95 mm}}\n"
                        + "hardware:\n  left: {height: 0.0225 in, length: 3.05 mm}\n  brackets:\n    42: {slot: 0.022 in, fromMidline: 8.45 mm}\nbench:\n  left: {firstMark: 38.95 mm}\n");
        try (BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, "/cases/cut.yaml/form/hardware");
            for (String section : new String[] {"hardware", "wire", "bench", "teeth"}) {
                page.navigate(pages.at("/cases/cut.yaml/form/" + section).toString());
                for (int width : new int[] {1280, 820, 390}) {
                    page.setViewportSize(width, 900);
                    Object cut = page.evaluate(
                            "() => [...document.querySelectorAll('input.number')].filter(i => i.scrollWidth > i.clientWidth + 1).map(i => i.name + '=' + i.value)");
                    assertThat((java.util.List<?>) cut)
                            .as("%s at %d", section, width)
                            .isEmpty();
                }
            }
        }
    }
}
