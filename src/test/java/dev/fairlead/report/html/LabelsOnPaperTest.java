package dev.fairlead.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.report.Demo;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands on paper, labels of pictures too, is set in 7 pt or more, read back from the PDF. */
class LabelsOnPaperTest {
    /** Letters as they stand on the page, in points. */
    private static final class Sizes extends PDFTextStripper {
        private final List<String> small = new ArrayList<>();
        private int letters;

        @Override
        protected void processTextPosition(TextPosition text) {
            letters++;
            if (text.getYScale() < 6.95 && !text.getUnicode().isBlank()) {
                small.add(getCurrentPageNo() + ": " + text.getUnicode() + " " + text.getYScale());
            }
            super.processTextPosition(text);
        }
    }

    private static void allReadable(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Sizes sizes = new Sizes();
            sizes.getText(document);
            assertThat(sizes.letters).isGreaterThan(1000);
            assertThat(sizes.small).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"turnstone-11", "linnet-25", "knot-08"})
    void theLongReportHasNoSmallerLetters(String id) throws IOException {
        allReadable(ReportPdf.of(List.of(Demo.checked(id)), List.of(), false, c -> List.of()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"turnstone-11", "linnet-25"})
    void norHasTheOnePage(String id) throws IOException {
        allReadable(ReportPdf.onePage(List.of(Demo.checked(id)), List.of()));
    }
}
