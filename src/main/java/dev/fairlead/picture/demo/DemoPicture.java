package dev.fairlead.picture.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * A drawn picture, and where its named points lie in it.
 *
 * @param points x and y in pixels, among them {@code R1} and {@code R2}, the ends of the known length
 */
public record DemoPicture(byte[] png, Map<String, double[]> points) {
    /** Length of the ruler in the picture of the arch and of the one in the film, mm. */
    public static final double RULER = 40;

    private static final double ARCH_SCALE = 20;
    private static final double FILM_SCALE = 6;
    private static final double EDGE = 8;

    /** The arch from above, front up, so that the patient's left lies on the left; a ruler lies behind the molars. */
    public static DemoPicture arch(Sketch sketch) {
        return draw(sketch, ARCH_SCALE, true, new Color(0xB9A58E), new Color(0xF4EBDD), new Color(0x3B2A1D));
    }

    /** A lateral cephalogram as outlines, light on dark, with a ruler in it. */
    public static DemoPicture film(Sketch sketch) {
        return draw(sketch, FILM_SCALE, false, new Color(0x15191D), new Color(0x7E8A93), new Color(0xE8EDF0));
    }

    private static DemoPicture draw(
            Sketch sketch, double scale, boolean fromAbove, Color ground, Color fill, Color ink) {
        double[] b = sketch.bounds();
        double below = 14;
        int width = (int) Math.ceil((b[2] + 2 * EDGE) * scale);
        int height = (int) Math.ceil((b[3] + 2 * EDGE + below) * scale);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(ground);
        g.fillRect(0, 0, width, height);
        double left = fromAbove ? b[0] + b[2] + EDGE : b[0] - EDGE;
        double top = b[1] + b[3] + EDGE;
        double sx = fromAbove ? -scale : scale;
        for (Sketch.Outline o : sketch.outlines()) {
            Path2D path = new Path2D.Double();
            for (double[] p : o.at()) {
                double x = (p[0] - left) * sx;
                double y = (top - p[1]) * scale;
                if (path.getCurrentPoint() == null) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            if (o.closed()) {
                path.closePath();
                g.setColor(fill);
                g.fill(path);
            }
            g.setColor(ink);
            g.setStroke(new BasicStroke(
                    (float) (scale * (o.tone().equals("soft") ? 0.12 : 0.2)),
                    BasicStroke.CAP_ROUND,
                    BasicStroke.JOIN_ROUND));
            g.draw(path);
        }
        Map<String, double[]> at = new TreeMap<>();
        sketch.points().forEach((n, p) -> at.put(n, new double[] {(p[0] - left) * sx, (top - p[1]) * scale}));
        ruler(g, width / 2.0 - RULER / 2 * scale, height - 9 * scale, scale, ink, at);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return new DemoPicture(out.toByteArray(), Map.copyOf(at));
    }

    private static void ruler(Graphics2D g, double x, double y, double scale, Color ink, Map<String, double[]> at) {
        g.setColor(ink);
        g.setStroke(new BasicStroke((float) (0.08 * scale)));
        g.draw(new Line2D.Double(x, y, x + RULER * scale, y));
        for (int mm = 0; mm <= RULER; mm++) {
            double tick = mm % 10 == 0 ? 3 : mm % 5 == 0 ? 2 : 1.2;
            g.draw(new Line2D.Double(x + mm * scale, y, x + mm * scale, y + tick * scale));
        }
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, (int) (2.4 * scale)));
        for (int mm = 0; mm <= RULER; mm += 10) {
            String text = Integer.toString(mm);
            g.drawString(text, (float) (x + mm * scale - g.getFontMetrics().stringWidth(text) / 2.0), (float)
                    (y + 6 * scale));
        }
        at.put("R1", new double[] {x, y});
        at.put("R2", new double[] {x + RULER * scale, y});
    }
}
