package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.FilePayload;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.arch.Basis;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.picture.PointGuide;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Choices.PictureScale;
import dev.fairlead.model.Landmark;
import dev.fairlead.model.Measured;
import dev.fairlead.model.PictureReading;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.picture.demo.ArchSketch;
import dev.fairlead.picture.demo.DemoFiles;
import dev.fairlead.picture.demo.DemoPicture;
import dev.fairlead.picture.demo.FilmSketch;
import dev.fairlead.picture.demo.Sketch;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Clicking through demo pictures in a browser finds the numbers of the case that they were drawn of. */
@ExtendWith(WithBrowser.class)
class MeasurePageTest {
    @TempDir
    Path folder;

    static Case demo() throws Exception {
        return CaseReader.read(Path.of("cases/heron-07-clean.yaml")).value().orElseThrow();
    }

    private Case now() throws Exception {
        return CaseReader.read(folder.resolve("drawn.json")).value().orElseThrow();
    }

    /** The demo case without what its pictures show, so that every number has to come from them. */
    private Pages served() throws Exception {
        return served(folder);
    }

    static Pages served(Path folder) throws Exception {
        CaseTree bare = CaseTree.of(demo());
        List.of("/contacts", "/space", "/arch", "/headFilm", "/landmarks").forEach(bare::remove);
        bare.set("/bite/overbite", "");
        bare.set("/bite/overjet", "");
        for (int n : new int[] {42, 41, 31, 32}) {
            bare.set("/hardware/brackets/" + n + "/fromMidline", "");
        }
        Files.writeString(folder.resolve("drawn.json"), bare.text(dev.fairlead.intake.text.CaseFormat.JSON));
        return Pages.withSample(folder);
    }

    static void choose(Page page, DemoPicture picture) {
        page.setInputFiles("#measure-file", new FilePayload("photo.jpg", "image/jpeg", picture.png()));
        page.waitForSelector("#measure-desk:not([hidden])");
        page.waitForFunction("() => document.querySelector('#measure-points [aria-current]')");
    }

    /** Presses where a pixel of the picture is shown. */
    static void press(Page page, double[] at, double[] size) {
        page.evaluate("() => document.querySelector('#measure-canvas').scrollIntoView({ block: 'center' })");
        Map<String, Object> box = rect(page);
        double w = number(box, "width");
        double h = number(box, "height");
        double scale = Math.min(w / size[0], h / size[1]);
        double x = number(box, "x") + (w - size[0] * scale) / 2 + at[0] * scale;
        double y = number(box, "y") + (h - size[1] * scale) / 2 + at[1] * scale;
        if (page.evaluate("() => navigator.maxTouchPoints > 0").equals(true)) {
            page.touchscreen().tap(x, y);
        } else {
            page.mouse().click(x, y);
        }
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> rect(Page page) {
        return (Map<String, Object>)
                page.evaluate(
                        "() => { const r = document.querySelector('#measure-canvas').getBoundingClientRect(); return { x: r.x, y: r.y, width: r.width, height: r.height }; }");
    }

    static double number(Map<String, Object> of, String key) {
        return ((Number) of.get(key)).doubleValue();
    }

    static double[] size(DemoPicture p) throws Exception {
        var image = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(p.png()));
        return new double[] {image.getWidth(), image.getHeight()};
    }

    /** Places every needed point in the order in which the page asks for them; gives their names. */
    static List<String> placeAll(Page page, DemoPicture picture, int most) throws Exception {
        double[] size = size(picture);
        List<String> placed = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            String name = (String)
                    page.evaluate("() => document.querySelector('#measure-points [aria-current]').dataset.point");
            if (placed.contains(name) || !picture.points().containsKey(name)) {
                break;
            }
            press(page, picture.points().get(name), size);
            page.waitForFunction(
                    "n => document.querySelector('[data-point=' + n + ']').classList.contains('placed')", name);
            placed.add(name);
        }
        return placed;
    }

    static void settled(Page page, int values) {
        page.waitForFunction("n => document.querySelectorAll('#measure-values tr').length >= n", values);
    }

    @Test
    void theArchIsFoundAgain(Browsing browsing) throws Exception {
        Case c = demo();
        DemoPicture picture = DemoPicture.arch(ArchSketch.of(c));
        try (Pages pages = served();
                BrowserContext context = browsing.desktop()) {
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            choose(page, picture);
            page.check("#scale-flatbed");
            List<String> placed = placeAll(page, picture, 60);
            assertThat(placed).startsWith("R1", "R2", "M46", "D43").hasSize(2 + 19);
            settled(page, 19);
            assertThat(page.textContent("#measure-form")).contains("optional points");
            for (String labial : List.of("L42", "L41", "L31", "L32")) {
                page.click("[data-point=" + labial + "]");
                press(page, picture.points().get(labial), size(picture));
            }
            page.waitForFunction(
                    "() => document.querySelector('#measure-form').textContent.includes('through 8 points')");
            // a second placing, a pixel or two off, without sight of the first
            page.click("#measure-second");
            List<String> again = placeAll(page, picture, 10);
            assertThat(again).containsExactlyInAnyOrderElementsOf(PointGuide.twice(PictureKind.ARCH_PICTURE));
            page.click("#measure-second-done");
            page.waitForFunction("() => document.querySelector('#measure-error').textContent.includes('Dahlberg')");
            page.check("#take-landmarks");
            page.check("#keep");
            page.click("#measure-take");
            page.waitForFunction("() => document.querySelector('#measure-said').textContent.includes('in the case')");
            Case now = now();
            assertThat(now.pictured()).last().satisfies(r -> {
                assertThat(r.field().get()).isEqualTo("/landmarks");
                assertThat(r.scaleError().value()).isPositive();
                assertThat(r.placedTwice().yes()).isTrue();
            });
            double scale = now.pictured().get(0).scaleError().value() / 100;
            Landmark molar = now.landmarks().stream()
                    .filter(l -> l.tooth().get().number() == 36
                            && l.point().is(dev.fairlead.model.Choices.LandmarkPoint.TUBE))
                    .findFirst()
                    .orElseThrow();
            assertThat(molar.x().sd())
                    .as("the error of this hand and of this picture's scale, not the usual one")
                    .isGreaterThan(scale * molar.x().value())
                    .isLessThan(0.3);
            int n = 0;
            for (PictureReading r : now.pictured().subList(0, now.pictured().size() - 1)) {
                String field = r.field().get();
                Measured was = (Measured) Edit.get(c, field);
                Measured read = (Measured) Edit.get(now, field);
                assertThat(read.value()).as(field).isCloseTo(was.value(), within(3 * r.sd().value() + 0.1));
                assertThat(r.scale().is(PictureScale.KNOWN_LENGTH)).isTrue();
                assertThat(r.date().get()).isEqualTo(Pages.TODAY);
                n++;
            }
            assertThat(n).isEqualTo(5 + 4 + 4);
            assertThat(((Measured) Edit.get(now, "/teeth/42/width")).repeats())
                    .as("what was typed stays, unless it is asked for")
                    .containsExactly(5.8, 5.9);
            assertThat(now.landmarks()).hasSizeGreaterThan(15);
            PatientArch form = PatientArch.of(now);
            assertThat(form.basis())
                    .as("the form goes into the case with the points")
                    .isEqualTo(Basis.LANDMARKS);
            assertThat(form.width().value()).isCloseTo(c.arch().molarWidth().value(), within(0.5));
            try (var kept = Files.list(folder.resolve("drawn.pictures"))) {
                assertThat(kept.map(p -> p.getFileName().toString()))
                        .containsExactly(Pages.TODAY + "-arch-picture-1.jpg");
            }
            browsing.assertQuiet();
        }
    }

    @Test
    void theFilmIsFoundAgainByTouch(Browsing browsing) throws Exception {
        Case c = demo();
        DemoPicture picture = DemoPicture.film(FilmSketch.of(c));
        try (Pages pages = served();
                BrowserContext context = browsing.context(new com.microsoft.playwright.Browser.NewContextOptions()
                        .setViewportSize(820, 1180)
                        .setHasTouch(true))) {
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            page.check("input[value=lateral-cephalogram]");
            page.waitForSelector(
                    "[data-point=S], #measure-points >> text=Sella",
                    new Page.WaitForSelectorOptions()
                            .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED));
            choose(page, picture);
            page.selectOption("#tipping-share", "0.9");
            List<String> placed = placeAll(page, picture, 40);
            assertThat(placed).hasSize(2 + 14);
            settled(page, 8);
            // the labial face is optional, and with it there is an overjet
            page.click("[data-point=L1f]");
            press(page, picture.points().get("L1f"), size(picture));
            page.waitForSelector("[data-field='/bite/overjet']");
            page.click("#measure-take");
            page.waitForFunction("() => document.querySelector('#measure-said').textContent.includes('in the case')");
            Case now = now();
            assertThat(now.pictured()).extracting(r -> r.field().get()).contains("/bite/overbite", "/bite/overjet");
            assertThat(now.pictured()).hasSize(8);
            for (PictureReading r : now.pictured()) {
                Measured was = (Measured) Edit.get(c, r.field().get());
                assertThat(r.value().value()).as(r.field().get()).isCloseTo(was.value(), within(r.sd().value()));
            }
            browsing.assertQuiet();
        }
    }

    /** On the scan the contact points are on the surface: widths and displacements of the case come out again. */
    @Test
    void theScanIsFoundAgain(Browsing browsing) throws Exception {
        Case c = demo();
        Sketch arch = ArchSketch.of(c);
        try (Pages pages = served();
                BrowserContext context = browsing.desktop()) {
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            page.check("input[value=surface-scan]");
            page.waitForFunction("() => document.querySelector('#measure-points .point')");
            Response sent = page.waitForResponse(
                    r -> r.url().endsWith("/measure/scan"),
                    () -> page.setInputFiles(
                            "#measure-file",
                            new FilePayload(
                                    "scan.ply", "model/stl", DemoFiles.of(c).get("arch.stl"))));
            assertThat(sent.headerValue("content-encoding"))
                    .as("packing a large scan takes longer than all the rest")
                    .isNull();
            page.waitForFunction("() => window.measureScan && window.measureScan.built !== undefined");
            for (String name : List.of("M42", "D42", "D41", "M41", "M31", "D31")) {
                page.click("[data-point=" + name + "]");
                double[] p = arch.points().get(name);
                // a little way into the tooth, so that the press meets its top and not the gap beside it
                double[] middle = middle(arch, name);
                double x = -(p[0] + 0.02 * (middle[0] - p[0]));
                double y = p[1] + 0.02 * (middle[1] - p[1]);
                press(page, x, y);
                page.waitForFunction(
                        "n => document.querySelector('[data-point=' + n + ']').classList.contains('placed')", name);
            }
            settled(page, 4);
            for (String field : List.of("/teeth/42/width", "/teeth/41/width", "/contacts/42-41", "/contacts/41-31")) {
                String said = page.textContent("[data-field='" + field + "'] td.number");
                double found = Double.parseDouble(said.substring(0, said.indexOf(' ')));
                assertThat(found).as(field).isCloseTo(((Measured) Edit.get(c, field)).value(), within(0.35));
            }
            assertThat(((Number) page.evaluate("() => window.measureScan.picked")).doubleValue())
                    .as("milliseconds, far above what a pick takes")
                    .isLessThan(100);
            browsing.assertQuiet();
        }
    }

    private static double[] middle(Sketch arch, String point) {
        double[] m = arch.points().get("M" + point.substring(1));
        double[] d = arch.points().get("D" + point.substring(1));
        return new double[] {(m[0] + d[0]) / 2, (m[1] + d[1]) / 2};
    }

    @SuppressWarnings("unchecked")
    private static void press(Page page, double x, double y) {
        Map<String, Object> at = (Map<String, Object>) page.evaluate(
                "p => { const c = document.querySelector('#scan-canvas'); c.scrollIntoView({ block: 'center' }); const r = c.getBoundingClientRect(), s = window.measureScan.seen({ x: p[0], y: p[1], z: 0.5 }); return { x: r.x + s[0] * r.width, y: r.y + s[1] * r.height }; }",
                List.of(x, y));
        page.mouse().click(number(at, "x"), number(at, "y"));
    }

    @Test
    void keysPlaceUndoAndMove(Browsing browsing) throws Exception {
        DemoPicture picture = DemoPicture.arch(ArchSketch.of(demo()));
        try (Pages pages = served();
                BrowserContext context = browsing.desktop()) {
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            choose(page, picture);
            page.focus("#measure-canvas");
            String here = "() => document.querySelector('#measure-points [aria-current]').dataset.point";
            page.keyboard().press("ArrowLeft");
            page.keyboard().press("Enter");
            assertThat(page.evaluate(here)).isEqualTo("R2");
            page.keyboard().press("Shift+ArrowRight");
            page.keyboard().press("Enter");
            assertThat(page.evaluate(here)).isEqualTo("M46");
            page.keyboard().press("Backspace");
            assertThat(page.evaluate(here)).isEqualTo("R2");
            page.keyboard().press("n");
            assertThat(page.evaluate(here)).isEqualTo("M46");
            page.keyboard().press("p");
            page.keyboard().press("p");
            assertThat(page.evaluate(here)).isEqualTo("R1");
            page.keyboard().press("Delete");
            page.waitForFunction("() => !document.querySelector('#measure-points .placed')");
            browsing.assertQuiet();
        }
    }

    @Test
    void whatIsNoPictureIsAnsweredOnThePage(Browsing browsing) throws Exception {
        try (Pages pages = served();
                BrowserContext context = browsing.desktop()) {
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            page.setInputFiles(
                    "#measure-file",
                    new FilePayload("scan.png", "image/png", "not a picture at all".getBytes(StandardCharsets.UTF_8)));
            page.waitForFunction("() => document.querySelector('#measure-said').textContent.includes('neither PNG')");
            assertThat(page.textContent("#measure-said")).contains("Export the picture as PNG");
            assertThat(page.isHidden("#measure-desk")).isTrue();
        }
    }

    /** Clean, and with points, numbers and everything unfolded. */
    @Test
    void nothingStandsInTheWay(Browsing browsing) throws Exception {
        DemoPicture picture = DemoPicture.arch(ArchSketch.of(demo()));
        try (Pages pages = served();
                BrowserContext context = browsing.desktop()) {
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            List<String> faults = new ArrayList<>();
            Axe.look(page, "clean", faults);
            page.setViewportSize(1440, 900);
            choose(page, picture);
            placeAll(page, picture, 8);
            settled(page, 1);
            Axe.look(page, "with numbers", faults);
            assertThat(faults).isEmpty();
        }
    }
}
