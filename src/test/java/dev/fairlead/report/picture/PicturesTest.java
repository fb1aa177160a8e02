package dev.fairlead.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.drawing.Picture;
import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.model.Side;
import dev.fairlead.report.Demo;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** What is drawn is what was worked out: lengths are read back from the drawing and held against the numbers. */
class PicturesTest {
    static List<Path> files() throws IOException {
        return Demo.files();
    }

    private static Document parsed(Picture p) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(p.svg())));
    }

    private static List<Element> all(Document d, String name) {
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < d.getElementsByTagName(name).getLength(); i++) {
            found.add((Element) d.getElementsByTagName(name).item(i));
        }
        return found;
    }

    private static double number(Element e, String attribute) {
        return Double.parseDouble(e.getAttribute(attribute));
    }

    @ParameterizedTest
    @MethodSource("files")
    void nothingIsDrawnOutsideItsFrameAndWordsStandBesideIt(Path file) throws Exception {
        Checked checked = Demo.checked(file);
        for (Drawing drawing : List.of(
                ArchPicture.of(checked),
                SpacePicture.of(checked),
                PositionPicture.of(checked),
                ForecastPicture.of(checked),
                RepeatPicture.of(checked.report().repeats()))) {
            if (drawing.picture().isEmpty()) {
                assertThat(drawing.idle() || !drawing.missing().isEmpty()).isTrue();
                continue;
            }
            Picture p = drawing.picture().get();
            Document d = parsed(p);
            String[] box = d.getDocumentElement().getAttribute("viewBox").split(" ");
            for (Element line : all(d, "polyline")) {
                for (String point : line.getAttribute("points").split(" ")) {
                    String[] xy = point.split(",");
                    assertThat(Double.parseDouble(xy[0])).as(p.id()).isBetween(0.0, Double.parseDouble(box[2]));
                    assertThat(Double.parseDouble(xy[1])).as(p.id()).isBetween(0.0, Double.parseDouble(box[3]));
                }
            }
            assertThat(p.rows()).isNotEmpty();
            assertThat(p.description()).isNotBlank();
            assertThat(p.svg()).doesNotContain("style=", "<style", "NaN", "Infinity");
        }
    }

    @Test
    void barsOfRoomAndNeedAreToOneScale() throws Exception {
        Checked checked = Demo.checked("avocet-03");
        List<Element> bars = all(parsed(SpacePicture.of(checked).picture().orElseThrow()), "rect");
        SideSpace right = checked.worked().space().right();
        double scale = number(bars.get(0), "width") / right.required().value();
        assertThat(number(bars.get(1), "width") / scale)
                .isCloseTo(right.required().value() - right.shortage().value(), within(0.01));
        assertThat(number(bars.get(2), "width") / scale)
                .isCloseTo(checked.worked().space().left().required().value(), within(0.01));
    }

    @Test
    void canineAndPremolarsRunIntoTheMolarByWhatTheSideLacks() throws Exception {
        for (String id : List.of("avocet-03", "tern-12")) {
            Checked checked = Demo.checked(id);
            for (Side side : Side.values()) {
                SideSpace s = checked.worked().space().side(side);
                LaidTeeth laid = LaidTeeth.of(checked.subject(), s);
                assertThat(laid.end() - laid.molar()).isCloseTo(s.shortage().value(), within(1e-9));
                assertThat(laid.end() - laid.teeth().get(1).to())
                        .as("need of canine and premolars")
                        .isCloseTo(s.required().value(), within(1e-9));
            }
        }
    }

    @Test
    void limitsAreThoseInForce(@TempDir Path site) throws IOException {
        Files.writeString(
                site.resolve("thresholds.json"),
                "{\"incisor-inclination-after.caution\": 93.5, \"incisor-to-a-pog-after.max\": 2.1}");
        Rulebase rules = Rulebase.load(site);
        Picture p = PositionPicture.of(Demo.checked(new Checker(rules), Demo.text("heron-07"), "heron.yaml"))
                .picture()
                .orElseThrow();
        assertThat(p.rows().get(0).get(5)).isEqualTo("at most 93.5°; stop beyond 100.0°");
        assertThat(p.rows().get(2).get(5)).isEqualTo("at most 2.1 mm");
        assertThat(p.svg()).contains(">93.5°<", ">2.1<");
    }

    @Test
    void whatIsMissingForAPictureIsNamed() throws IOException {
        Checked checked = Demo.checked(
                Demo.text("heron-07").replaceFirst("(?m)^arch:.*$", "").replaceFirst("(?m)^landmarks:.*$", ""),
                "bare.yaml");
        Drawing arch = ArchPicture.of(checked);
        assertThat(arch.picture()).isEmpty();
        assertThat(arch.missing()).extracting(m -> m.pointer()).contains("/arch/molarWidth", "/arch/molarDepth");
    }

    @Test
    void theForecastStartsFromTheReadingAndHoldsTheNeed() throws IOException {
        Checked checked = Demo.checked("turnstone-11");
        Picture p = ForecastPicture.of(checked).picture().orElseThrow();
        double read = checked.subject().visits().get(2).right().space().value();
        assertThat(p.rows())
                .anySatisfy(row -> assertThat(row)
                        .startsWith(
                                "right",
                                "now, "
                                        + checked.subject()
                                                .visits()
                                                .get(2)
                                                .date()
                                                .get(),
                                dev.fairlead.findings.Numbers.plain(read, 1) + " mm measured"));
    }
}
