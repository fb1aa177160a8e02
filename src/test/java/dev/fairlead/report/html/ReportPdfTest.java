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
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The report as PDF, read back by PDFBox and judged by veraPDF (PDF/A-2a, PDF/UA-1). */
class ReportPdfTest {
    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0]+", "");
    }

    /** The text of every page, as a reader would copy it. */
    private static List<String> pages(byte[] pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Pdfs.open(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        }
        return pages;
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
        String text = squeezed(String.join("", pages(pdf)));
        for (Finding f : checked.report().findings().all()) {
            assertThat(text).as(f.id()).contains(squeezed(f.warns() ? f.seen() : f.title()));
        }
        // what is not known of later stages is left out of the long report
        checked.report().workings().stream()
                .filter(w -> w.value().known())
                .forEach(w -> assertThat(text).contains(squeezed(w.title())));
        assertThat(text).contains(squeezed(checked.report().caution()));
    }

    @Test
    void theSummaryFillsTheFirstPageAndEveryPageNamesCaseAndNumber() throws IOException {
        for (String id : List.of("avocet-03", "turnstone-11", "knot-08")) {
            List<String> pages = pages(ReportPdf.of(List.of(Demo.checked(id)), List.of(), false, c -> List.of()));
            assertThat(pages).as(id).hasSizeBetween(5, 40);
            for (int page = 1; page <= pages.size(); page++) {
                assertThat(pages.get(page - 1)).contains("case " + id, page + " / " + pages.size());
                assertThat(pages.get(page - 1).split("\\s+"))
                        .as("words on page " + page + " of " + id)
                        .hasSizeGreaterThan(50);
            }
            assertThat(pages.get(0)).contains("Key numbers", "What decides", "not permission");
            assertThat(pages.get(1))
                    .as(id)
                    .startsWith("case " + id + " 2 / " + pages.size() + System.lineSeparator() + "Records");
        }
    }
}
