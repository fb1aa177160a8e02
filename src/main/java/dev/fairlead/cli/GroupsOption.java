package dev.fairlead.cli;

import dev.fairlead.audit.compare.GroupComparison;
import dev.fairlead.audit.run.Audit;
import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.source.Sources;
import dev.fairlead.check.Checker;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** Options that compare two groups of cases: two audits, periods or sites. */
final class GroupsOption {
    @Option(
            names = "--audits",
            description =
                    "Compare two audits: two paths, of which each is one, such as last year's folder and this one's.")
    private boolean audits;

    @Option(
            names = "--sites",
            paramLabel = "A,B",
            split = ",",
            description = "Compare the cases of two sites, by the codes in their field site.")
    private List<String> sites = List.of();

    @Option(
            names = "--periods",
            paramLabel = "A,B",
            split = ",",
            description =
                    "Compare two periods of the day for which cases are judged, such as 2025-01..2025-06,2025-07..2025-12.")
    private List<String> periods = List.of();

    boolean any() {
        return audits || !sites.isEmpty() || !periods.isEmpty();
    }

    /** Judges all cases of the paths and lays the two groups side by side. */
    GroupComparison.Result run(
            Checker checker, List<Path> paths, SourceOptions source, Audit.Settings settings, Console console)
            throws IOException {
        if ((audits ? 1 : 0) + (sites.isEmpty() ? 0 : 1) + (periods.isEmpty() ? 0 : 1) > 1) {
            throw new Main.Stop(ExitCode.USAGE, "Of --audits, --sites and --periods one at a time.");
        }
        List<String> names = audits ? paths.stream().map(Path::toString).toList() : sites.isEmpty() ? periods : sites;
        if (names.size() != 2 || names.get(0).equals(names.get(1))) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    audits
                            ? "--audits compares two different paths."
                            : "Two different names are needed, divided by a comma, such as --sites north,south.");
        }
        GroupComparison groups = new GroupComparison(checker, names.get(0), names.get(1));
        if (audits) {
            for (int i = 0; i < 2; i++) {
                String name = names.get(i);
                add(checker, List.of(paths.get(i)), source, settings, console, groups, row -> name);
            }
        } else {
            Function<CaseRow, String> of =
                    sites.isEmpty() ? periods() : row -> row.details().site();
            add(checker, paths, source, settings, console, groups, of);
        }
        try {
            return groups.result();
        } catch (IllegalArgumentException e) {
            throw new Main.Stop(ExitCode.UNREADABLE, "No case was judged of " + e.getMessage() + ".");
        }
    }

    /** Rows wait until all are there: of several states of a case the latest counts. */
    private static void add(
            Checker checker,
            List<Path> paths,
            SourceOptions source,
            Audit.Settings settings,
            Console console,
            GroupComparison groups,
            Function<CaseRow, String> of)
            throws IOException {
        Sources sources = source.sources(paths);
        List<List<CaseRow>> last = new ArrayList<>();
        try (RunProgress bar = source.progress(console, "Comparing", sources.size())) {
            new Audit(checker, settings)
                    .run(
                            sources,
                            () -> {
                                last.clear();
                                last.add(new ArrayList<>());
                                return done -> last.get(0).add(done.row());
                            },
                            bar);
        }
        last.get(0).forEach(row -> groups.add(row, row.judged() ? of.apply(row) : ""));
    }

    private Function<CaseRow, String> periods() {
        Period first = Period.of(periods.get(0));
        Period second = Period.of(periods.get(1));
        return row -> {
            String day = row.day();
            return day.isEmpty() ? "" : first.holds(day) ? periods.get(0) : second.holds(day) ? periods.get(1) : "";
        };
    }

    private record Period(LocalDate from, LocalDate to) {
        static Period of(String text) {
            String[] ends = text.split("\\.\\.", -1);
            try {
                return new Period(day(ends[0], true), day(ends[ends.length - 1], false));
            } catch (DateTimeException e) {
                throw new Main.Stop(
                        ExitCode.USAGE,
                        text + " is no period; write a month, or two months or days with .. between them, such as"
                                + " 2025-01..2025-06.");
            }
        }

        private static LocalDate day(String text, boolean first) {
            if (text.length() == 7) {
                YearMonth m = YearMonth.parse(text);
                return first ? m.atDay(1) : m.atEndOfMonth();
            }
            return LocalDate.parse(text);
        }

        boolean holds(String day) {
            LocalDate d = LocalDate.parse(day);
            return !d.isBefore(from) && !d.isAfter(to);
        }
    }
}
