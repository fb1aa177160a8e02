package dev.fairlead.report.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The paths that one page of a PDF strokes or fills, in mm of the paper from its lower left corner. */
public final class Strokes extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    /** One path: its corners, and the extent of them. */
    public record Path(List<Point2D> points) {
        public double left() {
            return points.stream().mapToDouble(Point2D::getX).min().orElseThrow();
        }

        public double right() {
            return points.stream().mapToDouble(Point2D::getX).max().orElseThrow();
        }

        public double bottom() {
            return points.stream().mapToDouble(Point2D::getY).min().orElseThrow();
        }

        public double top() {
            return points.stream().mapToDouble(Point2D::getY).max().orElseThrow();
        }

        public double width() {
            return right() - left();
        }

        public double height() {
            return top() - bottom();
        }
    }

    private final List<Path> paths = new ArrayList<>();
    private List<Point2D> current = new ArrayList<>();

    private Strokes(PDPage page) {
        super(page);
    }

    /** All paths of a page, from 1. */
    public static List<Path> of(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Pdfs.open(pdf)) {
            Strokes strokes = new Strokes(document.getPage(page - 1));
            strokes.processPage(document.getPage(page - 1));
            return List.copyOf(strokes.paths);
        }
    }

    private void add(double x, double y) {
        // the engine hands corners over with the page's transformation already in them
        current.add(new Point2D.Double(x * MM, y * MM));
    }

    private void done() {
        if (!current.isEmpty()) {
            paths.add(new Path(current));
        }
        current = new ArrayList<>();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        for (Point2D p : new Point2D[] {p0, p1, p2, p3}) {
            add(p.getX(), p.getY());
        }
    }

    @Override
    public void moveTo(float x, float y) {
        add(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        add(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        add(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return current.isEmpty()
                ? new Point2D.Float()
                : new Point2D.Double(
                        current.get(current.size() - 1).getX() / MM,
                        current.get(current.size() - 1).getY() / MM);
    }

    @Override
    public void closePath() {}

    @Override
    public void endPath() {
        current = new ArrayList<>();
    }

    @Override
    public void strokePath() {
        done();
    }

    @Override
    public void fillPath(int windingRule) {
        done();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        done();
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void shadingFill(COSName shadingName) {}

    @Override
    public void drawImage(PDImage image) {}
}
