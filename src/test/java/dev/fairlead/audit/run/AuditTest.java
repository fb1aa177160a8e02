package dev.fairlead.audit.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.audit.cohort.CohortFiles;
import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.Mapping;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checked;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuditTest {
    private static final Checker CHECKER = new Checker(Rulebase.builtIn());
    private static final RowJson JSON = new RowJson(CHECKER.rulebase().catalogue());
    private static final int CASES = 80;

    @TempDir
    private Path folder;

    private Path lines;

    @BeforeEach
    void cohort() throws IOException {
        lines = folder.resolve("c.ndjson");
        try (Writer cases = Files.newBufferedWriter(lines)) {
            CohortFiles.lines(CASES, 9, cases, Writer.nullWriter(), n -> {});
            cases.write("{\"fairlead\": 1, \"id\": \"broken\n");
        }
    }

    private static Audit.Settings settings(int threads, Optional<Path> journal) {
        return new Audit.Settings(CheckOptions.USUAL, threads, Duration.ofMinutes(1), journal);
    }

    private List<String> run(Audit audit, Path... more) throws IOException {
        List<Path> paths = new ArrayList<>(List.of(lines));
        paths.addAll(List.of(more));
        List<String> rows = new ArrayList<>();
        audit.run(
                new Sources(paths, Mapping.NONE),
                () -> {
                    rows.clear();
                    return d -> rows.add(JSON.line(d.row()));
                },
                n -> {});
        return rows;
    }

    @Test
    void rowsAreTheSameByOneThreadAndByMany() throws IOException {
        List<String> one = run(new Audit(CHECKER, settings(1, Optional.empty())));
        assertThat(one).hasSize(CASES + 1).last().asString().contains("unreadable");
        assertThat(run(new Audit(CHECKER, settings(4, Optional.empty())))).isEqualTo(one);
    }

    @Test
    void rowsSayWhatACheckOfEachCaseSays() throws IOException {
        Path demo = Path.of("cases/lapwing-16-waived.yaml");
        List<CaseRow> rows = new ArrayList<>();
        new Audit(CHECKER, settings(2, Optional.empty()))
                .run(
                        new Sources(List.of(lines, demo), Mapping.NONE),
                        () -> d -> {
                            if (d.row().judged()) {
                                rows.add(d.row());
                                byte[] text = text(d.item());
                                CaseReading r = d.item().read(text);
                                Checked checked = CHECKER.check(
                                        r.value().orElseThrow(), "", CheckOptions.USUAL.withoutWorkings());
                                List<Finding> all = checked.report().findings().all();
                                assertThat(d.row().waived())
                                        .isEqualTo(all.stream()
                                                .filter(f -> f.waiver().isPresent())
                                                .map(Finding::id)
                                                .toList());
                                assertThat(d.row().missing().keySet())
                                        .containsExactlyElementsOf(all.stream()
                                                .filter(f -> f.outcome() == Status.NOT_ASSESSED)
                                                .map(Finding::id)
                                                .toList());
                                for (int i = 0; i < all.size(); i++) {
                                    assertThat(d.row().ending(i).warns())
                                            .as(all.get(i).id())
                                            .isEqualTo(all.get(i).warns());
                                    assertThat(d.row().ending(i).name())
                                            .isEqualTo(
                                                    all.get(i).warns()
                                                            ? all.get(i)
                                                                    .weight()
                                                                    .name()
                                                            : all.get(i)
                                                                    .outcome()
                                                                    .name());
                                }
                            }
                        },
                        n -> {});
        assertThat(rows).hasSize(CASES + 1);
        assertThat(rows.get(CASES).waived()).isNotEmpty();
    }

    private static byte[] text(Item item) {
        try {
            return item.text();
        } catch (dev.fairlead.audit.source.TableException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void aRowReadBackIsTheRowThatWasWritten() throws IOException {
        for (String row : run(
                new Audit(CHECKER, settings(2, Optional.empty())),
                Path.of("cases/lapwing-16-waived.yaml"),
                Path.of("cases/gull-13-full-of-slips.yaml"))) {
            assertThat(JSON.line(JSON.parse(row))).isEqualTo(row);
        }
    }

    /** The same pseudonym three times: the latest day counts, wherever it stands in the sources. */
    @Test
    void ofSeveralStatesOfACaseTheLatestCounts() throws IOException {
        String state = "{\"fairlead\":1,\"id\":\"many\",\"stage\":\"%s\",\"date\":\"%s\"}\n";
        Path states = Files.writeString(
                folder.resolve("states.ndjson"),
                String.format(state, "readiness", "2026-03-01")
                        + String.format(state, "bench", "2026-05-01")
                        + String.format(state, "records", "2026-01-01"));
        List<String> rows = run(new Audit(CHECKER, settings(2, Optional.empty())), states);
        assertThat(rows).hasSize(CASES + 4);
        assertThat(rows)
                .filteredOn(r -> r.contains("\"case\":\"many\""))
                .satisfiesExactly(
                        first -> assertThat(first).contains("\"superseded\":true"),
                        second -> assertThat(second)
                                .contains("\"stage\":\"bench\"")
                                .doesNotContain("superseded"),
                        third -> assertThat(third).contains("\"superseded\":true"));
        assertThat(rows).filteredOn(r -> r.contains("superseded")).hasSize(2);
    }

    @Test
    void aCaseThatTakesTooLongIsARowAndTheOthersAreJudged() throws IOException {
        Function<Item, CaseRow> usual = new RowMaker(CHECKER, CheckOptions.USUAL)::row;
        Audit slow = new Audit(
                CHECKER, new Audit.Settings(CheckOptions.USUAL, 2, Duration.ofSeconds(5), Optional.empty()), item -> {
                    if (item.source().endsWith(":7")) {
                        sleep();
                    }
                    return usual.apply(item);
                });
        assertThat(run(slow))
                .hasSize(CASES + 1)
                .filteredOn(r -> r.contains("\"not\":\"too-long\""))
                .singleElement()
                .asString()
                .contains(":7\"");
    }

    private static void sleep() {
        try {
            Thread.sleep(Duration.ofMinutes(10).toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Test
    void anAuditThatWasCutOffGoesOnWhereItStopped() throws IOException {
        List<String> whole = run(new Audit(CHECKER, settings(2, Optional.empty())));
        Path journal = folder.resolve("out.journal");
        Audit audit = new Audit(CHECKER, settings(2, Optional.of(journal)));
        AtomicInteger taken = new AtomicInteger();
        assertThatThrownBy(() -> audit.run(
                        new Sources(List.of(lines), Mapping.NONE),
                        () -> d -> {
                            if (taken.incrementAndGet() == 50) {
                                throw new IllegalStateException("killed");
                            }
                        },
                        n -> {}))
                .hasMessage("killed");
        assertThat(journal).exists();
        // the last line was cut in the middle
        String kept = Files.readString(journal);
        Files.writeString(journal, kept.substring(0, kept.length() - 30));
        AtomicInteger judged = new AtomicInteger();
        Function<Item, CaseRow> usual = new RowMaker(CHECKER, CheckOptions.USUAL)::row;
        Function<Item, CaseRow> counting = i -> {
            judged.incrementAndGet();
            return usual.apply(i);
        };
        assertThat(run(new Audit(CHECKER, settings(2, Optional.of(journal)), counting)))
                .isEqualTo(whole);
        assertThat(judged.get()).isEqualTo(CASES + 1 - 49);
        assertThat(journal).doesNotExist();
    }

    @Test
    void aJournalOfOtherRulesOrChangedCasesIsNotTrusted() throws IOException {
        Path journal = folder.resolve("out.journal");
        Audit audit = new Audit(CHECKER, settings(2, Optional.of(journal)));
        AtomicInteger taken = new AtomicInteger();
        assertThatThrownBy(() -> audit.run(
                        new Sources(List.of(lines), Mapping.NONE),
                        () -> d -> {
                            if (taken.incrementAndGet() == 20) {
                                throw new IllegalStateException("killed");
                            }
                        },
                        n -> {}))
                .hasMessage("killed");
        Checker other = new Checker(Rulebase.builtIn()
                .withThresholds(Map.of(
                        "overjet-after.min",
                        CHECKER.rulebase()
                                .catalogue()
                                .thresholds()
                                .get("overjet-after.min")
                                .high())));
        assertThat(run(new Audit(other, settings(2, Optional.of(Files.copy(journal, folder.resolve("copy.journal")))))))
                .isEqualTo(run(new Audit(other, settings(2, Optional.empty()))));
        List<String> all = new ArrayList<>(Files.readAllLines(lines));
        all.set(
                10,
                all.get(10).replace("\"sex\":\"female\"", "\"sex\":\"male\"").replace("\"age\"", "\"age\" "));
        Files.write(lines, all);
        assertThat(run(new Audit(CHECKER, settings(2, Optional.of(journal)))))
                .isEqualTo(run(new Audit(CHECKER, settings(2, Optional.empty()))));
    }

    @Test
    void anErrorOfOurOwnIsARowToo() {
        RowMaker maker = new RowMaker(CHECKER, CheckOptions.USUAL);
        CaseRow row = maker.row(new Item(
                "x",
                new Item.Row(leftOut -> {
                    throw new IllegalArgumentException("unforeseen");
                }),
                0));
        assertThat(row.kind()).isEqualTo(CaseRow.Kind.FAILED);
        assertThat(row.reason()).contains("unforeseen");
    }
}
