package dev.fairlead.audit.run;

import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.base.Hash;
import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** An audit: every case of some sources judged once, rows handed on in order. */
public final class Audit {
    /**
     * How to run it.
     *
     * @param threads how many cases are judged at once
     * @param limit after how long a case is given up
     * @param journal where rows are kept so that a cut-off audit can go on; empty to keep none
     * @param numbers keeps the numbers behind the findings, for tables
     */
    public record Settings(CheckOptions check, int threads, Duration limit, Optional<Path> journal, boolean numbers) {
        /** Without the numbers behind the findings. */
        public Settings(CheckOptions check, int threads, Duration limit, Optional<Path> journal) {
            this(check, threads, limit, journal, false);
        }

        public Settings withNumbers() {
            return new Settings(check, threads, limit, journal, true);
        }

        /** All cores, half a minute a case, no journal. */
        public static final Settings USUAL = new Settings(
                CheckOptions.USUAL,
                Runtime.getRuntime().availableProcessors(),
                Duration.ofSeconds(30),
                Optional.empty());
    }

    /** A row and the case that it is of. */
    public record Done(CaseRow row, Item item) {}

    private record Task(Item item, Journal.@Nullable Old old) {}

    private record Made(CaseRow row, Task task, boolean fromJournal) {}

    private final Checker checker;
    private final Settings settings;
    private final Function<Item, CaseRow> maker;

    public Audit(Checker checker, Settings settings) {
        this(checker, settings, new RowMaker(checker, settings.check(), settings.numbers())::row);
    }

    /** With another way to judge a case, for tests. */
    Audit(Checker checker, Settings settings, Function<Item, CaseRow> maker) {
        this.checker = checker;
        this.settings = settings;
        this.maker = maker;
    }

    /**
     * Runs to the end on this thread and its helpers; {@code reached} is told the bytes that are done. Of several
     * states of one pseudonym the latest counts. Which are earlier is known at the end only: where there are any, all
     * is run again, and {@code start} is asked for another taker of rows, from the first on.
     */
    public void run(Sources sources, Supplier<Consumer<Done>> start, LongConsumer reached) throws IOException {
        BitSet earlier = pass(sources, new BitSet(), start.get(), reached);
        if (!earlier.isEmpty()) {
            pass(sources, earlier, start.get(), reached);
        }
        if (settings.journal().isPresent()) {
            Files.deleteIfExists(settings.journal().get());
        }
    }

    /** Runs once; returns the numbers of rows of which there is a later state. */
    private BitSet pass(Sources sources, BitSet earlier, Consumer<Done> rows, LongConsumer reached) throws IOException {
        History history = new History();
        try (Journal journal = settings.journal().isEmpty()
                ? null
                : Journal.open(
                        settings.journal().get(), new RowJson(checker.rulebase().catalogue()), key())) {
            new Pool<Task, Made>(settings.threads(), settings.limit().toNanos(), this::make, this::givenUp, Audit::size)
                    .run(
                            sink -> sources.each(item ->
                                    sink.accept(new Task(item, journal == null ? null : journal.next(item.source())))),
                            made -> {
                                if (journal != null) {
                                    keep(journal, made);
                                }
                                int number = history.next(made.row());
                                rows.accept(new Done(
                                        earlier.get(number) ? made.row().earlier() : made.row(),
                                        made.task().item()));
                                reached.accept(made.task().item().reached());
                            });
        } catch (Pool.Stopped e) {
            throw new IllegalStateException("the audit had to stop: " + e.getCause(), e.getCause());
        }
        return history.earlier();
    }

    private static void keep(Journal journal, Made made) {
        try {
            journal.keep(made.row(), made.fromJournal() ? made.task().old() : null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Made make(Task task) {
        Journal.Old old = task.old();
        if (old != null && unchanged(task.item(), old.row())) {
            return new Made(old.row(), task, true);
        }
        return new Made(maker.apply(task.item()), task, false);
    }

    private static boolean unchanged(Item item, CaseRow old) {
        try {
            return Hash.of(item.text()).equals(old.hash());
        } catch (TableException e) {
            return old.hash().isEmpty() && old.reason().equals(e.getMessage());
        }
    }

    private Made givenUp(Task task) {
        return new Made(
                CaseRow.not(
                        CaseRow.Kind.TOO_LONG,
                        task.item().source(),
                        "",
                        "given up after " + settings.limit().toMillis() + " ms (--time-limit)"),
                task,
                false);
    }

    private static int size(Task task) {
        return task.item().content() instanceof Item.Text t ? t.bytes().length : 4096;
    }

    /** What rows depend on besides the cases. */
    private String key() {
        return Journal.MARK + dev.fairlead.check.Version.ofProgram() + " "
                + checker.rulebase().hash() + " "
                + settings.check().date().map(Object::toString).orElse("-") + " "
                + settings.check().stage().map(Object::toString).orElse("-") + " "
                + (settings.check().forces() ? "forces" : "no-forces") + (settings.numbers() ? " numbers" : "");
    }
}
