package dev.fairlead.picture.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.picture.read.ReadPicture.Meaning;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures are decoded within bounds, by their content, and kept without what tells who it is. */
class PictureFilesTest {
    /** 80 × 60 pixels: red upper left, green upper right, blue lower left, white lower right. */
    private static BufferedImage corners() {
        BufferedImage image = new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Color[] all = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
        for (int i = 0; i < 4; i++) {
            g.setColor(all[i]);
            g.fillRect(i % 2 * 40, i / 2 * 30, 40, 30);
        }
        g.dispose();
        return image;
    }

    private static byte[] file(BufferedImage image, String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** A JPEG with an EXIF block that holds an orientation and a camera's owner. */
    private static byte[] exif(byte[] jpeg, int orientation) {
        byte[] owner = "Owner Jane Example\0".getBytes(StandardCharsets.US_ASCII);
        ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 24 + 4 + owner.length).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8).putShort((short) 2);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.putShort((short) 0x9C9D)
                .putShort((short) 2)
                .putInt(owner.length)
                .putInt(38)
                .putInt(0)
                .put(owner);
        byte[] block = tiff.array();
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + block.length + 10);
        out.put(jpeg, 0, 2).put((byte) 0xFF).put((byte) 0xE1).putShort((short) (block.length + 8));
        out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(block).put(jpeg, 2, jpeg.length - 2);
        return out.array();
    }

    private static char colour(BufferedImage image, double x, double y) {
        Color c = new Color(image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight())));
        int bits = (c.getRed() > 128 ? 1 : 0) + (c.getGreen() > 100 ? 2 : 0) + (c.getBlue() > 128 ? 4 : 0);
        return "kRGyBmcW".charAt(bits);
    }

    private static String quarters(BufferedImage i) {
        return "" + colour(i, 0.2, 0.2) + colour(i, 0.8, 0.2) + colour(i, 0.2, 0.8) + colour(i, 0.8, 0.8);
    }

    /** Where the four quarters land by the definition of the eight orientations (JEITA CP-3451). */
    @ParameterizedTest
    @CsvSource({"1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB"})
    void aPhotographIsTurnedAsItsExifSays(int orientation, String expected) throws Exception {
        BufferedImage read =
                PictureFiles.read(exif(file(corners(), "jpeg"), orientation)).image();
        assertThat(quarters(read)).isEqualTo(expected);
    }

    @Test
    void whatIsKeptHasNothingOfTheFileButItsPixels() throws Exception {
        byte[] file = exif(file(corners(), "jpeg"), 1);
        assertThat(new String(file, StandardCharsets.ISO_8859_1)).contains("Jane Example");
        byte[] kept = PictureFiles.jpeg(PictureFiles.read(file).image(), List.of(new int[] {0, 0, 40, 30}));
        String text = new String(kept, StandardCharsets.ISO_8859_1);
        assertThat(text).doesNotContain("Jane", "Exif");
        assertThat(quarters(ImageIO.read(new java.io.ByteArrayInputStream(kept))))
                .as("what was covered is black")
                .isEqualTo("kGBW");
    }

    @Test
    void aNameIsNotTrusted() throws Exception {
        assertThat(FileKind.of(file(corners(), "png"))).isEqualTo(FileKind.PNG);
        assertThat(FileKind.of(file(corners(), "jpeg"))).isEqualTo(FileKind.JPEG);
        assertThat(FileKind.of("<svg onload=x>".getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(FileKind.OTHER);
        assertThatThrownBy(() -> PictureFiles.read(file(corners(), "gif")))
                .isInstanceOf(UnfitFileException.class)
                .hasMessageContaining("neither PNG, JPEG nor DICOM");
    }

    private static byte[] pngHeader(int width, int height) {
        ByteBuffer b = ByteBuffer.allocate(8 + 25 + 12);
        b.put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        byte[] ihdr = ByteBuffer.allocate(17)
                .put(new byte[] {'I', 'H', 'D', 'R'})
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, 2, 0, 0, 0})
                .array();
        CRC32 crc = new CRC32();
        crc.update(ihdr);
        b.putInt(13).put(ihdr).putInt((int) crc.getValue());
        b.putInt(0).put(new byte[] {'I', 'E', 'N', 'D'}).putInt(0xAE426082);
        return b.array();
    }

    @Test
    void aBombIsRefusedBeforeItIsUnpacked() {
        assertThatThrownBy(() -> PictureFiles.read(pngHeader(40_000, 40_000)))
                .isInstanceOf(UnfitFileException.class)
                .hasMessageContaining("64 million");
        assertThatThrownBy(() -> PictureFiles.read(pngHeader(2, 2))).hasMessageContaining("2 × 2 pixels");
        assertThatThrownBy(() -> PictureFiles.read(pngHeader(200, 200))).hasMessageContaining("damaged");
    }

    @Test
    void theHeadAloneTellsWhetherABrowserMayDecode() throws Exception {
        for (boolean beginning : new boolean[] {false, true}) {
            assertThat(PictureFiles.shownByBrowsers(file(corners(), "png"), beginning))
                    .isTrue();
            assertThat(PictureFiles.shownByBrowsers(exif(file(corners(), "jpeg"), 6), beginning))
                    .isTrue();
            assertThat(PictureFiles.shownByBrowsers(dicom("1.2.840.10008.1.2.1"), beginning))
                    .isFalse();
            assertThatThrownBy(() -> PictureFiles.shownByBrowsers(pngHeader(40_000, 40_000), beginning))
                    .as("a bomb of any size, such as one of 1.6 thousand million pixels")
                    .hasMessageContaining("64 million");
            assertThatThrownBy(() -> PictureFiles.shownByBrowsers(pngHeader(10_000, 10_000), beginning))
                    .hasMessageContaining("64 million");
        }
        byte[] cut = Arrays.copyOf(file(corners(), "jpeg"), 5);
        assertThatThrownBy(() -> PictureFiles.shownByBrowsers(cut, false)).hasMessageContaining("damaged");
        assertThat(PictureFiles.shownByBrowsers(cut, true))
                .as("the rest may tell")
                .isFalse();
    }

    @Test
    void decodingThatTakesTooLongIsBrokenOff() throws Exception {
        BufferedImage large = new BufferedImage(6000, 4000, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 4000; y += 3) {
            for (int x = 0; x < 6000; x += 5) {
                large.setRGB(x, y, x * 31 + y * 17);
            }
        }
        var reader = ImageIO.getImageReadersByFormatName("jpeg").next();
        reader.setInput(
                ImageIO.createImageInputStream(new java.io.ByteArrayInputStream(file(large, "jpeg"))), true, true);
        assertThatThrownBy(() -> PictureFiles.inTime(reader, java.time.Duration.ofMillis(1)))
                .isInstanceOf(UnfitFileException.class)
                .hasMessageContaining("takes longer");
        reader.dispose();
    }

    @Test
    void damagedFilesAreToldAsSuch() throws Exception {
        for (byte[] file :
                new byte[][] {file(corners(), "png"), file(corners(), "jpeg"), dicom("1.2.840.10008.1.2.1")}) {
            for (int cut = 1; cut < file.length; cut += Math.max(1, file.length / 60)) {
                byte[] part = Arrays.copyOf(file, cut);
                try {
                    assertThat(PictureFiles.read(part).image()).isNotNull();
                } catch (UnfitFileException e) {
                    assertThat(e.getMessage()).isNotBlank();
                }
            }
        }
    }

    // ---- DICOM ----

    private static final class Writer {
        private final ByteArrayOutputStream out = new ByteArrayOutputStream();
        private final boolean explicit;
        private final ByteOrder order;

        Writer(boolean explicit, ByteOrder order) {
            this.explicit = explicit;
            this.order = order;
        }

        Writer put(int tag, String vr, byte[] value) {
            byte[] even = value.length % 2 == 0 ? value : Arrays.copyOf(value, value.length + 1);
            ByteBuffer b = ByteBuffer.allocate(12 + even.length).order(order);
            b.putShort((short) (tag >>> 16)).putShort((short) tag);
            if (!explicit) {
                b.putInt(even.length);
            } else if (vr.equals("OW")) {
                b.put(vr.getBytes(StandardCharsets.US_ASCII))
                        .putShort((short) 0)
                        .putInt(even.length);
            } else {
                b.put(vr.getBytes(StandardCharsets.US_ASCII)).putShort((short) even.length);
            }
            b.put(even);
            out.write(b.array(), 0, b.position());
            return this;
        }

        Writer text(int tag, String vr, String value) {
            return put(tag, vr, value.getBytes(StandardCharsets.US_ASCII));
        }

        Writer number(int tag, int value) {
            return put(
                    tag,
                    "US",
                    ByteBuffer.allocate(2).order(order).putShort((short) value).array());
        }
    }

    private static byte[] dicom(String syntax, String... more) throws IOException {
        boolean big = syntax.endsWith(".2.2");
        Writer w =
                new Writer(!syntax.equals("1.2.840.10008.1.2"), big ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        w.text(0x00100010, "PN", "Example^Jane");
        w.number(0x00280002, 1).text(0x00280004, "CS", more.length > 0 ? more[0] : "MONOCHROME2");
        w.number(0x00280010, 60).number(0x00280011, 80);
        for (int i = 1; i + 1 < more.length; i += 2) {
            w.text(Integer.parseUnsignedInt(more[i], 16), "DS", more[i + 1]);
        }
        w.number(0x00280100, 16).number(0x00280101, 12).number(0x00280103, 0);
        ByteBuffer pixels =
                ByteBuffer.allocate(80 * 60 * 2).order(big ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < 80 * 60; i++) {
            // a ramp from left to right of twelve bits
            pixels.putShort((short) (i % 80 * 4095 / 79));
        }
        w.put(0x7FE00010, "OW", pixels.array());
        byte[] body = w.out.toByteArray();
        if (syntax.endsWith(".99")) {
            Deflater d = new Deflater(9, true);
            d.setInput(body);
            d.finish();
            byte[] all = new byte[body.length + 100];
            body = Arrays.copyOf(all, d.deflate(all));
            int n = (int) d.getBytesWritten();
            body = Arrays.copyOf(all, n);
            d.end();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(new byte[128]);
        out.write("DICM".getBytes(StandardCharsets.US_ASCII));
        out.write(new Writer(true, ByteOrder.LITTLE_ENDIAN)
                .text(0x00020010, "UI", syntax)
                .out
                .toByteArray());
        out.write(body);
        return out.toByteArray();
    }

    private static int grey(BufferedImage image, int x) {
        return image.getRaster().getSample(x, 30, 0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"1.2.840.10008.1.2", "1.2.840.10008.1.2.1", "1.2.840.10008.1.2.2", "1.2.840.10008.1.2.1.99"})
    void plainTransferSyntaxesGiveTheSamePixels(String syntax) throws Exception {
        BufferedImage image = PictureFiles.read(dicom(syntax)).image();
        assertThat(image.getWidth()).isEqualTo(80);
        for (int x = 0; x < 80; x++) {
            assertThat(grey(image, x)).isBetween(x * 255 / 79 - 1, x * 255 / 79 + 1);
        }
    }

    @Test
    void aFilmThatIsDarkForHighNumbersIsInverted() throws Exception {
        BufferedImage image =
                PictureFiles.read(dicom("1.2.840.10008.1.2.1", "MONOCHROME1")).image();
        assertThat(grey(image, 0)).isEqualTo(255);
        assertThat(grey(image, 79)).isEqualTo(0);
    }

    /** PS3.3, 10.7: what a spacing is of, so that magnification is taken out once and never twice. */
    @Test
    void spacingIsReadAsTheStandardSays() throws Exception {
        String plain = "1.2.840.10008.1.2.1";
        assertThat(PictureFiles.read(dicom(plain)).spacing()).isEmpty();
        var receptor = PictureFiles.read(dicom(plain, "MONOCHROME2", "00181164", "0.15\\0.14"))
                .spacing()
                .orElseThrow();
        assertThat(receptor.meaning()).isEqualTo(Meaning.RECEPTOR);
        assertThat(receptor.row()).isEqualTo(0.15);
        assertThat(receptor.column()).isEqualTo(0.14);
        var both = PictureFiles.read(dicom(plain, "MONOCHROME2", "00181164", "0.15\\0.15", "00280030", "0.15\\0.15"))
                .spacing()
                .orElseThrow();
        assertThat(both.meaning()).isEqualTo(Meaning.RECEPTOR);
        var other = PictureFiles.read(dicom(plain, "MONOCHROME2", "00181164", "0.15\\0.15", "00280030", "0.139\\0.139"))
                .spacing()
                .orElseThrow();
        assertThat(other.meaning()).as("differs from the receptor: corrected").isEqualTo(Meaning.CORRECTED);
        var alone = PictureFiles.read(dicom(plain, "MONOCHROME2", "00280030", "0.15\\0.15"))
                .spacing()
                .orElseThrow();
        assertThat(alone.meaning()).isEqualTo(Meaning.UNKNOWN);
        var magnified = PictureFiles.read(
                        dicom(plain, "MONOCHROME2", "00181110", "1650", "00181111", "1500", "00181164", "0.15\\0.15"))
                .spacing()
                .orElseThrow();
        assertThat(magnified.magnification()).contains(1.1);
    }

    @Test
    void aNameMayBeBurntInAndIsWarnedOf() throws Exception {
        String plain = "1.2.840.10008.1.2.1";
        assertThat(PictureFiles.read(dicom(plain)).warnings()).anyMatch(w -> w.contains("burnt into"));
        assertThat(PictureFiles.read(dicom(plain, "MONOCHROME2", "00280301", "NO"))
                        .warnings())
                .isEmpty();
        byte[] shown = PictureFiles.jpeg(PictureFiles.read(dicom(plain)).image(), List.of());
        assertThat(new String(shown, StandardCharsets.ISO_8859_1)).doesNotContain("Jane");
    }

    /** A frame as DICOM files carry compressed ones: a table of offsets, fragments, an end (PS3.5, A.4). */
    private static byte[] encapsulated(String syntax, byte[] frame) throws IOException {
        Writer w = new Writer(true, ByteOrder.LITTLE_ENDIAN);
        w.number(0x00280002, 1)
                .text(0x00280004, "CS", "MONOCHROME2")
                .number(0x00280010, 60)
                .number(0x00280011, 80);
        w.number(0x00280100, 8).number(0x00280101, 8).number(0x00280103, 0);
        w.text(0x00281050, "DS", "127.5").text(0x00281051, "DS", "255");
        byte[] even = Arrays.copyOf(frame, frame.length + frame.length % 2);
        ByteBuffer b = ByteBuffer.allocate(even.length + 100).order(ByteOrder.LITTLE_ENDIAN);
        b.putShort((short) 0x7FE0)
                .putShort((short) 0x0010)
                .put(new byte[] {'O', 'B', 0, 0})
                .putInt(-1);
        b.putInt(0xE000FFFE)
                .putInt(0)
                .putInt(0xE000FFFE)
                .putInt(even.length / 2 * 2)
                .put(even);
        b.putInt(0xE0DDFFFE).putInt(0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(new byte[128]);
        out.write("DICM".getBytes(StandardCharsets.US_ASCII));
        out.write(new Writer(true, ByteOrder.LITTLE_ENDIAN)
                .text(0x00020010, "UI", syntax)
                .out
                .toByteArray());
        out.write(w.out.toByteArray());
        out.write(b.array(), 0, b.position());
        return out.toByteArray();
    }

    /** Lossless JPEG of eight bits: differences from the pixel to the left, Huffman-coded (ITU-T T.81, annex H). */
    private static byte[] lossless(int[][] pixels) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int h = pixels.length;
        int w = pixels[0].length;
        byte[] head = {
            (byte) 0xFF,
            (byte) 0xD8,
            (byte) 0xFF,
            (byte) 0xC3,
            0,
            11,
            8,
            0,
            (byte) h,
            0,
            (byte) w,
            1,
            1,
            0x11,
            0,
            (byte) 0xFF,
            (byte) 0xC4,
            0,
            28,
            0,
            0,
            0,
            0,
            9,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            0,
            1,
            2,
            3,
            4,
            5,
            6,
            7,
            8,
            (byte) 0xFF,
            (byte) 0xDA,
            0,
            8,
            1,
            1,
            0,
            1,
            0,
            0
        };
        out.writeBytes(head);
        StringBuilder bits = new StringBuilder();
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int before = x > 0 ? pixels[y][x - 1] : y > 0 ? pixels[y - 1][0] : 128;
                int d = pixels[y][x] - before;
                int size = 32 - Integer.numberOfLeadingZeros(Math.abs(d));
                bits.append(binary(size, 4)).append(size == 0 ? "" : binary(d < 0 ? d + (1 << size) - 1 : d, size));
            }
        }
        while (bits.length() % 8 > 0) {
            bits.append('1');
        }
        for (int i = 0; i < bits.length(); i += 8) {
            int b = Integer.parseInt(bits.substring(i, i + 8), 2);
            out.write(b);
            if (b == 0xFF) {
                out.write(0);
            }
        }
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xD9});
        return out.toByteArray();
    }

    private static String binary(int value, int digits) {
        return String.format("%" + digits + "s", Integer.toBinaryString(value)).replace(' ', '0');
    }

    @Test
    void compressedFramesAreDecoded() throws Exception {
        int[][] pixels = new int[60][80];
        BufferedImage grey = new BufferedImage(80, 60, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < 60; y++) {
            for (int x = 0; x < 80; x++) {
                pixels[y][x] = x * 3 + y % 7;
                grey.getRaster().setSample(x, y, 0, pixels[y][x]);
            }
        }
        for (String syntax : List.of("1.2.840.10008.1.2.4.57", "1.2.840.10008.1.2.4.70")) {
            BufferedImage read =
                    PictureFiles.read(encapsulated(syntax, lossless(pixels))).image();
            for (int x = 0; x < 80; x++) {
                assertThat(grey(read, x)).as("without loss").isEqualTo(pixels[30][x]);
            }
        }
        BufferedImage read = PictureFiles.read(encapsulated("1.2.840.10008.1.2.4.50", file(grey, "jpeg")))
                .image();
        assertThat(grey(read, 40)).isBetween(pixels[30][40] - 6, pixels[30][40] + 6);
    }

    @Test
    void whatIsNotDecodedIsAnsweredWithTheWayOut() {
        for (String syntax : List.of("1.2.840.10008.1.2.4.90", "1.2.840.10008.1.2.4.80", "1.2.840.10008.1.2.5")) {
            assertThatThrownBy(() -> PictureFiles.read(dicom(syntax)))
                    .isInstanceOfSatisfying(
                            UnfitFileException.class, e -> assertThat(e.mend()).contains("PNG"));
        }
        assertThatThrownBy(() -> PictureFiles.read(dicom("1.2.840.10008.1.2.1", "MONOCHROME2", "00280008", "12")))
                .hasMessageContaining("12 frames");
    }
}
