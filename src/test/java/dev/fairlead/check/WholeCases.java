package dev.fairlead.check;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whole cases for what must hold of every case, read without errors of measurement, which decide nothing there. */
final class WholeCases {
    private static final long SEED = 20261128;

    private WholeCases() {}

    /** Every case of the folder {@code cases} that can be read. */
    static List<Case> demos() {
        List<Case> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            for (Path f : files.sorted().toList()) {
                exact(Files.readAllBytes(f), f.toString()).ifPresent(cases::add);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return cases;
    }

    /** The first invented cases of a cohort. */
    static List<Case> cohort(int many) {
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            byte[] text = CaseWriter.line(Cohort.one(SEED, i).made()).getBytes(StandardCharsets.UTF_8);
            cases.add(exact(text, "cohort.json").orElseThrow());
        }
        return cases;
    }

    private static Optional<Case> exact(byte[] text, String name) {
        return CaseReader.readExact(text, name, name.endsWith(".yaml") ? CaseFormat.YAML : CaseFormat.JSON)
                .value();
    }
}
