package dev.fairlead.audit.source;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.intake.text.CaseFormat;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Reads the cases of a zip archive without unpacking it to disk, so that names of entries lead nowhere. An archive that
 * unpacks to far more than its own size is refused in the middle, whatever its directory says.
 */
final class Archive {
    /** A case of JSON packs to about a seventh, many alike to a fortieth; beyond this it is no archive of cases. */
    private static final long MOST_RATIO = 200;

    private static final long ALWAYS_ALLOWED = 16 << 20;
    private static final int MOST_ENTRIES = 2_000_000;

    private final TableOptions tables;
    /** What all entries together may still unpack to: each alone may keep to its own budget, and they be many. */
    private long left;

    Archive(TableOptions tables) {
        this.tables = tables;
    }

    void read(Path file, String source, long before, Consumer<Item> sink) throws IOException {
        long reached = before;
        try (ZipFile zip = new ZipFile(file.toFile())) {
            if (zip.size() > MOST_ENTRIES) {
                throw new ZipException("more than " + MOST_ENTRIES + " entries");
            }
            List<? extends ZipEntry> entries = zip.stream()
                    .filter(e -> !e.isDirectory())
                    .sorted(Comparator.comparing(ZipEntry::getName))
                    .toList();
            left = Math.max(4 * ALWAYS_ALLOWED, MOST_RATIO * Files.size(file));
            boolean any = false;
            for (ZipEntry e : entries) {
                String name = source + "!" + FileNames.shown(e.getName());
                reached += Math.max(0, e.getCompressedSize());
                any |= entry(zip, e, name, reached, sink);
            }
            if (!any) {
                sink.accept(
                        new Item(source, new Item.Trouble("no entry of the archive holds cases by its name"), reached));
            }
        } catch (ZipException e) {
            sink.accept(new Item(
                    source,
                    new Item.Trouble("no zip archive, or one that is cut short or damaged (" + Sources.why(e) + ")"),
                    before));
        }
    }

    /** False when the entry holds no cases by its name. */
    private boolean entry(ZipFile zip, ZipEntry e, String name, long reached, Consumer<Item> sink) {
        String last = e.getName()
                .substring(Math.max(e.getName().lastIndexOf('/'), e.getName().lastIndexOf('\\')) + 1);
        FileNames.Kind kind = FileNames.kind(last);
        if (kind == FileNames.Kind.OTHER || last.startsWith(".") || CohortFiles.holdsTruth(last)) {
            return false;
        }
        long budget = Math.min(left, Math.max(ALWAYS_ALLOWED, MOST_RATIO * Math.max(0, e.getCompressedSize())));
        try (Bounded in = new Bounded(
                new BufferedInputStream(zip.getInputStream(e)),
                budget,
                "refused: it unpacks to more than " + MOST_RATIO
                        + " times its size, as an archive made to fill a machine does",
                taken -> left -= taken)) {
            switch (kind) {
                case LINES -> new Lines(name, reached, sink).read(in);
                case CSV -> CsvTable.read(in, name, reached, tables, sink);
                case CASE ->
                    sink.accept(new Item(
                            name, new Item.Text(in.readNBytes(Lines.MOST_BYTES + 1), CaseFormat.BY_NAME), reached));
                default ->
                    sink.accept(new Item(
                            name,
                            new Item.Trouble(
                                    "archives and workbooks within an archive are not opened: take it out first"),
                            reached));
            }
        } catch (IOException | TableException problem) {
            sink.accept(new Item(name, new Item.Trouble(Sources.reason(problem)), reached));
        }
        return true;
    }
}
