package dev.fairlead.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.zip.CRC32;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Writes XHTML as PDF/A-2a, tagged for readers (PDF/UA-1), with DejaVu Sans embedded; the same XHTML gives the same
 * bytes.
 *
 * <p>The layout knows CSS 2.1 and paged media, neither flex nor grid. The root needs {@code lang} and a title, and an
 * svg a title or an {@code alt}; a {@code <meta name="subject">} becomes the description. Letters within an svg become
 * outlines, so what is to be found by search stands in the text too. An svg is drawn to whole pixels of 1/96 inch: one
 * that is to be true to size takes sizes from {@link #wholePixels}. Nothing is fetched: only data: addresses are read.
 */
public final class PdfWriter {
    /**
     * The family that style sheets name; other families fall back to faces that are not embedded, which PDF/A forbids.
     */
    public static final String FAMILY = "DejaVu Sans";

    /** Plain and bold. */
    public static final int FACES = 2;

    private static final Set<FSFontUseCase> USES =
            EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG, FSFontUseCase.FALLBACK_FINAL);
    private static final double PIXEL = 25.4 / 96;
    private static final int PLAIN = 400;
    private static final int BOLD = 700;
    private static final byte[] REGULAR_FACE = font("DejaVuSans.ttf");
    private static final byte[] BOLD_FACE = font("DejaVuSans-Bold.ttf");

    static {
        // no window is ever opened: without this, drawing would look for a display where one is named and not there
        System.setProperty("java.awt.headless", System.getProperty("java.awt.headless", "true"));
        XRLog.setLoggerImpl(new Quiet());
    }

    private PdfWriter() {}

    /** What the library finds comes through the consumer of its caller; a log of its own would go to standard error. */
    private static final class Quiet implements XRLogger {
        @Override
        public void log(String where, Level level, String message) {}

        @Override
        public void log(String where, Level level, String message, Throwable cause) {}

        @Override
        public void setLevel(String logger, Level level) {}

        @Override
        public boolean isLogLevelEnabled(Diagnostic diagnostic) {
            return diagnostic.getLevel().intValue() >= Level.WARNING.intValue();
        }
    }

    /** The least length of whole pixels of 1/96 inch that is at least so many mm, in mm. */
    public static double wholePixels(double mm) {
        return Math.ceil(mm / PIXEL - 1e-9) * PIXEL;
    }

    /** The pages as PDF. */
    public static byte[] pdf(String xhtml) {
        return pdf(xhtml, warning -> {});
    }

    /** The pages as PDF; {@code warnings} hears what the layout did not understand. */
    public static byte[] pdf(String xhtml, Consumer<String> warnings) {
        List<String> severe = new ArrayList<>();
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .usePdfUaAccessibility(true)
                .usePdfAConformance(PdfAConformance.PDFA_2_A)
                .useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData())
                .withProducer("Fairlead");
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useFont(() -> new ByteArrayInputStream(REGULAR_FACE), FAMILY, PLAIN, FontStyle.NORMAL, true, USES);
        builder.useFont(() -> new ByteArrayInputStream(BOLD_FACE), FAMILY, BOLD, FontStyle.NORMAL, true, USES);
        builder.useExternalResourceAccessControl(
                (uri, type) -> uri.startsWith("data:"), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withDiagnosticConsumer(d -> tell(d, severe, warnings));
        builder.addDOMMutator(PdfWriter::nameDrawings);
        builder.withHtmlContent(xhtml, null);
        byte[] bytes;
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            bytes = save(renderer.getPdfDocument(), xhtml);
        } catch (IOException e) {
            throw new IllegalStateException("the pages could not be written as PDF", e);
        }
        if (!severe.isEmpty()) {
            throw new IllegalStateException("the pages could not be laid out: " + String.join("; ", severe));
        }
        return bytes;
    }

    /** The library reads what stands for a drawing from {@code alt} alone; ours say it in title and desc. */
    private static void nameDrawings(Document document) {
        NodeList drawings = document.getElementsByTagName("svg");
        for (int i = 0; i < drawings.getLength(); i++) {
            Element svg = (Element) drawings.item(i);
            NodeList titles = svg.getElementsByTagName("title");
            NodeList descriptions = svg.getElementsByTagName("desc");
            if (svg.getAttribute("alt").isEmpty() && titles.getLength() > 0) {
                svg.setAttribute(
                        "alt",
                        titles.item(0).getTextContent()
                                + (descriptions.getLength() > 0
                                        ? ". " + descriptions.item(0).getTextContent()
                                        : ""));
            }
        }
    }

    private static void tell(Diagnostic d, List<String> severe, Consumer<String> warnings) {
        if (d.getLevel().intValue() >= Level.SEVERE.intValue()) {
            severe.add(d.getFormattedMessage());
        } else if (d.getLevel().intValue() >= Level.WARNING.intValue()) {
            warnings.accept(d.getFormattedMessage());
        }
    }

    /** Without the moment of writing, and with an identity made of the content, so that equal pages are equal bytes. */
    private static byte[] save(PDDocument document, String xhtml) throws IOException {
        document.getDocumentInformation().getCOSObject().removeItem(COSName.CREATION_DATE);
        String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
        document.getDocumentCatalog()
                .getMetadata()
                .importXMPMetadata(xmp.replaceAll("\\s*<xmp:CreateDate>[^<]*</xmp:CreateDate>", "")
                        .getBytes(StandardCharsets.UTF_8));
        CRC32 identity = new CRC32();
        identity.update(xhtml.getBytes(StandardCharsets.UTF_8));
        document.setDocumentId(identity.getValue());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        document.close();
        return out.toByteArray();
    }

    /** Names of the faces that a file of ours brings along, sorted. */
    public static Set<String> embedded(byte[] pdf) throws IOException {
        Set<String> names = new TreeSet<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    if (font.isEmbedded()) {
                        // a face that is brought in part has a mark of six letters before its name
                        names.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
                    }
                }
            }
        }
        return names;
    }

    private static byte[] font(String name) {
        try (InputStream in = PdfWriter.class.getResourceAsStream("/fonts/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("a font of the program cannot be read: " + name, e);
        }
    }
}
