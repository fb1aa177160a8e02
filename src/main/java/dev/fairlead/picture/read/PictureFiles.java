package dev.fairlead.picture.read;

import com.twelvemonkeys.imageio.plugins.jpeg.JPEGImageReaderSpi;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.spi.IIORegistry;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Decodes PNG, JPEG and single-frame DICOM within bounds, one at a time, turned as EXIF says; and writes a picture anew
 * without anything but its pixels.
 */
public final class PictureFiles {
    /** Largest file that is taken. */
    public static final int MOST_BYTES = 100 << 20;

    static final long MOST_PIXELS = 64_000_000;
    private static final int SMALLEST_SIDE = 50;
    private static final float QUALITY = 0.92f;
    /** Decoding takes up to 200 MB: two at once are not wanted. */
    private static final Semaphore ONE = new Semaphore(1);

    private static final Duration LONGEST = Duration.ofSeconds(15);
    private static final ScheduledExecutorService WATCH = Executors.newSingleThreadScheduledExecutor(r -> {
        Thread t = new Thread(r, "decoding time");
        t.setDaemon(true);
        return t;
    });

    private PictureFiles() {}

    /** Decodes a picture; throws with the reason when it is none that can be measured on. */
    public static ReadPicture read(byte[] bytes) throws UnfitFileException {
        if (bytes.length > MOST_BYTES) {
            throw new UnfitFileException("a picture of more than 100 MB", "Export it smaller, as JPEG.");
        }
        FileKind kind = FileKind.of(bytes);
        try {
            if (!ONE.tryAcquire(20, TimeUnit.SECONDS)) {
                throw new UnfitFileException("another picture that is still being read", "Try again in a moment.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new UnfitFileException("a picture whose reading was broken off", "Try again.");
        }
        try {
            return switch (kind) {
                case PNG -> new ReadPicture(decode(bytes, "png"), Optional.empty(), List.of());
                case JPEG ->
                    new ReadPicture(
                            turned(decode(bytes, "jpeg"), Exif.orientation(bytes)), Optional.empty(), List.of());
                case DICOM -> new Dicom(bytes).read();
                case OTHER ->
                    throw new UnfitFileException(
                            "neither PNG, JPEG nor DICOM", "Export the picture as PNG, or as JPEG of good quality.");
            };
        } catch (OutOfMemoryError e) {
            throw new UnfitFileException("a picture too large for the memory there is", "Export it smaller.");
        } finally {
            ONE.release();
        }
    }

    static void bounded(long width, long height) throws UnfitFileException {
        if (width < SMALLEST_SIDE || height < SMALLEST_SIDE) {
            throw new UnfitFileException(
                    "a picture of " + width + " × " + height + " pixels", "It is too small to be measured on.");
        }
        if (width * height > MOST_PIXELS || width > 60_000 || height > 60_000) {
            throw new UnfitFileException(
                    "a picture of " + width + " × " + height + " pixels, more than 64 million",
                    "Export it smaller: 12 million pixels are plenty.");
        }
    }

    private static BufferedImage decode(byte[] bytes, String format) throws UnfitFileException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            // metadata is passed over: a compressed text in it can be a bomb of its own
            reader.setInput(in, true, true);
            bounded(reader.getWidth(0), reader.getHeight(0));
            return plain(inTime(reader, LONGEST));
        } catch (IOException | RuntimeException e) {
            throw damaged(format.toUpperCase(Locale.ROOT));
        } finally {
            reader.dispose();
        }
    }

    /**
     * True for a PNG or JPEG whose head tells a size within bounds: a browser decodes these by itself, and turns them
     * as EXIF says.
     *
     * @param beginning true where these are only the first bytes of a file, which may not reach to its size
     */
    public static boolean shownByBrowsers(byte[] bytes, boolean beginning) throws UnfitFileException {
        FileKind kind = FileKind.of(bytes);
        if (kind != FileKind.PNG && kind != FileKind.JPEG) {
            return false;
        }
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind.name().toLowerCase(Locale.ROOT))
                .next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            bounded(reader.getWidth(0), reader.getHeight(0));
            return true;
        } catch (IOException | RuntimeException e) {
            if (beginning) {
                return false;
            }
            throw damaged(kind.name());
        } finally {
            reader.dispose();
        }
    }

    private static UnfitFileException damaged(String format) {
        return new UnfitFileException(
                "a " + format + " that is damaged or of a kind that is not read",
                "Open it in a viewer of pictures and export it as PNG.");
    }

    /** One frame of JPEG as DICOM files carry it, lossless ones among them. */
    static BufferedImage jpeg(byte[] bytes) throws IOException, UnfitFileException {
        // only the provider that is registered knows the reader for plain JPEG that it builds on
        ImageReader reader = IIORegistry.getDefaultInstance()
                .getServiceProviderByClass(JPEGImageReaderSpi.class)
                .createReaderInstance();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in, true, true);
            bounded(reader.getWidth(0), reader.getHeight(0));
            return inTime(reader, LONGEST);
        } finally {
            reader.dispose();
        }
    }

    /** The first picture, unless it takes longer than any that is fit to be measured on. */
    static BufferedImage inTime(ImageReader reader, Duration longest) throws IOException, UnfitFileException {
        AtomicBoolean late = new AtomicBoolean();
        ScheduledFuture<?> watch = WATCH.schedule(
                () -> {
                    late.set(true);
                    reader.abort();
                },
                longest.toMillis(),
                TimeUnit.MILLISECONDS);
        try {
            BufferedImage image = reader.read(0);
            if (late.get()) {
                throw new UnfitFileException(
                        "a picture that takes longer than " + longest.toSeconds() + " seconds to decode",
                        "Export it smaller, as JPEG.");
            }
            return image;
        } finally {
            watch.cancel(false);
        }
    }

    private static BufferedImage plain(BufferedImage image) {
        if (image.getType() == BufferedImage.TYPE_INT_RGB || image.getType() == BufferedImage.TYPE_BYTE_GRAY) {
            return image;
        }
        BufferedImage rgb = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = rgb.createGraphics();
        g.drawImage(image, 0, 0, java.awt.Color.WHITE, null);
        g.dispose();
        return rgb;
    }

    /** Turns and mirrors a picture as the eight orientations of EXIF ask (JEITA CP-3451, tag 0x0112). */
    static BufferedImage turned(BufferedImage image, int orientation) {
        int w = image.getWidth();
        int h = image.getHeight();
        AffineTransform t = switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, w);
            default -> null;
        };
        if (t == null) {
            return image;
        }
        BufferedImage out = orientation < 5
                ? new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB)
                : new BufferedImage(h, w, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.drawImage(image, t, null);
        g.dispose();
        return out;
    }

    /**
     * The picture as JPEG, with nothing of the file that it came from but the pixels.
     *
     * @param covers rectangles to black out, x, y, width, height in pixels: the pixels below are gone
     */
    public static byte[] jpeg(BufferedImage image, List<int[]> covers) {
        BufferedImage shown = image;
        if (!covers.isEmpty() || image.getType() == BufferedImage.TYPE_USHORT_GRAY) {
            shown = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D g = shown.createGraphics();
            g.drawImage(image, 0, 0, null);
            g.setColor(java.awt.Color.BLACK);
            covers.forEach(c -> g.fillRect(c[0], c[1], c[2], c[3]));
            g.dispose();
        }
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
        try (ImageOutputStream to = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.setOutput(to);
            writer.write(null, new IIOImage(shown, new ArrayList<>(), null), how);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("writing to memory cannot fail", e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
