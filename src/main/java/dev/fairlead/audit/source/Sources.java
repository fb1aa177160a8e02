package dev.fairlead.audit.source;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.intake.text.CaseFormat;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * All cases below some paths, in a fixed order: files (JSON, YAML), files of one case a line, tables, archives, and
 * folders of these. What cannot be read is handed on as an item that says why; nothing here ends an audit.
 */
public final class Sources {
    /** Names of classes say nothing to whoever has the file. */
    private static final Pattern LIBRARY = Pattern.compile("Exception|\\b[a-z]+\\.[a-z]+\\.|[{}\\[\\]]|^null$");

    private final List<Path> files = new ArrayList<>();
    private final List<String> passedOver = new ArrayList<>();
    private final TableOptions tables;
    private long size;

    /** With tables read by that mapping. */
    public Sources(List<Path> paths, Mapping mapping) throws IOException {
        this(paths, TableOptions.of(mapping));
    }

    /** Looks for files below the paths; {@code tables} is how tables are read. */
    public Sources(List<Path> paths, TableOptions tables) throws IOException {
        this.tables = tables;
        for (Path p : paths) {
            if (Files.isDirectory(p)) {
                try (Stream<Path> walk = Files.walk(p)) {
                    // a link to a folder is not followed, for it may lead in a circle; it is told
                    walk.filter(f -> !Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
                            .sorted()
                            .forEach(f -> add(f, true));
                } catch (UncheckedIOException e) {
                    throw e.getCause();
                }
            } else {
                add(p, false);
            }
        }
    }

    private void add(Path file, boolean fromFolder) {
        String name = file.getFileName() == null ? "" : file.getFileName().toString();
        if (fromFolder
                && (!Files.isRegularFile(file)
                        || FileNames.kind(name) == FileNames.Kind.OTHER
                        || CohortFiles.holdsTruth(name)
                        || name.startsWith(".")
                        || OwnOutputs.is(file))) {
            passedOver.add(FileNames.shown(file.toString()));
            return;
        }
        files.add(file);
        try {
            size += Files.size(file);
        } catch (IOException e) {
            // its size only moves the progress bar; that it cannot be read is told when its turn comes
        }
    }

    /** Bytes of all files. */
    public long size() {
        return size;
    }

    /** Files of folders that hold no cases by their names, links that lead nowhere, and what is no file. */
    public List<String> passedOver() {
        return List.copyOf(passedOver);
    }

    /** Hands on every case in order, on the calling thread. */
    public void each(Consumer<Item> taker) {
        Consumer<Item> sink = item -> {
            try {
                taker.accept(item);
            } catch (RuntimeException e) {
                throw new Refused(e);
            }
        };
        try {
            all(sink);
        } catch (Refused e) {
            throw e.why;
        }
    }

    /** Whoever takes the cases failed: that is no fault of a source. */
    private static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient RuntimeException why;

        Refused(RuntimeException why) {
            super(why);
            this.why = why;
        }
    }

    private void all(Consumer<Item> sink) {
        long before = 0;
        for (Path file : files) {
            String source = FileNames.shown(file.toString());
            long length = 0;
            try {
                length = Files.size(file);
                if (file.getFileName() != null
                        && FileNames.kind(file.getFileName().toString()) == FileNames.Kind.ZIP) {
                    new Archive(tables).read(file, source, before, sink);
                } else {
                    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
                        one(in, file, source, before, sink);
                    }
                }
            } catch (java.nio.file.NoSuchFileException e) {
                sink.accept(new Item(source, new Item.Trouble("there is no such file"), before));
            } catch (IOException | TableException e) {
                sink.accept(new Item(source, new Item.Trouble(reason(e)), before + length));
            } catch (Refused e) {
                throw e;
            } catch (RuntimeException e) {
                // a reader that trips over what nobody thought of ends its own file, never the audit
                sink.accept(new Item(
                        source,
                        new Item.Trouble("cannot be read from here on, no row behind was audited"),
                        before + length));
            }
            before += length;
        }
    }

    private void one(InputStream in, Path file, String source, long before, Consumer<Item> sink)
            throws IOException, TableException {
        in.mark(2);
        if (in.read() == 0x1f && in.read() == 0x8b) {
            throw new TableException("packed by gzip: unpack it first");
        }
        in.reset();
        switch (FileNames.kind(file.getFileName().toString())) {
            case LINES -> new Lines(source, before, sink).read(in);
            case CSV -> CsvTable.read(in, source, before, tables, sink);
            case XLSX -> XlsxTable.read(file, source, before, tables, sink);
            default -> {
                byte[] bytes = in.readNBytes(Lines.MOST_BYTES + 1);
                sink.accept(new Item(source, new Item.Text(bytes, CaseFormat.BY_NAME), before + bytes.length));
            }
        }
    }

    static String reason(Exception e) {
        return e instanceof TableException || e instanceof Bounded.TooMuch
                ? String.valueOf(e.getMessage())
                : "cannot be read (" + why(e) + ")";
    }

    /** What a library says of a file, where it is fit for people. */
    static String why(Exception e) {
        String said = FileNames.shown(String.valueOf(e.getMessage()));
        return LIBRARY.matcher(said).find() ? "damaged" : said;
    }
}
