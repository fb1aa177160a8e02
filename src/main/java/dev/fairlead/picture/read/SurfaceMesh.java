package dev.fairlead.picture.read;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A surface as triangles, mm.
 *
 * @param xyz nine numbers for each triangle
 */
public record SurfaceMesh(float[] xyz) {
    static final int MOST_TRIANGLES = 2_000_000;
    private static final double FARTHEST = 1e4;
    private static final double SMALLEST_ARCH = 30;
    private static final double LARGEST_ARCH = 150;

    public int triangles() {
        return xyz.length / 9;
    }

    /** Longest side of the box around it, mm. */
    public double longest() {
        float[] low = new float[3];
        float[] high = new float[3];
        Arrays.fill(low, Float.MAX_VALUE);
        Arrays.fill(high, -Float.MAX_VALUE);
        for (int i = 0; i < xyz.length; i++) {
            low[i % 3] = Math.min(low[i % 3], xyz[i]);
            high[i % 3] = Math.max(high[i % 3], xyz[i]);
        }
        return Math.max(high[0] - low[0], Math.max(high[1] - low[1], high[2] - low[2]));
    }

    /** What to ask where the size is not that of an arch: these files name no unit. */
    public List<String> doubts() {
        double l = longest();
        return l >= SMALLEST_ARCH && l <= LARGEST_ARCH
                ? List.of()
                : List.of(String.format(
                        java.util.Locale.ROOT,
                        "The scan is %.4g long. These files name no unit and are taken as mm, in which an arch has 30 to"
                                + " 150: look at the unit of the export.",
                        l));
    }

    /** All coordinates as 32-bit numbers, little end first. */
    public byte[] bytes() {
        ByteBuffer out = ByteBuffer.allocate(4 * xyz.length).order(ByteOrder.LITTLE_ENDIAN);
        out.asFloatBuffer().put(xyz);
        return out.array();
    }

    /** Takes in triangles one by one, within bounds. */
    static final class Builder {
        private float[] all = new float[9 * 4096];
        private int n;

        void vertex(double x, double y, double z) throws UnfitFileException {
            if (!(Math.abs(x) <= FARTHEST) || !(Math.abs(y) <= FARTHEST) || !(Math.abs(z) <= FARTHEST)) {
                throw new UnfitFileException(
                        "a scan with a point that lies nowhere, or farther off than 10 m", "Export the scan anew.");
            }
            if (n + 3 > all.length) {
                room(MOST_TRIANGLES + 1L);
                all = Arrays.copyOf(all, (int) Math.min(9L * MOST_TRIANGLES, 2L * all.length));
            }
            all[n++] = (float) x;
            all[n++] = (float) y;
            all[n++] = (float) z;
        }

        private void room(long asked) throws UnfitFileException {
            if (n >= 9L * MOST_TRIANGLES) {
                count(asked);
            }
        }

        static void count(long triangles) throws UnfitFileException {
            if (triangles > MOST_TRIANGLES) {
                throw new UnfitFileException(
                        "a scan of more than 2 million triangles",
                        "Export it with fewer: 200,000 to 500,000 show every contact.");
            }
        }

        Optional<SurfaceMesh> mesh() {
            return n == 0 || n % 9 != 0 ? Optional.empty() : Optional.of(new SurfaceMesh(Arrays.copyOf(all, n)));
        }
    }
}
