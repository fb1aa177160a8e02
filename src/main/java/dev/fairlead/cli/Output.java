package dev.fairlead.cli;

import dev.fairlead.check.Checked;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.report.html.LoggedChange;
import dev.fairlead.report.html.ReportHtml;
import dev.fairlead.report.html.ReportPdf;
import dev.fairlead.report.html.UnreadCase;
import dev.fairlead.report.json.ReportJson;
import dev.fairlead.report.text.ReportText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Where reports go, and in which form: standard output, one file, or a file a case in a folder. */
final class Output {
    /** Changes that plain text tells of. */
    private static final int FEW = 3;

    private final Console console;
    private final CheckCommand.Form form;
    private final boolean all;
    private final boolean brief;
    private final boolean one;
    private final Optional<Path> file;
    private final boolean folder;
    private final Consumer<Path> guard;
    private final List<Checked> kept = new ArrayList<>();
    private final IdentityHashMap<Checked, List<LoggedChange>> changes = new IdentityHashMap<>();
    private final List<UnreadCase> refused = new ArrayList<>();
    private final Set<String> taken = new HashSet<>();
    private final StringBuilder text = new StringBuilder();

    Output(
            Console console,
            CheckCommand.Form form,
            Optional<String> output,
            boolean all,
            boolean brief,
            boolean one,
            Consumer<Path> guard) {
        this.console = console;
        this.form = form;
        this.all = all;
        this.brief = brief;
        this.one = one;
        if (form == CheckCommand.Form.pdf && output.isEmpty()) {
            throw new Main.Stop(
                    ExitCode.USAGE, "PDF is not for a terminal: name a file with -o FILE, or - for standard output.");
        }
        this.file = output.isEmpty() || output.get().equals("-") ? Optional.empty() : Optional.of(path(output.get()));
        this.guard = guard;
        this.folder = file.isPresent() && (output.get().endsWith("/") || Files.isDirectory(file.get()));
        if (!folder) {
            // told before the work and not after it
            file.ifPresent(guard);
        }
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "-o: expected the name of a file, found " + PathNames.found(name) + "; " + PathNames.mend(name)
                            + ".");
        }
    }

    void refused(Named named) {
        refused.add(new UnreadCase(
                named.name(),
                named.reading().errors().stream().map(Object::toString).toList()));
    }

    /** Takes a case with the last changes that its log tells of; what can be told at once goes out at once. */
    void add(Checked checked, List<LoggedChange> last) throws IOException {
        changes.put(checked, last);
        if (folder) {
            Path page = made(file.get()).resolve(name(checked));
            guard.accept(page);
            WholeFile.write(page, one(checked));
        } else if (paged()) {
            kept.add(checked);
        } else {
            String told = form == CheckCommand.Form.json
                    ? ReportJson.text(checked.report(), all)
                    : (text.isEmpty() && kept.isEmpty() ? "" : "\n" + "=".repeat(80) + "\n\n") + text(checked);
            if (file.isPresent()) {
                text.append(told);
            } else {
                console.out().print(form == CheckCommand.Form.text ? Colour.of(told) : told);
            }
            kept.add(checked);
        }
    }

    /** Writes what had to wait for the last case. Where no case could be read there is nothing to write. */
    void finish() throws IOException {
        if (folder || kept.isEmpty()) {
            return;
        }
        if (paged()) {
            put(
                    form == CheckCommand.Form.html
                            ? bytes(ReportHtml.of(kept, refused, all, changes::get))
                            : one ? ReportPdf.onePage(kept, refused) : ReportPdf.of(kept, refused, all, changes::get));
        } else if (file.isPresent()) {
            put(bytes(text.toString()));
        }
    }

    private String text(Checked checked) {
        String told = ReportText.of(
                checked.report(),
                brief ? ReportText.Detail.BRIEF : all ? ReportText.Detail.ALL : ReportText.Detail.USUAL);
        List<LoggedChange> last = changes.getOrDefault(checked, List.of());
        if (brief || last.isEmpty()) {
            return told;
        }
        StringBuilder out = new StringBuilder(told).append("\nLAST CHANGES, by whom as typed\n");
        last.subList(0, Math.min(all ? last.size() : FEW, last.size()))
                .forEach(c -> out.append(Wrap.hanging("  ", c.line())));
        return out.toString();
    }

    private byte[] one(Checked checked) {
        return switch (form) {
            case text -> bytes(text(checked));
            case json -> bytes(ReportJson.text(checked.report(), all));
            case html -> bytes(ReportHtml.of(List.of(checked), List.of(), all, changes::get));
            case pdf ->
                one
                        ? ReportPdf.onePage(List.of(checked), List.of())
                        : ReportPdf.of(List.of(checked), List.of(), all, changes::get);
        };
    }

    private boolean paged() {
        return form == CheckCommand.Form.html || form == CheckCommand.Form.pdf;
    }

    private String name(Checked checked) {
        String ending = form == CheckCommand.Form.text ? "txt" : form.name();
        String name = checked.subject().id() + "." + ending;
        if (!taken.add(name)) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "Two cases are called " + checked.subject().id() + ": the second would overwrite the first in "
                            + file.get());
        }
        return name;
    }

    private void put(byte[] bytes) throws IOException {
        if (file.isPresent()) {
            WholeFile.write(file.get(), bytes);
        } else {
            console.out().write(bytes);
        }
    }

    private static Path made(Path folder) {
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, folder + ": the folder cannot be made (" + e.getMessage() + ").");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
