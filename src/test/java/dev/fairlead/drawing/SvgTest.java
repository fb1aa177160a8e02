package dev.fairlead.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** Drawings are well-formed and carry their words, read back by the XML parser of the platform. */
class SvgTest {
    @Test
    void wordsAreEscapedAndNumbersKeepTheirPoint() throws Exception {
        String svg = new Svg("a", "Space < need", "5 & 6", 100, 50, "mm")
                .line(Ink.ACCENT, 0.5, 2, List.of(new Svg.At(0, 1.25), new Svg.At(1e-9, -1e-9)))
                .text(Ink.INK, 3, Svg.Anchor.end, 1, 2, "a<b>")
                .done();
        Document d =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(d.getDocumentElement().getAttribute("width")).isEqualTo("100mm");
        assertThat(d.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Space < need");
        assertThat(d.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("a<b>");
        assertThat(((org.w3c.dom.Element) d.getElementsByTagName("polyline").item(0)).getAttribute("points"))
                .isEqualTo("0,1.25 0,0");
    }

    @Test
    void everyRowFitsItsHeadings() {
        assertThatThrownBy(() -> new Picture("a", "t", "d", "<svg/>", List.of("one"), List.of(List.of("1", "2"))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
