package dev.fairlead.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Finding;
import dev.fairlead.report.Demo;
import dev.fairlead.report.pdf.PdfWriter;
import dev.fairlead.report.pdf.Pdfs;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The report as PDF, read back by PDFBox and judged by veraPDF (PDF/A-2a, PDF/UA-1). */
class ReportPdfTest {
    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0]+", "");
    }

    private static String all(byte[] pdf) throws IOException {
        try (PDDocument document = Pdfs.open(pdf)) {
            StringBuilder text = new StringBuilder();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                text.append(Pdfs.text(pdf, page));
            }
            return text.toString();
        }
    }

    @Test
    void tellsEveryFindingAndKeepsTheStandards() throws IOException {
        Checked checked = Demo.checked("avocet-03");
        List<String> misread = new ArrayList<>();
        byte[] pdf = PdfWriter.pdf(ReportPdf.pages(List.of(checked), List.of(), true), misread::add);
        assertThat(misread).isEmpty();
        assertThat(Pdfs.faults(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(Pdfs.faults(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
        assertThat(Pdfs.fonts(pdf)).containsExactlyInAnyOrder("DejaVuSans", "DejaVuSans-Bold");
        String text = squeezed(all(pdf));
        for (Finding f : checked.report().findings().all()) {
            assertThat(text).as(f.id()).contains(squeezed(f.warns() ? f.seen() : f.title()));
        }
        checked.report().workings().forEach(w -> assertThat(text).contains(squeezed(w.title())));
        assertThat(text).contains(squeezed(checked.report().caution()));
    }

    @Test
    void theSummaryFillsTheFirstPageAndEveryPageNamesCaseAndNumber() throws IOException {
        for (String id : List.of("avocet-03", "turnstone-11", "knot-08")) {
            byte[] pdf = ReportPdf.of(Demo.checked(id));
            try (PDDocument document = Pdfs.open(pdf)) {
                int pages = document.getNumberOfPages();
                assertThat(pages).as(id).isBetween(5, 40);
                for (int page = 1; page <= pages; page++) {
                    assertThat(Pdfs.text(pdf, page)).contains("case " + id, page + " / " + pages);
                }
                assertThat(Pdfs.text(pdf, 1)).contains("Key numbers", "What decides", "no permission");
                assertThat(Pdfs.text(pdf, 2)).as(id).startsWith("case " + id + " 2 / " + pages + System.lineSeparator() + "Records");
            }
        }
    }
}
