package dev.fairlead.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Checked by veraPDF (PDF/A-2a, PDF/UA-1), and by reading and rendering with PDFBox. */
class PdfWriterTest {
    private static final float DPI = 600;
    private static final double MM = 25.4;
    private static final String PAGE = """
            <html lang="en"><head><title>Trial sheet</title><meta name="subject" content="A page to try the writer"/>
            <style>@page { size: 210mm 297mm; margin: 15mm } body { font-family: 'DejaVu Sans'; font-size: 10pt } svg { display: block }</style></head>
            <body><h1>Bogen für Zoë Ångström, čeština, Łódź</h1><p>σ = 32 M / (π d³), 20° ± 0.5 mm, α ≤ β, <b>fett</b></p>
            <svg xmlns="http://www.w3.org/2000/svg" alt="a bar" width="127mm" height="12.7mm" viewBox="0 0 127 12.7">
            <rect x="0" y="0" width="100" height="10" fill="#000000"/></svg></body></html>""";

    @Test
    void keepsWhatPdfAAndPdfUaAsk() {
        byte[] pdf = PdfWriter.pdf(PAGE);
        assertThat(Pdfs.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(Pdfs.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void validatorSeesFaults() {
        assertThat(Pdfs.faults(PdfWriter.pdf(PAGE.replace(" alt=\"a bar\"", "")), PDFAFlavour.PDFUA_1))
                .isNotEmpty();
    }

    @Test
    void embedsItsFontsAndKeepsAccentsAndGreek() throws IOException {
        byte[] pdf = PdfWriter.pdf(PAGE);
        assertThat(Pdfs.fonts(pdf)).containsExactlyInAnyOrder("DejaVuSans", "DejaVuSans-Bold");
        assertThat(Pdfs.text(pdf, 1))
                .contains("für Zoë Ångström, čeština, Łódź")
                .contains("σ = 32 M / (π d³), 20° ± 0.5 mm, α ≤ β");
    }

    @Test
    void samePagesAreSameBytes() throws InterruptedException {
        byte[] first = PdfWriter.pdf(PAGE);
        Thread.sleep(1100);
        assertThat(PdfWriter.pdf(PAGE)).isEqualTo(first);
        assertThat(PdfWriter.pdf(PAGE.replace("Łódź", "Kraków"))).isNotEqualTo(first);
    }

    @Test
    void drawsTrueToSize() throws IOException {
        byte[] pdf = PdfWriter.pdf(PAGE);
        BufferedImage page = Pdfs.print(pdf, 1, DPI);
        int widest = 0;
        for (int y = 0; y < page.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                run = (page.getRGB(x, y) & 0xff) < 128 ? run + 1 : 0;
                widest = Math.max(widest, run);
            }
        }
        assertThat(widest / DPI * MM).isBetween(99.9, 100.1);
        try (PDDocument document = Pdfs.open(pdf)) {
            assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * MM).isBetween(209.9, 210.1);
        }
    }

    @Test
    void fetchesNothingAndSaysWhatItDidNotUnderstand() {
        List<String> warnings = new ArrayList<>();
        PdfWriter.pdf(
                PAGE.replace(
                        "<p>", "<p style=\"no-such-property: 1\"><img src=\"http://127.0.0.1:1/x.png\" alt=\"none\"/>"),
                warnings::add);
        assertThat(warnings).anyMatch(w -> w.contains("no-such-property")).anyMatch(w -> w.contains("127.0.0.1"));
    }

    @Test
    void roundsUpToWholePixels() {
        assertThat(PdfWriter.wholePixels(25.4)).isCloseTo(25.4, within(1e-9));
        assertThat(PdfWriter.wholePixels(100) / 25.4 * 96).isCloseTo(378, within(1e-9));
    }

    @Test
    void refusesWhatIsNoXhtml() {
        assertThatThrownBy(() -> PdfWriter.pdf("<html><body><p>open</body></html>"))
                .isInstanceOf(RuntimeException.class);
    }
}
