package dev.fairlead.picture.read;

import dev.fairlead.picture.read.ReadPicture.Meaning;
import dev.fairlead.picture.read.ReadPicture.PixelSpacing;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.jspecify.annotations.Nullable;

/**
 * A single-frame grey picture of a DICOM file (PS3.5, PS3.10): of its elements only those on a short list are looked
 * at, so that nothing of the patient is ever read. Plain, deflated and JPEG (baseline and lossless) transfer syntaxes.
 */
final class Dicom {
    private static final int ROWS = 0x00280010;
    private static final int COLUMNS = 0x00280011;
    private static final int PIXELS = 0x7FE00010;
    private static final int INTERPRETATION = 0x00280004;
    private static final int SPACING = 0x00280030;
    private static final int RECEPTOR_SPACING = 0x00181164;
    private static final int CALIBRATION = 0x00280A02;
    private static final int BURNT_IN = 0x00280301;
    private static final int MAGNIFICATION = 0x00181114;
    private static final int SOURCE_TO_RECEPTOR = 0x00181110;
    private static final int SOURCE_TO_PATIENT = 0x00181111;
    /** All that is looked at; people, places, dates and numbers of the patient are not among it. */
    private static final Set<Integer> KNOWN = Set.of(
            ROWS,
            COLUMNS,
            INTERPRETATION,
            SPACING,
            RECEPTOR_SPACING,
            CALIBRATION,
            BURNT_IN,
            MAGNIFICATION,
            SOURCE_TO_RECEPTOR,
            SOURCE_TO_PATIENT,
            0x00280002,
            0x00280008,
            0x00280100,
            0x00280101,
            0x00280103,
            0x00281050,
            0x00281051,
            PIXELS);

    private static final Set<String> LONG =
            Set.of("OB", "OW", "OF", "OD", "OL", "OV", "SQ", "UC", "UR", "UT", "UN", "SV", "UV");
    private static final String AS_PNG = "Export it as PNG from the program of the X-ray unit.";
    private static final int MOST_INFLATED = 200 << 20;
    private static final int DEEPEST = 8;

    private final byte[] bytes;
    private final Map<Integer, ByteBuffer> found = new HashMap<>();
    private ByteBuffer in = ByteBuffer.allocate(0);
    private boolean explicit = true;
    private @Nullable List<byte[]> fragments;

    Dicom(byte[] bytes) {
        this.bytes = bytes;
    }

    ReadPicture read() throws UnfitFileException {
        try {
            String syntax = begin();
            elements(in.limit(), 0, true);
            bounded();
            BufferedImage image = syntax.startsWith("1.2.840.10008.1.2.4.") ? compressed() : plain();
            return new ReadPicture(image, spacing(), burntIn());
        } catch (IOException | RuntimeException e) {
            throw new UnfitFileException("a DICOM file that is damaged or of a kind that is not read", AS_PNG);
        }
    }

    /** Reads the file's own head, and says how the rest is written. */
    private String begin() throws IOException, UnfitFileException {
        in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        in.position(132);
        String syntax = "";
        while (in.remaining() > 8 && in.getShort(in.position()) == 2) {
            int tag = tag();
            ByteBuffer value = value(length());
            if (tag == 0x00020010) {
                syntax = text(value);
            }
        }
        switch (syntax) {
            case "1.2.840.10008.1.2" -> explicit = false;
            case "1.2.840.10008.1.2.1" -> {}
            case "1.2.840.10008.1.2.2" -> in.order(ByteOrder.BIG_ENDIAN);
            case "1.2.840.10008.1.2.1.99" -> inflate();
            case "1.2.840.10008.1.2.4.50", "1.2.840.10008.1.2.4.57", "1.2.840.10008.1.2.4.70" -> {}
            default -> throw new UnfitFileException("a DICOM file whose compression is not read", AS_PNG);
        }
        return syntax;
    }

    private void inflate() throws IOException {
        Inflater raw = new Inflater(true);
        try (InflaterInputStream data =
                new InflaterInputStream(new ByteArrayInputStream(bytes, in.position(), in.remaining()), raw)) {
            byte[] all = data.readNBytes(MOST_INFLATED);
            in = ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN);
        } finally {
            raw.end();
        }
    }

    private int tag() {
        int group = in.getShort() & 0xFFFF;
        return group << 16 | in.getShort() & 0xFFFF;
    }

    /** Length of the value that follows; -1 where it is not told. */
    private int length() {
        if (!explicit) {
            return in.getInt();
        }
        String vr = "" + (char) in.get() + (char) in.get();
        if (LONG.contains(vr)) {
            in.getShort();
            return in.getInt();
        }
        return in.getShort() & 0xFFFF;
    }

    private ByteBuffer value(int length) {
        ByteBuffer v = in.slice(in.position(), length).order(in.order());
        in.position(in.position() + length);
        return v;
    }

    private void elements(int end, int depth, boolean top) throws UnfitFileException {
        while (in.position() + 8 <= end) {
            int tag = tag();
            if (tag == 0xFFFEE00D || tag == 0xFFFEE0DD) {
                in.getInt();
                return;
            }
            int length = tag == 0xFFFEE000 ? in.getInt() : length();
            if (top && tag == PIXELS && length == -1) {
                encapsulated();
                return;
            }
            if (length == -1) {
                if (depth > DEEPEST) {
                    throw new UnfitFileException("a DICOM file with sequences within sequences", AS_PNG);
                }
                elements(end, depth + 1, false);
            } else {
                ByteBuffer v = value(length);
                if (top && KNOWN.contains(tag)) {
                    found.put(tag, v);
                }
            }
        }
    }

    private void encapsulated() {
        fragments = new ArrayList<>();
        while (in.remaining() >= 8 && tag() == 0xFFFEE000) {
            ByteBuffer v = value(in.getInt());
            byte[] b = new byte[v.remaining()];
            v.get(b);
            fragments.add(b);
        }
    }

    private void bounded() throws UnfitFileException {
        int frames = found.containsKey(0x00280008) ? (int) number(0x00280008) : 1;
        if (frames > 1) {
            throw new UnfitFileException("a DICOM file with " + frames + " frames", "A single picture is measured on.");
        }
        if (!found.containsKey(ROWS) || !found.containsKey(COLUMNS)) {
            throw new UnfitFileException("a DICOM file without a picture", AS_PNG);
        }
        PictureFiles.bounded(whole(COLUMNS), whole(ROWS));
    }

    private ByteBuffer stated(int tag) {
        return Objects.requireNonNull(found.get(tag));
    }

    private int whole(int tag) {
        return stated(tag).getShort(0) & 0xFFFF;
    }

    private int whole(int tag, int otherwise) {
        return found.containsKey(tag) ? whole(tag) : otherwise;
    }

    private static String text(ByteBuffer v) {
        return StandardCharsets.US_ASCII
                .decode(v.duplicate())
                .toString()
                .replace("\0", "")
                .strip();
    }

    private double number(int tag) {
        return Double.parseDouble(text(stated(tag)).split("\\\\")[0].strip());
    }

    // ---- pixels ----

    private BufferedImage plain() throws UnfitFileException {
        int samples = whole(0x00280002, 1);
        int bits = whole(0x00280100, 8);
        ByteBuffer pixels = found.get(PIXELS);
        int n = whole(ROWS) * whole(COLUMNS);
        if (samples != 1 || bits != 8 && bits != 16) {
            throw new UnfitFileException("a DICOM file that is not a grey film of 8 to 16 bits", AS_PNG);
        }
        if (pixels == null || pixels.remaining() < n * (bits / 8)) {
            throw new UnfitFileException("a DICOM file that ends before its picture does", AS_PNG);
        }
        int stored = whole(0x00280101, bits);
        boolean signed = whole(0x00280103, 0) == 1;
        int[] values = new int[n];
        for (int i = 0; i < n; i++) {
            int raw = bits == 8 ? pixels.get(i) & 0xFF : pixels.getShort(2 * i) & 0xFFFF;
            int kept = raw & (1 << stored) - 1;
            values[i] = signed && kept >= 1 << stored - 1 ? kept - (1 << stored) : kept;
        }
        return grey(values);
    }

    private BufferedImage compressed() throws IOException, UnfitFileException {
        if (fragments == null || fragments.size() < 2) {
            throw new UnfitFileException("a DICOM file without a picture", AS_PNG);
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        // the first item is a table of offsets
        for (byte[] f : fragments.subList(1, fragments.size())) {
            all.writeBytes(f);
        }
        BufferedImage image = PictureFiles.jpeg(all.toByteArray());
        Raster raster = image.getRaster();
        if (image.getWidth() != whole(COLUMNS) || image.getHeight() != whole(ROWS) || raster.getNumBands() != 1) {
            throw new UnfitFileException("a DICOM file whose picture is not what it says, or in colour", AS_PNG);
        }
        return grey(raster.getSamples(0, 0, image.getWidth(), image.getHeight(), 0, (int[]) null));
    }

    /** Stretched between the darkest and lightest of the middle 99.8 %, or to the window that the file names. */
    private BufferedImage grey(int[] values) {
        int w = whole(COLUMNS);
        int h = whole(ROWS);
        double low;
        double high;
        if (found.containsKey(0x00281050) && found.containsKey(0x00281051) && number(0x00281051) > 1) {
            low = number(0x00281050) - number(0x00281051) / 2;
            high = low + number(0x00281051);
        } else {
            int[] sorted = values.clone();
            java.util.Arrays.sort(sorted);
            low = sorted[sorted.length / 1000];
            high = Math.max(low + 1, sorted[sorted.length - 1 - sorted.length / 1000]);
        }
        boolean inverted = found.containsKey(INTERPRETATION)
                && text(found.get(INTERPRETATION)).equals("MONOCHROME1");
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        int[] line = new int[w];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int g = (int) Math.round(255 * (values[y * w + x] - low) / (high - low));
                int bounded = Math.max(0, Math.min(255, g));
                line[x] = inverted ? 255 - bounded : bounded;
            }
            image.getRaster().setSamples(0, y, w, 1, 0, line);
        }
        return image;
    }

    // ---- spacing and what is burnt in ----

    private Optional<PixelSpacing> spacing() {
        double[] receptor = pair(RECEPTOR_SPACING);
        double[] pixel = pair(SPACING);
        Optional<Double> magnification = magnification();
        if (pixel != null) {
            boolean calibrated = found.containsKey(CALIBRATION)
                            && !text(found.get(CALIBRATION)).isEmpty()
                    || receptor != null && Math.abs(receptor[0] / pixel[0] - 1) > 1e-4;
            Meaning meaning = calibrated ? Meaning.CORRECTED : receptor != null ? Meaning.RECEPTOR : Meaning.UNKNOWN;
            return Optional.of(new PixelSpacing(pixel[0], pixel[1], meaning, magnification));
        }
        return receptor == null
                ? Optional.empty()
                : Optional.of(new PixelSpacing(receptor[0], receptor[1], Meaning.RECEPTOR, magnification));
    }

    private double @Nullable [] pair(int tag) {
        if (!found.containsKey(tag)) {
            return null;
        }
        String[] parts = text(found.get(tag)).split("\\\\");
        if (parts.length != 2) {
            return null;
        }
        double row = Double.parseDouble(parts[0].strip());
        double column = Double.parseDouble(parts[1].strip());
        return row > 0.001 && row < 5 && column > 0.001 && column < 5 ? new double[] {row, column} : null;
    }

    private Optional<Double> magnification() {
        double m = found.containsKey(MAGNIFICATION)
                ? number(MAGNIFICATION)
                : found.containsKey(SOURCE_TO_RECEPTOR) && found.containsKey(SOURCE_TO_PATIENT)
                        ? number(SOURCE_TO_RECEPTOR) / number(SOURCE_TO_PATIENT)
                        : Double.NaN;
        return m >= 1 && m <= 1.4 ? Optional.of(m) : Optional.empty();
    }

    private List<String> burntIn() {
        boolean none = found.containsKey(BURNT_IN) && text(found.get(BURNT_IN)).equals("NO");
        return none
                ? List.of()
                : List.of("The file does not say that no name is burnt into the picture: look, and cover it.");
    }
}
