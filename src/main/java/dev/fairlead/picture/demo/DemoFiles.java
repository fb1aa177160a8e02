package dev.fairlead.picture.demo;

import dev.fairlead.model.Case;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** One demo file of each kind that is measured on, drawn from a case. */
public final class DemoFiles {
    private static final float CROWN = 8;
    private static final int HEADER = 84;
    private static final int TRIANGLE = 50;

    private DemoFiles() {}

    /** Content of all files by name; throws where the case lacks a number that is drawn. */
    public static Map<String, byte[]> of(Case c) {
        Sketch arch = ArchSketch.of(c);
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put("arch.png", DemoPicture.arch(arch).png());
        all.put("film.png", DemoPicture.film(FilmSketch.of(c)).png());
        all.put("arch.stl", stl(arch));
        all.put("arch-points.csv", points(arch).getBytes(StandardCharsets.UTF_8));
        return all;
    }

    private static String points(Sketch arch) {
        StringBuilder out = new StringBuilder("point,x,y,unit\n");
        new TreeMap<>(arch.points())
                .forEach((name, p) -> out.append(String.format(Locale.ROOT, "%s,%.4f,%.4f,mm%n", name, p[0], p[1])));
        return out.toString().replace("\r", "");
    }

    /**
     * Teeth as closed prisms with a domed top, standing on their roots' level; binary STL. The axes are those of a
     * scanner that looks from above: x to the right of the picture, so to the patient's right, y to the front, z up.
     */
    static byte[] stl(Sketch arch) {
        List<float[]> triangles = new ArrayList<>();
        for (Sketch.Outline o : arch.outlines()) {
            prism(o.at(), triangles);
        }
        ByteBuffer out =
                ByteBuffer.allocate(HEADER + TRIANGLE * triangles.size()).order(ByteOrder.LITTLE_ENDIAN);
        out.put("Fairlead demo arch, mm".getBytes(StandardCharsets.US_ASCII));
        out.position(HEADER - 4);
        out.putInt(triangles.size());
        for (float[] t : triangles) {
            out.putFloat(0).putFloat(0).putFloat(0);
            for (float v : t) {
                out.putFloat(v);
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    private static void prism(double[][] outline, List<float[]> to) {
        float mx = 0;
        float my = 0;
        for (double[] p : outline) {
            mx -= (float) p[0] / outline.length;
            my += (float) p[1] / outline.length;
        }
        float top = 0;
        float bottom = -CROWN;
        for (int i = 0; i < outline.length; i++) {
            double[] p = outline[i];
            double[] q = outline[(i + 1) % outline.length];
            float px = (float) -p[0];
            float py = (float) p[1];
            float qx = (float) -q[0];
            float qy = (float) q[1];
            to.add(new float[] {px, py, bottom, px, py, top, qx, qy, top});
            to.add(new float[] {px, py, bottom, qx, qy, top, qx, qy, bottom});
            to.add(new float[] {px, py, top, mx, my, top + 1, qx, qy, top});
            to.add(new float[] {qx, qy, bottom, mx, my, bottom, px, py, bottom});
        }
    }
}
