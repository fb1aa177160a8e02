package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import dev.fairlead.model.Case;
import dev.fairlead.picture.demo.ArchSketch;
import dev.fairlead.picture.demo.DemoPicture;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** What the hand does on a picture: loupe, moving a point, undo, zoom, covering a name, the four corners of a frame. */
@ExtendWith(WithBrowser.class)
class MeasureHandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    /** The page with a picture of the arch on it, and all that it asks the program for. */
    private record Desk(Page page, DemoPicture picture, double[] size, List<String> sent) {
        static Desk open(Browsing browsing, BrowserContext context, Pages pages) throws Exception {
            DemoPicture picture = DemoPicture.arch(ArchSketch.of(MeasurePageTest.demo()));
            Page page = browsing.open(context, pages, "/cases/drawn.json/measure");
            List<String> sent = new ArrayList<>();
            page.onRequest(r -> {
                if (r.url().endsWith("/measure/numbers")) {
                    sent.add(r.postData());
                }
            });
            MeasurePageTest.choose(page, picture);
            page.evaluate("() => document.querySelector('#measure-canvas').scrollIntoView({ block: 'center' })");
            return new Desk(page, picture, MeasurePageTest.size(picture), sent);
        }

        void place(String name, double... pixel) {
            page.click("[data-point=" + name + "]");
            MeasurePageTest.press(page, pixel, size);
            page.waitForSelector("[data-point=" + name + "].placed");
        }

        /** Where the canvas shows a pixel of the whole picture. */
        double[] shown(double... pixel) {
            Map<String, Object> box = MeasurePageTest.rect(page);
            double w = MeasurePageTest.number(box, "width");
            double h = MeasurePageTest.number(box, "height");
            double scale = Math.min(w / size[0], h / size[1]);
            return new double[] {
                MeasurePageTest.number(box, "x") + (w - size[0] * scale) / 2 + pixel[0] * scale,
                MeasurePageTest.number(box, "y") + (h - size[1] * scale) / 2 + pixel[1] * scale
            };
        }

        void drag(double[] from, double[] to) {
            page.mouse().move(from[0], from[1]);
            page.mouse().down();
            page.mouse().move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
            page.mouse().move(to[0], to[1]);
            page.mouse().up();
        }

        /** A point as it was last sent for its numbers, in pixels of the picture; waits until it is there as told. */
        double[] last(String name, double x) throws Exception {
            double[] at = null;
            for (int i = 0; i < 100; i++) {
                at = sent.isEmpty() ? null : point(sent.get(sent.size() - 1), name);
                if (at != null && Math.abs(at[0] - x) < 6) {
                    return at;
                }
                page.waitForTimeout(50);
            }
            throw new AssertionError(name + " is not at " + x + " but at " + (at == null ? "none" : at[0]));
        }

        private static double[] point(String body, String name) throws Exception {
            for (JsonNode p : JSON.readTree(body).path("points")) {
                if (p.path("name").asText().equals(name)) {
                    return new double[] {p.path("x").asDouble(), p.path("y").asDouble()};
                }
            }
            return null;
        }
    }

    @Test
    void aPointIsDraggedAndTheDragUndone(Browsing browsing) throws Exception {
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext context = browsing.desktop()) {
            Desk d = Desk.open(browsing, context, pages);
            d.place("M42", 600, 400);
            d.last("M42", 600);
            d.drag(d.shown(600, 400), d.shown(760, 480));
            assertThat(d.last("M42", 760)[1]).isCloseTo(480, within(6.0));
            d.page().click("#measure-undo");
            assertThat(d.last("M42", 600)[1]).isCloseTo(400, within(6.0));
            d.page().click("#measure-undo");
            d.page().waitForFunction("() => !document.querySelector('#measure-points .placed')");
            browsing.assertQuiet();
        }
    }

    @Test
    void zoomBringsPixelsNearerAndTheWholePictureBack(Browsing browsing) throws Exception {
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext context = browsing.desktop()) {
            Desk d = Desk.open(browsing, context, pages);
            double middle = d.size()[0] / 2;
            d.page().click("#measure-in");
            // one and a half times as large about the middle: what is pressed 300 pixels off the middle lies 200 off
            d.place("M42", middle - 300, 400);
            d.last("M42", middle - 200);
            d.page().click("#measure-fit");
            d.place("D42", middle - 300, 400);
            d.last("D42", middle - 300);
            // a drag of the picture itself moves what lies under a place
            d.page().click("#measure-in");
            d.drag(d.shown(middle, 500), d.shown(middle + 150, 500));
            d.place("M41", middle, 400);
            d.last("M41", middle - 100);
            browsing.assertQuiet();
        }
    }

    /** Two fingers that draw apart bring the picture nearer; a point is moved by the buttons beside it. */
    @Test
    void fingersZoomAndButtonsMoveAPoint(Browsing browsing) throws Exception {
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext context = browsing.context(new Browser.NewContextOptions()
                        .setViewportSize(820, 1180)
                        .setHasTouch(true))) {
            Desk d = Desk.open(browsing, context, pages);
            double middle = d.size()[0] / 2;
            double[] at = d.shown(middle, d.size()[1] / 2);
            CDPSession hand = context.newCDPSession(d.page());
            touch(hand, "touchStart", at, 60);
            touch(hand, "touchMove", at, 90);
            touch(hand, "touchMove", at, 120);
            hand.send("Input.dispatchTouchEvent", touches("touchEnd"));
            // twice as large about the middle
            d.place("M42", middle - 200, d.size()[1] / 2);
            d.last("M42", middle - 100);
            d.page().click("#measure-fit");
            double scale = Math.min(
                    MeasurePageTest.number(MeasurePageTest.rect(d.page()), "width") / d.size()[0],
                    MeasurePageTest.number(MeasurePageTest.rect(d.page()), "height") / d.size()[1]);
            // once placed, the next point is asked for: the one to be moved is chosen again
            assertThat(d.page().isDisabled("[data-nudge='1 0']")).isTrue();
            d.page().tap("[data-point=M42]");
            for (int i = 0; i < 20; i++) {
                d.page().tap("[data-nudge='1 0']");
            }
            d.last("M42", middle - 100 + 20 / scale);
            browsing.assertQuiet();
        }
    }

    private static void touch(CDPSession hand, String type, double[] at, double apart) {
        hand.send("Input.dispatchTouchEvent", touches(type, new double[] {at[0] - apart / 2, at[1]}, new double[] {
            at[0] + apart / 2, at[1]
        }));
    }

    private static JsonObject touches(String type, double[]... fingers) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        JsonArray points = new JsonArray();
        for (int i = 0; i < fingers.length; i++) {
            JsonObject p = new JsonObject();
            p.addProperty("x", fingers[i][0]);
            p.addProperty("y", fingers[i][1]);
            p.addProperty("id", i);
            points.add(p);
        }
        event.add("touchPoints", points);
        return event;
    }

    @Test
    void theLoupeShowsWhatLiesUnderThePointer(Browsing browsing) throws Exception {
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext context = browsing.desktop()) {
            Desk d = Desk.open(browsing, context, pages);
            double[] end = d.picture().points().get("R1");
            double[] at = d.shown(end);
            d.page().mouse().move(at[0], at[1]);
            d.page().waitForSelector("#measure-loupe:not([hidden])");
            String dark =
                    "() => { const l = document.querySelector('#measure-loupe'), c = Object.assign(document.createElement("
                            + "'canvas'), { width: l.width, height: l.height }).getContext('2d', { willReadFrequently: true });"
                            + " c.drawImage(l, 0, 0); const p = c.getImageData(0, 0, l.width, l.height).data; let n = 0;"
                            + " for (let i = 0; i < p.length; i += 4) n += p[i] < 90 && p[i + 1] < 90 ? 1 : 0; return n; }";
            int onTheRuler = ((Number) d.page().evaluate(dark)).intValue();
            // the loupe stands on the other side of the pointer
            assertThat(d.page().getAttribute("#measure-loupe", "class")).contains("right");
            // near the corner, but not so near that the loupe shows what lies beside the picture
            double[] corner = d.shown(d.size()[0] - 130, 130);
            d.page().mouse().move(corner[0], corner[1]);
            d.page().waitForFunction("() => !document.querySelector('#measure-loupe').classList.contains('right')");
            int onTheGround = ((Number) d.page().evaluate(dark)).intValue();
            assertThat(onTheRuler).as("the ruler is dark, the ground is not").isGreaterThan(onTheGround + 300);
            d.page().mouse().move(2, 2);
            d.page()
                    .waitForSelector(
                            "#measure-loupe[hidden]",
                            new Page.WaitForSelectorOptions()
                                    .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED));
            browsing.assertQuiet();
        }
    }

    /** A name that was covered is not in the picture that is kept. */
    @Test
    void whatIsCoveredIsTakenOutOfTheKeptPicture(Browsing browsing) throws Exception {
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext context = browsing.desktop()) {
            Desk d = Desk.open(browsing, context, pages);
            for (String name : List.of("R1", "R2", "M42", "D41")) {
                d.place(name, d.picture().points().get(name));
            }
            MeasurePageTest.settled(d.page(), 1);
            d.page().click("#measure-cover");
            d.page().evaluate("() => document.querySelector('#measure-canvas').scrollIntoView({ block: 'center' })");
            d.drag(d.shown(40, 60), d.shown(240, 160));
            d.page().waitForSelector("#measure-uncover:not([hidden])");
            d.page().check("#keep");
            d.page().click("#measure-take");
            d.page()
                    .waitForFunction(
                            "() => document.querySelector('#measure-said').textContent.includes('is kept as')");
            Path kept;
            try (var all = Files.list(folder.resolve("drawn.pictures"))) {
                kept = all.findFirst().orElseThrow();
            }
            BufferedImage image = ImageIO.read(kept.toFile());
            assertThat(image.getRGB(140, 110) & 0xFFFFFF).isLessThan(0x101010);
            assertThat((image.getRGB(140, 300) >> 16) & 0xFF).isGreaterThan(0x60);
            browsing.assertQuiet();
        }
    }

    /** Four corners of known size give the same displacement as the ruler does. */
    @Test
    void theCornersOfAFrameGiveTheScale(Browsing browsing) throws Exception {
        Case c = MeasurePageTest.demo();
        try (Pages pages = MeasurePageTest.served(folder);
                BrowserContext context = browsing.desktop()) {
            Desk d = Desk.open(browsing, context, pages);
            d.page().selectOption("#scale-how", "frame");
            double[] a = d.picture().points().get("R1");
            double[] b = d.picture().points().get("R2");
            double perMm = Math.hypot(b[0] - a[0], b[1] - a[1]) / DemoPicture.RULER;
            double w = d.size()[0] - 40;
            double h = d.size()[1] - 40;
            d.page().fill("#scale-width", String.valueOf(w / perMm));
            d.page().fill("#scale-height", String.valueOf(h / perMm));
            d.page().dispatchEvent("#scale-height", "change");
            d.place("K1", 20, 20);
            d.place("K2", 20 + w, 20);
            d.place("K3", 20 + w, 20 + h);
            d.place("K4", 20, 20 + h);
            d.place("M42", d.picture().points().get("M42"));
            d.place("D41", d.picture().points().get("D41"));
            MeasurePageTest.settled(d.page(), 1);
            String said = d.page().textContent("[data-field='/contacts/42-41'] td.number");
            assertThat(Double.parseDouble(said.substring(0, said.indexOf(' '))))
                    .isCloseTo(c.contacts().c4241().value(), within(0.2));
            browsing.assertQuiet();
        }
    }
}
