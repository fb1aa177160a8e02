package dev.fairlead.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.drawing.Picture;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** Pictures of the wire: there when the facts are, each with its numbers beside it. */
class WirePicturesTest {
    private static Case read(String name) throws IOException {
        Path file = Path.of("cases", name + ".yaml");
        return CaseReader.read(Files.readAllBytes(file), file.toString(), CaseFormat.BY_NAME)
                .value()
                .orElseThrow();
    }

    @Test
    void drawsWhatIsKnown() throws Exception {
        Case c = read("heron-07-clean");
        for (Optional<Picture> picture : List.of(WirePicture.of(c), FoldPicture.of(c), LoadPicture.of(c))) {
            Picture p = picture.orElseThrow();
            var root = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(p.svg())))
                    .getDocumentElement();
            assertThat(root.getTagName()).isEqualTo("svg");
            assertThat(root.getElementsByTagName("title").item(0).getTextContent())
                    .isEqualTo(p.title());
            assertThat(p.svg()).doesNotContain("NaN", "Infinity");
            assertThat(p.rows()).isNotEmpty();
        }
    }

    @Test
    void forceFallsToNothingWithinItsBand() throws IOException {
        Picture load = LoadPicture.of(read("heron-07-clean")).orElseThrow();
        assertThat(load.rows().get(0).get(0)).isEqualTo("0.0 mm");
        assertThat(load.rows().get(0).get(3)).isEqualTo("176 gf to 334 gf");
        assertThat(load.rows().get(load.rows().size() - 1))
                .containsExactly("1.0 mm", "0 gf (0.00 N)", "0 gf (0.00 N)", "0 gf to 0 gf");
    }

    @Test
    void isEmptyWhenFactsAreMissing() throws IOException {
        Case c = read("knot-08-half-missing");
        assertThat(WirePicture.of(c)).isPresent();
        assertThat(WirePicture.of(c).orElseThrow().rows())
                .anySatisfy(row -> assertThat(row).containsExactly("first bend", "unknown", "unknown"));
        assertThat(FoldPicture.of(c)).isEmpty();
        assertThat(LoadPicture.of(c)).isEmpty();
    }
}
