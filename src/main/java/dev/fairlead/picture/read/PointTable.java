package dev.fairlead.picture.read;

import dev.fairlead.measure.picture.PlacedPoint;
import dev.fairlead.measure.picture.PointGuide;
import dev.fairlead.model.Choices.PictureKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Named points in mm as they were read from a table: x to the patient's left, y to the front, z up.
 *
 * @param kind what the points are of, by their names: an arch, a lateral cephalogram or a panoramic film
 * @param remarks what was left out, and why
 */
public record PointTable(PictureKind kind, List<PlacedPoint> points, List<String> remarks) {
    /** So many points at the most. */
    static final int MOST = 1000;

    private static final Pattern OF_A_TOOTH = Pattern.compile("[MDLTBE][1-8][1-8]");
    private static final Map<String, String> NAMES = names();

    public PointTable {
        points = List.copyOf(points);
        remarks = List.copyOf(remarks);
    }

    private static Map<String, String> names() {
        Map<String, String> all = new HashMap<>();
        for (PictureKind kind : PictureKind.values()) {
            PointGuide.of(kind).forEach(p -> all.put(p.name().toLowerCase(Locale.ROOT), p.name()));
        }
        return all;
    }

    /** The name as formulas use it; null when it is none of theirs. */
    static @Nullable String name(String written) {
        String bare = written.strip().replaceAll("[\\s_-]+", "");
        String known = NAMES.get(bare.toLowerCase(Locale.ROOT));
        String upper = bare.toUpperCase(Locale.ROOT);
        return known != null ? known : OF_A_TOOTH.matcher(upper).matches() ? upper : null;
    }

    /** Collects points of one table; what bears no known name, or a name twice, is left out with a remark. */
    static final class Collector {
        private final Map<String, PlacedPoint> points = new LinkedHashMap<>();
        private final List<String> remarks = new ArrayList<>();
        private int seen;

        void add(String written, int line, double x, double y, double z) throws UnfitFileException {
            if (++seen > MOST) {
                throw new UnfitFileException(
                        "more than " + MOST + " points", "Export only the points that are measured on.");
            }
            String name = name(written);
            if (name == null) {
                remark(line, "a point whose name is not among those that are measured on");
            } else if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z) || beyond(x, y, z)) {
                throw new UnfitFileException(
                        "point " + name + (line > 0 ? " in line " + line : "")
                                + " has no place within 10 m, or none at all",
                        "Coordinates are numbers of mm.");
            } else if (points.putIfAbsent(name, new PlacedPoint(name, x, y, z)) != null) {
                throw new UnfitFileException(
                        "point " + name + " stands there twice", "Keep one of the two, or measure in two tables.");
            }
        }

        private static boolean beyond(double x, double y, double z) {
            return Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z))) > 1e4;
        }

        void remark(int line, String what) {
            remarks.add((line > 0 ? "line " + line + ": " : "") + what + "; left out");
        }

        PointTable table() throws UnfitFileException {
            if (points.isEmpty()) {
                throw new UnfitFileException(
                        "no point with a name that is measured on",
                        "Name points as measure --points lists them, such as M42 for the mesial contact of 42.");
            }
            return new PointTable(kind(), List.copyOf(points.values()), remarks);
        }

        private PictureKind kind() {
            long film = count(PictureKind.LATERAL_CEPHALOGRAM);
            long panoramic = count(PictureKind.PANORAMIC);
            long arch = points.size() - film - panoramic;
            return film > arch && film >= panoramic
                    ? PictureKind.LATERAL_CEPHALOGRAM
                    : panoramic > arch ? PictureKind.PANORAMIC : PictureKind.POINT_TABLE;
        }

        private long count(PictureKind kind) {
            return PointGuide.of(kind).stream()
                    .filter(p -> points.containsKey(p.name()))
                    .count();
        }
    }
}
