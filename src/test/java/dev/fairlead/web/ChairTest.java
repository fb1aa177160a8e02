package dev.fairlead.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.SampleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** An insertion worked through on a tablet and a telephone, by fingers alone. */
@ExtendWith(WithBrowser.class)
class ChairTest {
    /** From the list of cases to the verdict with every question answered. */
    private static final int MOST_PRESSES = 22;

    @TempDir
    Path folder;

    private int presses;

    @Test
    void aCleanInsertionTakesFewPressesAndTheAnswerStaysInSight(Browsing browsing) throws Exception {
        CaseTree tree = CaseTree.of(SampleCase.full().build());
        tree.remove("/insertion");
        tree.remove("/visits");
        tree.remove("/holding");
        tree.set("/stage", "insertion");
        Files.writeString(folder.resolve("clean.json"), tree.text(CaseFormat.JSON));
        try (Pages pages = Pages.over(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions()
                        .setViewportSize(820, 1180)
                        .setHasTouch(true)
                        .setLocale("en-GB"))) {
            Page page = browsing.open(c, pages, "/cases");
            press(page.locator(".case-links a", new Page.LocatorOptions().setHasText("Chair")));
            page.waitForURL("**/chair**");
            assertThat(page.locator("#headline")).containsText("Not yet");
            for (int i = 0; i < 40 && page.locator("#ask").count() > 0; i++) {
                assertThat(page.locator("#headline")).isInViewport();
                assertThat(page.locator("#ask").boundingBox().y)
                        .as("the question stands in the upper part")
                        .isLessThan(1180 / 3.0);
                Locator best = page.locator(".ask form .answer").first();
                var box = best.boundingBox();
                assertThat(Math.min(box.width, box.height))
                        .as("size of what is pressed")
                        .isGreaterThanOrEqualTo(48);
                String before = page.locator("#ask").innerText() + page.url();
                press(best);
                page.waitForFunction(
                        "b => !document.querySelector('#ask') || document.querySelector('#ask').innerText + location.href !== b",
                        before);
            }
            assertThat(presses).as("presses from list to verdict").isLessThanOrEqualTo(MOST_PRESSES);
            assertThat(page.locator("#headline")).not().containsText("open");
            String[] count =
                    page.locator(".chair-bar .count").innerText().strip().split("\\s+of\\s+");
            assertThat(count[0]).as("every question has its answer").isEqualTo(count[1]);
            org.assertj.core.api.Assertions.assertThat(CaseReader.read(folder.resolve("clean.json"))
                            .value()
                            .orElseThrow()
                            .insertion())
                    .satisfies(i -> {
                        assertThat(i.left().cutEndCaught().yes()).isTrue();
                        assertThat(i.right().bentBehind().no()).isTrue();
                        assertThat(i.blanching().no()).isTrue();
                        assertThat(i.bracketsTied().value()).isEqualTo(4);
                        assertThat(i.passiveGap().value()).isZero();
                    });
            // a hazard is named at once, with what it is, wherever on the page one works
            page.setViewportSize(390, 844);
            page.locator("tr", new Page.LocatorOptions().setHasText("cut-off piece"))
                    .first()
                    .locator("button[value=no]")
                    .tap();
            assertThat(page.locator("#headline")).containsText("Not yet: ");
            assertThat(page.locator(".verdict")).containsText("Cut-off piece not found");
            assertThat(page.locator("#headline")).isInViewport();
            org.assertj.core.api.Assertions.assertThat(
                            (Boolean) page.evaluate("() => document.documentElement.scrollWidth <= innerWidth + 1"))
                    .isTrue();
            browsing.assertQuiet();
        }
    }

    @Test
    void plusAndMinusMoveANumberByItsStep(Browsing browsing) throws Exception {
        CaseTree bare = CaseTree.of(SampleCase.full().build());
        bare.remove("/bench");
        Files.writeString(folder.resolve("bare.json"), bare.text(CaseFormat.JSON));
        try (Pages pages = Pages.withSample(folder);
                BrowserContext c = browsing.desktop()) {
            Page page = browsing.open(c, pages, "/cases/bare.json/chair?part=bench&q=1");
            Locator box = page.locator("input.big-input");
            assertThat(page.locator("#ask")).hasText("First mark from midline");
            page.locator(".stepper [aria-label^=More]").click();
            org.assertj.core.api.Assertions.assertThat(Double.parseDouble(box.inputValue()))
                    .as("near where the mark was worked out to be, not at zero")
                    .isBetween(30.0, 50.0);
            page.navigate(pages.at("/cases/bare.json/chair?part=bench&q=10").toString());
            assertThat(page.locator("#ask")).hasText("Fold tipped to the cheek");
            page.locator(".stepper [aria-label^=Less]").click();
            page.locator(".stepper [aria-label^=Less]").click();
            assertThat(box).hasValue("-2");
            page.navigate(pages.at("/cases/sample.json/chair?q=2").toString());
            for (String[] step :
                    new String[][] {{"4.1", "Less", "3.85"}, {"2,3", "More", "2.55"}, {"0.1", "Less", "0"}}) {
                box.fill(step[0]);
                page.locator(".stepper [aria-label^=" + step[1] + "]").click();
                assertThat(box).hasValue(step[2]);
            }
        }
    }

    private void press(Locator what) {
        presses++;
        what.tap();
    }
}
