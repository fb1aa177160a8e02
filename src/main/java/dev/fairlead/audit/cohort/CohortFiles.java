package dev.fairlead.audit.cohort;

import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.stream.LongStream;

/**
 * Writes invented cases with the truth beside them, a thousand at a time on all cores; the bytes depend on number and
 * seed alone.
 */
public final class CohortFiles {
    /** Name of the truth in a folder of cases. */
    public static final String TRUTH = "truth.ndjson";

    private static final int AT_ONCE = 1000;

    private CohortFiles() {}

    /** The file that holds the truth on the cases of {@code cases}: {@code x.ndjson} has {@code x.truth.ndjson}. */
    public static Path truthBeside(Path cases) {
        String name = cases.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return cases.resolveSibling(
                (dot < 0 ? name : name.substring(0, dot)) + ".truth" + (dot < 0 ? ".ndjson" : name.substring(dot)));
    }

    /** True for a file that holds truth and no cases. */
    public static boolean holdsTruth(String name) {
        return name.equals(TRUTH) || name.matches(".*\\.truth\\.(ndjson|jsonl)");
    }

    /** Writes one case a line. */
    public static void lines(long n, long seed, Writer cases, Writer truth, LongConsumer done) throws IOException {
        for (long from = 0; from < n; from += AT_ONCE) {
            for (Made m : made(from, Math.min(n, from + AT_ONCE), seed, true)) {
                cases.write(m.text());
                truth.write(m.truth());
            }
            done.accept(Math.min(n, from + AT_ONCE));
        }
    }

    /** Writes one case a line with the effects of {@link CohortEffects}; an earlier state stands before its case. */
    public static void withEffects(long n, long seed, Writer cases, LongConsumer done) throws IOException {
        for (long i = 0; i < n; i++) {
            PlantedCase c = CohortEffects.one(seed, i);
            Optional<Case> earlier = CohortEffects.earlier(c, i);
            if (earlier.isPresent()) {
                cases.write(CaseWriter.line(earlier.get()));
            }
            cases.write(CaseWriter.line(c.made()));
            done.accept(i + 1);
        }
    }

    /** Writes one file a case into a folder, which must not hold them yet. */
    public static void folder(long n, long seed, Path folder, LongConsumer done) throws IOException {
        Files.createDirectories(folder);
        try (Writer truth =
                Files.newBufferedWriter(folder.resolve(TRUTH), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW)) {
            for (long from = 0; from < n; from += AT_ONCE) {
                for (Made m : made(from, Math.min(n, from + AT_ONCE), seed, false)) {
                    Files.writeString(folder.resolve(m.id() + ".json"), m.text(), StandardOpenOption.CREATE_NEW);
                    truth.write(m.truth());
                }
                done.accept(Math.min(n, from + AT_ONCE));
            }
        }
    }

    private record Made(String id, String text, String truth) {}

    private static List<Made> made(long from, long to, long seed, boolean line) {
        return LongStream.range(from, to)
                .parallel()
                .mapToObj(i -> {
                    PlantedCase c = Cohort.one(seed, i);
                    return new Made(
                            c.made().id(),
                            line ? CaseWriter.line(c.made()) : CaseWriter.json(c.made()),
                            Truth.of(c).line());
                })
                .toList();
    }
}
