package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import dev.fairlead.check.Checked;
import dev.fairlead.picture.demo.ArchSketch;
import dev.fairlead.picture.demo.DemoPicture;
import dev.fairlead.report.Demo;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.pdf.Pdfs;
import dev.fairlead.report.sheet.BenchSheet;
import dev.fairlead.report.sheet.Paper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * The pictures of the README, made anew by {@code mvn test -Dfairlead.pictures=true -Dtest=ReadmePicturesTest}; without
 * that it looks whether they are there and shown.
 */
@ExtendWith(WithBrowser.class)
class ReadmePicturesTest {
    private static final Path PLACE = Path.of("src/pictures");
    private static final String CASE = "snipe-14";
    private static final float DOTS_PER_INCH = 84;

    @TempDir
    Path folder;

    @Test
    void pageSheetAndReportAreShown(Browsing browsing) throws Exception {
        if (Boolean.getBoolean("fairlead.pictures")) {
            Files.createDirectories(PLACE);
            page(browsing);
            measure(browsing);
            Checked checked = Demo.checked(CASE);
            first(ReportPdf.of(List.of(checked), List.of(), false, c -> List.of()), "report.png");
            first(new BenchSheet(checked.catalogue()).pdf(checked, Paper.A4), "sheet.png");
        }
        String readme = Files.readString(Path.of("README.md"));
        for (String name : List.of("page.png", "sheet.png", "report.png", "measure.png")) {
            assertThat(readme).contains("](src/pictures/" + name + ")");
            BufferedImage image = ImageIO.read(PLACE.resolve(name).toFile());
            assertThat(image.getWidth()).isGreaterThan(600);
            assertThat(Files.size(PLACE.resolve(name))).isLessThan(200_000);
        }
    }

    private void page(Browsing browsing) throws IOException {
        Files.copy(Path.of("cases/" + CASE + "-ends-left-long.yaml"), folder.resolve(CASE + ".yaml"));
        try (Pages pages = Pages.over(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions().setViewportSize(1180, 820))) {
            Page page = browsing.open(c, pages, "/cases/" + CASE + ".yaml/chair?q=3");
            page.screenshot(new Page.ScreenshotOptions().setPath(PLACE.resolve("page.png")));
        }
    }

    /** A picture of the program's own, half measured. */
    private void measure(Browsing browsing) throws Exception {
        DemoPicture picture = DemoPicture.arch(ArchSketch.of(MeasurePageTest.demo()));
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext c = browsing.context(new Browser.NewContextOptions().setViewportSize(1180, 820))) {
            Page page = browsing.open(c, pages, "/cases/drawn.json/measure");
            MeasurePageTest.choose(page, picture);
            MeasurePageTest.placeAll(page, picture, 40);
            for (String labial : List.of("L42", "L41", "L31", "L32")) {
                page.click("[data-point=" + labial + "]");
                MeasurePageTest.press(page, picture.points().get(labial), MeasurePageTest.size(picture));
            }
            page.waitForFunction(
                    "() => document.querySelector('#measure-form').textContent.includes('through 8 points')");
            page.evaluate("() => document.querySelector('#measure-desk').scrollIntoView()");
            page.screenshot(new Page.ScreenshotOptions().setPath(PLACE.resolve("measure.png")));
        }
    }

    private static void first(byte[] pdf, String name) throws IOException {
        try (PDDocument document = Pdfs.open(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.RGB);
            ImageIO.write(image, "png", PLACE.resolve(name).toFile());
        }
    }
}
