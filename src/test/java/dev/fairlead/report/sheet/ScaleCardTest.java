package dev.fairlead.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The frame that a photograph's scale is taken from is true to size, and fits on its page. */
class ScaleCardTest {
    @ParameterizedTest
    @EnumSource(Paper.class)
    void theWindowIsEightyMillimetres(Paper paper) {
        String svg = ScaleCard.svg(paper);
        Matcher m = Pattern.compile("points=\"([^\"]+)\"|d=\"(M[^\"]+)\"").matcher(svg);
        List<double[]> bars = new ArrayList<>();
        while (m.find()) {
            double[] v = Pattern.compile("-?\\d+(\\.\\d+)?")
                    .matcher(m.group(1) == null ? m.group(2) : m.group(1))
                    .results()
                    .mapToDouble(r -> Double.parseDouble(r.group()))
                    .toArray();
            double left = Double.MAX_VALUE;
            double right = 0;
            double top = Double.MAX_VALUE;
            double bottom = 0;
            for (int i = 0; i + 1 < v.length; i += 2) {
                left = Math.min(left, v[i]);
                right = Math.max(right, v[i]);
                top = Math.min(top, v[i + 1]);
                bottom = Math.max(bottom, v[i + 1]);
            }
            bars.add(new double[] {left, right, top, bottom});
        }
        List<double[]> frame =
                bars.stream().filter(b -> b[1] - b[0] > 8 && b[3] - b[2] > 8).toList();
        assertThat(frame).hasSize(4);
        // above, below, left, right: what lies between the inner edges is the window
        assertThat(frame.get(1)[2] - frame.get(0)[3]).isCloseTo(80, within(0.02));
        assertThat(frame.get(3)[0] - frame.get(2)[1]).isCloseTo(80, within(0.02));
        assertThat(frame).allSatisfy(b -> assertThat(b[1]).isLessThan(paper.width()));
    }

    @Test
    void itIsOnePageOfThePaper() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(ScaleCard.pdf(Paper.A4))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(pdf.getPage(0).getMediaBox().getWidth() / 72 * 25.4).isCloseTo(210, within(0.1));
        }
    }
}
