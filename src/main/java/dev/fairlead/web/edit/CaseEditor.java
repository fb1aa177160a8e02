package dev.fairlead.web.edit;

import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.web.edit.EditResult.Clash;
import dev.fairlead.web.edit.EditResult.Refused;
import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.ChangeLog;
import dev.fairlead.web.store.StaleException;
import dev.fairlead.web.store.Stored;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Where cases are changed. A value that would make the case unreadable is not written but kept beside its field; a
 * value that another window changed since this one was loaded is not overwritten but handed back for a person to
 * choose.
 */
public final class CaseEditor {
    private static final String REFUSED = "refused ";

    private static final int TRIES = 5;

    private final CaseFolder folder;
    private final EditMemory memory = new EditMemory();

    public CaseEditor(CaseFolder folder) {
        this.folder = folder;
    }

    public CaseFolder folder() {
        return folder;
    }

    /** The case of that name as it stands in the folder. */
    public Optional<Opened> open(String name) {
        return folder.read(name).map(this::opened);
    }

    /** An earlier version of a case; empty when it is not kept. */
    public Optional<Opened> version(String name, String version) {
        return memory.version(name, version)
                .or(() -> folder.version(name, version).map(this::opened));
    }

    /** Values of a case that were typed and not taken, by pointer. */
    public Map<String, Refused> refused(String name) {
        return Map.copyOf(memory.refused(name));
    }

    /**
     * Changes values of a case.
     *
     * @param base the version that the window has seen
     * @param window a token of the window, empty when it has none
     * @param who changes it, for the log
     * @param typed what was typed, by pointer; blank text takes the value out
     */
    public EditResult change(String name, String base, String window, String who, Map<String, String> typed) {
        for (int i = 1; ; i++) {
            // who wrote a value is noted once the file is saved: the next one must find both or neither
            synchronized (memory.of(name)) {
                Opened present = open(name).orElseThrow();
                try {
                    return change(present, base(name, base, present), window, who, typed);
                } catch (StaleException e) {
                    if (i == TRIES) {
                        throw e;
                    }
                }
            }
        }
    }

    private EditResult change(
            Opened present, Optional<Opened> base, String window, String who, Map<String, String> typed) {
        String name = present.name();
        CaseTree tree = present.tree().orElseThrow();
        CaseReading reading = present.reading();
        List<String> taken = new ArrayList<>();
        List<Clash> clashes = new ArrayList<>();
        Map<String, Refused> refused = new LinkedHashMap<>();
        // answers may still be on their way to a window that made the present version itself: it then names an older
        // one than it knows
        boolean ahead = memory.own(name, present.file().version(), window);
        for (Map.Entry<String, String> e : typed.entrySet()) {
            String pointer = e.getKey();
            String here = e.getValue().strip();
            String there = present.typed(pointer);
            boolean putBack = ahead && memory.own(name, pointer, window);
            boolean asSeen = base.isPresent() && here.equals(base.get().typed(pointer));
            if (here.equals(there) || !putBack && asSeen) {
                if (!asSeen) {
                    // a page that is left sends along what was typed, and the page that follows it puts the same in
                    // again
                    memory.meansToo(name, pointer, window);
                }
                // what a page sent when it was left may arrive after its successor was refused a value: that stays
                if (memory.own(name, REFUSED + pointer, window)
                        || base.isPresent()
                                && base.get()
                                        .file()
                                        .version()
                                        .equals(present.file().version())) {
                    memory.refused(name).remove(pointer);
                }
                continue;
            }
            boolean untouched = base.isPresent() && base.get().typed(pointer).equals(there);
            if (!untouched && !memory.own(name, pointer, window)) {
                clashes.add(new Clash(pointer, there, here));
                continue;
            }
            CaseTree tried = tree.copy();
            tried.set(pointer, here);
            CaseReading read = tried.read(name);
            Optional<Problem> fresh = freshError(reading, read);
            if (fresh.isPresent()) {
                refused.put(pointer, new Refused(here, fresh.get()));
                memory.wrote(name, REFUSED + pointer, window);
            } else {
                tree = tried;
                reading = read;
                taken.add(pointer);
            }
        }
        boolean voids = Signature.voided(present, taken);
        if (voids) {
            Signature.remove(tree);
        }
        Opened now = taken.isEmpty() ? present : write(present, tree, who, voids ? Signature.VOIDED : "");
        taken.forEach(p -> {
            memory.wrote(name, p, window);
            memory.refused(name).remove(p);
        });
        if (!taken.isEmpty()) {
            memory.wrote(name, now.file().version(), window);
        }
        memory.refused(name).putAll(refused);
        boolean others = base.isEmpty()
                || !base.get().file().version().equals(present.file().version())
                        && !memory.own(name, present.file().version(), window);
        return new EditResult(now, List.copyOf(taken), refused, List.copyOf(clashes), others);
    }

    /** Writes the values that a person chose after a clash, whatever stands there. */
    public EditResult choose(String name, String seen, String window, String who, Map<String, String> chosen) {
        chosen.keySet().forEach(p -> memory.wrote(name, p, window));
        return change(name, seen, window, who, chosen);
    }

    /**
     * Changes a case as a whole, such as taking an entry out of a list; throws when it is not the version that the
     * window has seen.
     */
    public Opened rework(String name, String base, String who, Consumer<CaseTree> work) {
        Opened present = open(name).orElseThrow();
        if (!present.file().version().equals(base)) {
            throw new StaleException(present.file().name());
        }
        CaseTree tree = present.tree().orElseThrow().copy();
        work.accept(tree);
        return write(present, tree, who, "");
    }

    /** The case as it would read with other values, for looking only; nothing is written. */
    public CaseReading preview(Opened present, Map<String, String> typed) {
        CaseTree tree = present.tree().orElseThrow().copy();
        typed.forEach(tree::set);
        return tree.read(present.name());
    }

    /** Goes one version back; empty when there is none. */
    public Optional<Opened> undo(String name, String base, String who) {
        return step(name, who, "undo", n -> folder.undo(n, base));
    }

    /** Takes an undo back; empty when there is none. */
    public Optional<Opened> redo(String name, String base, String who) {
        return step(name, who, "redo", n -> folder.redo(n, base));
    }

    /** Makes an earlier version the present one, as a new version; empty when it is not kept. */
    public Optional<Opened> bringBack(String name, String base, String earlier, String who) {
        return step(
                name,
                who,
                "brought back an earlier version",
                n -> folder.version(n, earlier).map(old -> folder.save(n, base, old.text())));
    }

    private Optional<Opened> step(String name, String who, String why, Function<String, Optional<Stored>> step) {
        Opened before = open(name).orElseThrow();
        memory.refused(name).clear();
        Optional<Opened> now = step.apply(name).map(this::opened);
        now.ifPresent(n -> log(before, n, who, why));
        return now;
    }

    private Opened write(Opened present, CaseTree tree, String who, String why) {
        Opened now = opened(folder.save(present.name(), present.file().version(), tree.text(present.format())));
        log(present, now, who, why);
        return now;
    }

    private void log(Opened before, Opened now, String who, String why) {
        String when = LocalDateTime.now(ZoneId.systemDefault())
                .truncatedTo(ChronoUnit.SECONDS)
                .toString();
        List<ChangeLog.Entry> entries = CaseValues.changes(before, now).stream()
                .map(c -> new ChangeLog.Entry(when, who, c.pointer(), c.old(), c.now(), why))
                .toList();
        if (!entries.isEmpty()) {
            folder.log(now.name()).add(entries);
        }
    }

    private Opened opened(Stored file) {
        return memory.version(file.name(), file.version()).orElseGet(() -> {
            Opened opened = Opened.of(file);
            memory.remember(opened);
            return opened;
        });
    }

    /** The version that a window has seen: lately read, or kept among earlier ones; empty when it is neither. */
    private Optional<Opened> base(String name, String base, Opened present) {
        if (base.equals(present.file().version())) {
            return Optional.of(present);
        }
        return memory.version(name, base).or(() -> folder.version(name, base).map(this::opened));
    }

    private static Optional<Problem> freshError(CaseReading before, CaseReading after) {
        var known = before.errors().stream().map(CaseEditor::what).collect(Collectors.toSet());
        return after.errors().stream().filter(p -> !known.contains(what(p))).findFirst();
    }

    private static String what(Problem p) {
        return p.pointer() + '\n' + p.expected() + '\n' + p.found();
    }
}
