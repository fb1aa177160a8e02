package dev.fairlead.picture.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** One tetrahedron in every format gives the same triangles; what lies about its size is refused. */
class MeshesTest {
    private static final float[][] CORNER = {{0, 0, 0}, {40, 0, 0}, {0, 50, 0}, {0, 0, 60.5f}};
    private static final int[][] FACE = {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}};

    private static byte[] stl(int claimed, int written, float first) {
        ByteBuffer b = ByteBuffer.allocate(84 + 50 * written).order(ByteOrder.LITTLE_ENDIAN);
        b.put("solid made by a scanner".getBytes(StandardCharsets.US_ASCII));
        b.position(80);
        b.putInt(claimed);
        for (int i = 0; i < written; i++) {
            b.putFloat(0).putFloat(0).putFloat(0);
            for (int c : FACE[i % 4]) {
                for (float v : CORNER[c]) {
                    b.putFloat(i == 0 && v == 50 ? first : v);
                }
            }
            b.putShort((short) 0);
        }
        return b.array();
    }

    private static byte[] text(String s) {
        return s.getBytes(StandardCharsets.US_ASCII);
    }

    private static String textStl() {
        StringBuilder s = new StringBuilder("solid t\n");
        for (int[] f : FACE) {
            s.append(" facet normal 0 0 0\n  outer loop\n");
            for (int c : f) {
                s.append("   vertex ")
                        .append(CORNER[c][0])
                        .append(' ')
                        .append(CORNER[c][1])
                        .append(' ');
                s.append(CORNER[c][2]).append('\n');
            }
            s.append("  endloop\n endfacet\n");
        }
        return s + "endsolid t\n";
    }

    private static String obj() {
        StringBuilder s = new StringBuilder("# a comment\n");
        for (float[] c : CORNER) {
            s.append("v ")
                    .append(c[0])
                    .append(' ')
                    .append(c[1])
                    .append(' ')
                    .append(c[2])
                    .append('\n');
        }
        for (int[] f : FACE) {
            s.append(String.format("f %d/1 %d//2 %d%n", f[0] + 1, f[1] + 1, f[2] + 1));
        }
        return s.toString();
    }

    private static String plyHead(String format) {
        return "ply\nformat " + format + " 1.0\ncomment c\nelement vertex 4\nproperty float x\nproperty float y\n"
                + "property float z\nproperty uchar red\nelement face 4\nproperty list uchar int vertex_indices\n"
                + "end_header\n";
    }

    private static byte[] ply(ByteOrder order) {
        byte[] head = text(plyHead(order == ByteOrder.BIG_ENDIAN ? "binary_big_endian" : "binary_little_endian"));
        ByteBuffer b =
                ByteBuffer.allocate(head.length + 4 * 13 + 4 * 13).put(head).order(order);
        for (float[] c : CORNER) {
            b.putFloat(c[0]).putFloat(c[1]).putFloat(c[2]).put((byte) 200);
        }
        for (int[] f : FACE) {
            b.put((byte) 3).putInt(f[0]).putInt(f[1]).putInt(f[2]);
        }
        return b.array();
    }

    private static byte[] textPly() {
        StringBuilder s = new StringBuilder(plyHead("ascii"));
        for (float[] c : CORNER) {
            s.append(c[0]).append(' ').append(c[1]).append(' ').append(c[2]).append(" 200\n");
        }
        for (int[] f : FACE) {
            s.append("3 ")
                    .append(f[0])
                    .append(' ')
                    .append(f[1])
                    .append(' ')
                    .append(f[2])
                    .append('\n');
        }
        return text(s.toString());
    }

    @Test
    void everyFormatGivesTheSameTriangles() throws Exception {
        float[] expected = Meshes.read(stl(4, 4, 50)).xyz();
        assertThat(expected).hasSize(36).startsWith(0, 0, 0, 0, 50, 0, 40, 0, 0);
        byte[][] others = {
            text(textStl()), text(obj()), ply(ByteOrder.LITTLE_ENDIAN), ply(ByteOrder.BIG_ENDIAN), textPly()
        };
        for (byte[] file : others) {
            assertThat(Meshes.read(file).xyz()).containsExactly(expected);
        }
        SurfaceMesh mesh = Meshes.read(stl(4, 4, 50));
        assertThat(mesh.longest()).isEqualTo(60.5);
        assertThat(mesh.doubts()).isEmpty();
        assertThat(ByteBuffer.wrap(mesh.bytes()).order(ByteOrder.LITTLE_ENDIAN).getFloat(16))
                .isEqualTo(50);
        assertThat(new SurfaceMesh(new float[] {0, 0, 0, 0, 0, 0, 4, 0, 0}).doubts())
                .anyMatch(d -> d.contains("unit"));
    }

    @Test
    void whatLiesAboutItsSizeIsRefusedWithoutSettingMemoryAside() {
        refused(stl(4_000_000, 4, 50), "triangles");
        refused(stl(10_000_000, 4, 50), "triangles");
        refused(stl(-1, 4, 50), "triangles");
        refused(stl(4, 4, Float.NaN), "lies nowhere");
        refused(stl(4, 4, 1e9f), "lies nowhere");
        byte[] ten = Arrays.copyOf(stl(2_000_001, 0, 0), 84 + 50 * 2_000_001);
        refused(ten, "more than 2 million");
        refused(text(plyHead("ascii").replace("vertex 4", "vertex 900000000") + "1 2 3 4\n"), "claims more");
        refused(text(plyHead("ascii") + "1 2 3 4\n"), "damaged");
        refused(text("v 0 0 0\nv 1 0 0\nv 0 1 0\nf 1 2 9\n"), "damaged");
        refused(text("v 0 0 zero\n"), "damaged");
        refused(text("x".repeat(5000)), "no surface scan");
        refused(new byte[0], "no surface scan");
        byte[] half = Arrays.copyOf(ply(ByteOrder.LITTLE_ENDIAN), 240);
        refused(half, "damaged");
    }

    private static void refused(byte[] file, String why) {
        assertThatThrownBy(() -> Meshes.read(file))
                .isInstanceOf(UnfitFileException.class)
                .hasMessageContaining(why);
    }
}
