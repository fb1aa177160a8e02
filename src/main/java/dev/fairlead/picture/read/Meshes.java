package dev.fairlead.picture.read;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;
import org.jspecify.annotations.Nullable;

/**
 * Reads surface scans, STL (binary or text), PLY and OBJ, within bounds: every count is held against the bytes there
 * are before anything is set aside for it. The content decides what a file is.
 */
public final class Meshes {
    private static final int STL_HEAD = 84;
    private static final int STL_TRIANGLE = 50;
    private static final int LONGEST_LINE = 1000;

    private Meshes() {}

    /** The surface; throws with the reason when it cannot be read. */
    public static SurfaceMesh read(byte[] bytes) throws UnfitFileException {
        if (bytes.length > PictureFiles.MOST_BYTES) {
            throw new UnfitFileException("a scan of more than 100 MB", "Export it with fewer triangles.");
        }
        try {
            SurfaceMesh.Builder out = new SurfaceMesh.Builder();
            if (binaryStl(bytes)) {
                stl(bytes, out);
            } else if (starts(bytes, "ply")) {
                ply(bytes, out);
            } else if (starts(bytes, "solid")) {
                textStl(new Lines(bytes), out);
            } else {
                obj(new Lines(bytes), out);
            }
            return out.mesh()
                    .orElseThrow(() -> new UnfitFileException(
                            "no surface scan that is read: STL, PLY or OBJ with triangles",
                            "Export the scan of the lower model as STL."));
        } catch (NumberFormatException | IndexOutOfBoundsException | BufferUnderflowException e) {
            throw new UnfitFileException("a scan that is damaged", "Export it anew, as binary STL.");
        }
    }

    private static boolean starts(byte[] bytes, String with) {
        return bytes.length > with.length()
                && new String(bytes, 0, with.length(), StandardCharsets.ISO_8859_1).equals(with);
    }

    /** Told by its size: the word solid stands at the start of many binary ones. */
    private static boolean binaryStl(byte[] bytes) throws UnfitFileException {
        if (bytes.length < STL_HEAD) {
            return false;
        }
        long n = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(STL_HEAD - 4) & 0xFFFFFFFFL;
        if (STL_HEAD + STL_TRIANGLE * n == bytes.length) {
            SurfaceMesh.Builder.count(n);
            return n > 0;
        }
        return false;
    }

    private static void stl(byte[] bytes, SurfaceMesh.Builder out) throws UnfitFileException {
        ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = STL_HEAD; at < bytes.length; at += STL_TRIANGLE) {
            for (int v = 12; v < 48; v += 12) {
                out.vertex(in.getFloat(at + v), in.getFloat(at + v + 4), in.getFloat(at + v + 8));
            }
        }
    }

    private static void textStl(Lines lines, SurfaceMesh.Builder out) throws UnfitFileException {
        for (String l; (l = lines.next()) != null; ) {
            String s = l.strip();
            if (s.startsWith("vertex")) {
                double[] v = numbers(s.substring(6), 3);
                out.vertex(v[0], v[1], v[2]);
            }
        }
    }

    private static double[] numbers(String text, int n) {
        StringTokenizer words = new StringTokenizer(text);
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            if (!words.hasMoreTokens()) {
                throw new NumberFormatException(text);
            }
            v[i] = Double.parseDouble(words.nextToken());
        }
        return v;
    }

    // ---- OBJ ----

    private static void obj(Lines lines, SurfaceMesh.Builder out) throws UnfitFileException {
        Points points = new Points();
        for (String l; (l = lines.next()) != null; ) {
            if (l.startsWith("v ")) {
                points.add(numbers(l.substring(2), 3));
            } else if (l.startsWith("f ")) {
                StringTokenizer words = new StringTokenizer(l.substring(2));
                int[] corner = new int[Math.min(64, words.countTokens())];
                for (int i = 0; i < corner.length; i++) {
                    String w = words.nextToken();
                    int at = Integer.parseInt(w.indexOf('/') < 0 ? w : w.substring(0, w.indexOf('/')));
                    corner[i] = at < 0 ? points.size() + at : at - 1;
                }
                points.fan(corner, out);
            }
        }
    }

    /** Points that faces name by their number. */
    private static final class Points {
        private double[] all = new double[3 * 4096];
        private int n;

        int size() {
            return n / 3;
        }

        void add(double... v) throws UnfitFileException {
            if (n + 3 > all.length) {
                SurfaceMesh.Builder.count(n / 3 / 2);
                all = java.util.Arrays.copyOf(all, 2 * all.length);
            }
            System.arraycopy(v, 0, all, n, 3);
            n += 3;
        }

        /** A face of three or more corners as triangles; a corner that is not there throws. */
        void fan(int[] corner, SurfaceMesh.Builder out) throws UnfitFileException {
            for (int i = 1; i + 1 < corner.length; i++) {
                for (int c : new int[] {corner[0], corner[i], corner[i + 1]}) {
                    if (c < 0 || c >= size()) {
                        throw new IndexOutOfBoundsException(c);
                    }
                    out.vertex(all[3 * c], all[3 * c + 1], all[3 * c + 2]);
                }
            }
        }
    }

    // ---- PLY ----

    private record Property(String name, String type, String countType) {}

    private static void ply(byte[] bytes, SurfaceMesh.Builder out) throws UnfitFileException {
        Lines head = new Lines(bytes);
        head.next();
        String format = "";
        long vertices = 0;
        long faces = 0;
        List<Property> ofVertex = new ArrayList<>();
        List<Property> ofFace = new ArrayList<>();
        List<Property> now = new ArrayList<>();
        List<String> order = new ArrayList<>();
        for (String l; (l = head.next()) != null && !l.strip().equals("end_header"); ) {
            String[] w = l.strip().split("\\s+");
            switch (w[0]) {
                case "format" -> format = w[1];
                case "element" -> {
                    order.add(w[1]);
                    boolean vertex = w[1].equals("vertex");
                    long n = Long.parseLong(w[2]);
                    // a row has at least a byte, whatever the head claims
                    if (n < 0 || n > bytes.length) {
                        throw new UnfitFileException("a PLY that claims more than it holds", "Export it anew.");
                    }
                    vertices = vertex ? n : vertices;
                    faces = w[1].equals("face") ? n : faces;
                    now = vertex ? ofVertex : w[1].equals("face") ? ofFace : new ArrayList<>();
                }
                case "property" ->
                    now.add(
                            w[1].equals("list")
                                    ? new Property(w[4], w[3], w[2])
                                    : new Property(w[w.length - 1], w[1], ""));
                default -> {}
            }
        }
        if (order.size() < 2 || !order.get(0).equals("vertex") || !order.get(1).equals("face")) {
            throw new UnfitFileException("a PLY without vertices and faces in this order", "Export it as binary STL.");
        }
        SurfaceMesh.Builder.count(faces);
        Row in = format.equals("ascii")
                ? new TextRow(head)
                : new BinaryRow(bytes, head.at(), format.equals("binary_big_endian"));
        Points points = new Points();
        for (long i = 0; i < vertices; i++) {
            double[] v = new double[3];
            in.begin();
            for (Property p : ofVertex) {
                int c = "xyz".indexOf(p.name());
                double value = in.value(p.type());
                if (c >= 0 && p.name().length() == 1) {
                    v[c] = value;
                }
            }
            points.add(v);
        }
        for (long i = 0; i < faces; i++) {
            in.begin();
            for (Property p : ofFace) {
                if (p.countType().isEmpty()) {
                    in.value(p.type());
                    continue;
                }
                int n = (int) in.value(p.countType());
                if (n < 0 || n > 64) {
                    throw new IndexOutOfBoundsException(n);
                }
                int[] corner = new int[n];
                for (int k = 0; k < n; k++) {
                    corner[k] = (int) in.value(p.type());
                }
                if (p.name().startsWith("vertex_ind")) {
                    points.fan(corner, out);
                }
            }
        }
    }

    /** Reads the values of a row one after another. */
    private interface Row {
        void begin() throws UnfitFileException;

        double value(String type) throws UnfitFileException;
    }

    private static final class TextRow implements Row {
        private final Lines lines;
        private StringTokenizer words = new StringTokenizer("");

        TextRow(Lines lines) {
            this.lines = lines;
        }

        @Override
        public void begin() throws UnfitFileException {
            String l = lines.next();
            if (l == null) {
                throw new BufferUnderflowException();
            }
            words = new StringTokenizer(l);
        }

        @Override
        public double value(String type) {
            if (!words.hasMoreTokens()) {
                throw new BufferUnderflowException();
            }
            return Double.parseDouble(words.nextToken());
        }
    }

    private static final class BinaryRow implements Row {
        private final ByteBuffer in;

        BinaryRow(byte[] bytes, int at, boolean big) {
            in = ByteBuffer.wrap(bytes, at, bytes.length - at)
                    .order(big ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        }

        @Override
        public void begin() {}

        @Override
        public double value(String type) throws UnfitFileException {
            return switch (type) {
                case "char", "int8" -> in.get();
                case "uchar", "uint8" -> in.get() & 0xFF;
                case "short", "int16" -> in.getShort();
                case "ushort", "uint16" -> in.getShort() & 0xFFFF;
                case "int", "int32" -> in.getInt();
                case "uint", "uint32" -> in.getInt() & 0xFFFFFFFFL;
                case "float", "float32" -> in.getFloat();
                case "double", "float64" -> in.getDouble();
                default -> throw new UnfitFileException("a PLY with numbers of an unknown kind", "Export it as STL.");
            };
        }
    }

    /** Lines of a file, none longer than a line of a scan can be. */
    private static final class Lines {
        private final byte[] bytes;
        private int at;

        Lines(byte[] bytes) {
            this.bytes = bytes;
        }

        int at() {
            return at;
        }

        @Nullable
        String next() throws UnfitFileException {
            if (at >= bytes.length) {
                return null;
            }
            int start = at;
            while (at < bytes.length && bytes[at] != '\n') {
                at++;
                if (at - start > LONGEST_LINE) {
                    throw new UnfitFileException(
                            "no surface scan that is read: STL, PLY or OBJ with triangles",
                            "Export the scan of the lower model as STL.");
                }
            }
            String line = new String(bytes, start, at - start, StandardCharsets.ISO_8859_1);
            at++;
            return line;
        }
    }
}
