package dev.fairlead.rules.engine;

import dev.fairlead.base.PrivateFiles;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Keeps the classes of edited DRL files between runs, in a folder that only the user can read or write: they are code
 * that will run.
 */
public final class RuleCache {
    private final Path folder;

    public RuleCache(Path folder) {
        this.folder = folder;
    }

    /** The user's own cache folder, as the platform has it. */
    public static RuleCache ofUser() {
        return new RuleCache(PrivateFiles.cache().resolve("rules"));
    }

    /**
     * All files (path to DRL text) compiled, by package: those of {@code builtIn}, those that are kept, and the others
     * compiled in one pass and kept from now on.
     */
    public List<CompiledRules> compile(Map<String, String> drl, List<CompiledRules> builtIn) {
        List<CompiledRules> found = new ArrayList<>();
        Map<String, String> unknown = new LinkedHashMap<>();
        for (Map<String, String> texts : DrlCompiler.byPackage(drl).values()) {
            String key = CompiledRules.key(texts);
            builtIn.stream()
                    .filter(b -> b.key().equals(key))
                    .findFirst()
                    .or(() -> read(file(key)).map(classes -> CompiledRules.of(texts, classes)))
                    .ifPresentOrElse(found::add, () -> unknown.putAll(texts));
        }
        if (!unknown.isEmpty()) {
            List<CompiledRules> compiled = DrlCompiler.compile(unknown);
            compiled.forEach(this::write);
            found.addAll(compiled);
        }
        return found;
    }

    /**
     * What is kept.
     *
     * @param packages of rules, compiled
     * @param damaged of them, which would be compiled again
     * @param bytes of all
     */
    public record Holds(Path folder, int packages, int damaged, long bytes) {}

    /** What is kept by now, once it is sure that more could be; throws where nothing can be. */
    public Holds holds() throws IOException {
        if (!usable()) {
            throw new IOException(folder + " cannot be used, or others than you could write to it:"
                    + " rules of your own are compiled anew at each start");
        }
        Files.delete(Files.createTempFile(folder, "part", ".tmp"));
        int packages = 0;
        int damaged = 0;
        long bytes = 0;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.zip")) {
            for (Path file : files) {
                packages++;
                bytes += Files.size(file);
                damaged += read(file).isEmpty() ? 1 : 0;
            }
        }
        return new Holds(folder, packages, damaged, bytes);
    }

    /** Makes the folder when it is not there; a folder that others could write to is not used at all. */
    private boolean usable() {
        try {
            PrivateFiles.folder(folder);
            return PrivateFiles.alone(folder);
        } catch (IOException e) {
            // a home that cannot be written to costs time, not correctness: everything is compiled in memory
            return false;
        }
    }

    private Path file(String key) {
        return folder.resolve(key + ".zip");
    }

    /** Class files by path; empty for a file that is damaged, or is not there. */
    private Optional<Map<String, byte[]>> read(Path file) {
        if (!usable()) {
            return Optional.empty();
        }
        Map<String, byte[]> classes = new TreeMap<>();
        try (ZipFile in = new ZipFile(file.toFile())) {
            for (ZipEntry e : Collections.list(in.entries())) {
                classes.put(e.getName(), in.getInputStream(e).readAllBytes());
            }
        } catch (IOException e) {
            // it is compiled again and written over
            return Optional.empty();
        }
        return Optional.of(classes);
    }

    private void write(CompiledRules rules) {
        if (!usable()) {
            return;
        }
        try {
            ByteArrayOutputStream zip = new ByteArrayOutputStream();
            try (ZipOutputStream out = new ZipOutputStream(zip)) {
                for (Map.Entry<String, byte[]> e : rules.classes().entrySet()) {
                    out.putNextEntry(new ZipEntry(e.getKey()));
                    out.write(e.getValue());
                }
            }
            PrivateFiles.write(file(rules.key()), zip.toByteArray());
        } catch (IOException e) {
            // a full disk costs time, not correctness: the next start compiles again
            return;
        }
    }
}
