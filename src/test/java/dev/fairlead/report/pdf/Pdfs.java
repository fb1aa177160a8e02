package dev.fairlead.report.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Reads PDFs by means that did not write them: a text stripper, a renderer and a validator of the standards. */
public final class Pdfs {
    private Pdfs() {}

    /** Clauses of PDF/A-2a or PDF/UA-1 that the file offends, by veraPDF. */
    public static List<String> faults(byte[] pdf, PDFAFlavour flavour) {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
                    .map(a -> a.getRuleId().getClause() + " " + a.getMessage() + " "
                            + a.getLocation().getContext())
                    .distinct()
                    .toList();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    public static PDDocument open(byte[] pdf) throws IOException {
        return Loader.loadPDF(pdf);
    }

    /** The text of one page, from 1, as a reader would copy it. */
    public static String text(byte[] pdf, int page) throws IOException {
        try (PDDocument document = open(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document);
        }
    }

    /** Names of the fonts, each with a star when it is not embedded. */
    public static Set<String> fonts(byte[] pdf) throws IOException {
        Set<String> names = new TreeSet<>();
        try (PDDocument document = open(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    names.add(font.getName().replaceFirst("^[A-Z]{6}\\+", "") + (font.isEmbedded() ? "" : "*"));
                }
            }
        }
        return names;
    }

    /** One page, from 1, as it would be printed at so many dots per inch. */
    public static BufferedImage print(byte[] pdf, int page, float dpi) throws IOException {
        try (PDDocument document = open(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(page - 1, dpi);
        }
    }
}
