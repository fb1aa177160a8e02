package dev.fairlead.picture.demo;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.PictureKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Small figures that show where a point lies, of an invented arch and head. */
public final class PointFigures {
    private static final Sketch ARCH;
    private static final Sketch FILM;

    static {
        Case c = invented();
        ARCH = ArchSketch.of(c);
        FILM = FilmSketch.of(c);
    }

    private PointFigures() {}

    /** The figure of a kind of picture. */
    public static Sketch of(PictureKind kind) {
        return switch (kind) {
            case LATERAL_CEPHALOGRAM -> FILM;
            case PANORAMIC -> molars();
            default -> ARCH;
        };
    }

    private static Case invented() {
        try (InputStream in = PointFigures.class.getResourceAsStream("/picture/figure.json")) {
            return CaseReader.read(in.readAllBytes(), "figure.json", CaseFormat.JSON)
                    .value()
                    .orElseThrow(() -> new IllegalStateException("the case behind the figures cannot be read"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** First and second molars as a panoramic film shows them, the patient's left on the right. */
    static Sketch molars() {
        List<Sketch.Outline> outlines = new ArrayList<>();
        Map<String, double[]> at = new TreeMap<>();
        int[][] teeth = {{36, 22, 4}, {37, 36, 14}, {46, -22, -4}, {47, -36, -14}};
        for (int[] t : teeth) {
            double a = Math.toRadians(t[2]);
            double[][] shape = {
                {-5, 7},
                {-2, 8},
                {0, 7},
                {2, 8},
                {5, 7},
                {5.5, 2},
                {4.5, -10},
                {2.5, -11},
                {1, -2},
                {-1, -2},
                {-2.5, -11},
                {-4.5, -10},
                {-5.5, 2}
            };
            double[][] turned = new double[shape.length][];
            for (int i = 0; i < shape.length; i++) {
                turned[i] = turn(shape[i], a, t[1]);
            }
            outlines.add(new Sketch.Outline("tooth", true, FilmSketch.smooth(turned, true)));
            at.put("C" + t[0], turn(new double[] {0, 7}, a, t[1]));
            at.put("F" + t[0], turn(new double[] {0, -2}, a, t[1]));
        }
        return new Sketch(outlines, at);
    }

    private static double[] turn(double[] p, double a, double x) {
        return new double[] {x + p[0] * Math.cos(a) - p[1] * Math.sin(a), p[0] * Math.sin(a) + p[1] * Math.cos(a)};
    }
}
