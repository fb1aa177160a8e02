package dev.fairlead.intake.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Collects problems, each once, and stops keeping them when a file is plainly something else. */
public final class Problems {
    /** Beyond this many, problems are counted and not kept: nobody mends a file line by line from so long a list. */
    public static final int MOST = 100;

    /** Ends a reading that keeps no problems: the text is then read once more, with their places. */
    public static final class Met extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private Met() {
            super("a problem", null, false, false);
        }
    }

    @SuppressWarnings("StaticAssignmentOfThrowable") // without a stack, and thrown for every damaged row of an audit
    private static final Met MET = new Met();

    private final boolean kept;
    private final List<Problem> all = new ArrayList<>();
    private final Set<String> places = new HashSet<>();
    private int errors;
    private int left;

    public Problems() {
        this(true);
    }

    private Problems(boolean kept) {
        this.kept = kept;
    }

    /** Keeps nothing: the first problem ends the reading with {@link Met}. */
    public static Problems none() {
        return new Problems(false);
    }

    /** False when the first problem ends the reading, so that no places need be noted for problems to come. */
    public boolean kept() {
        return kept;
    }

    /** There is a problem; what it is and where is told where problems are kept. */
    public static Met met() {
        return MET;
    }

    public void add(Problem p) {
        if (!kept) {
            throw MET;
        }
        // the first problem of one value in one place explains it; what follows from it would only repeat it
        if (!places.add(p.pointer() + '@' + p.line() + ':' + p.column() + (p.line() == 0 ? p.expected() : ""))) {
            return;
        }
        if (p.error()) {
            errors++;
        }
        if (all.size() < MOST) {
            all.add(p);
        } else {
            left++;
        }
    }

    public boolean any() {
        return !all.isEmpty();
    }

    /** True when further problems are only counted, so that nothing need be worked out for them. */
    public boolean full() {
        return all.size() >= MOST;
    }

    public boolean errors() {
        return errors > 0;
    }

    /** The problems with a place for each that has none yet, in the order of the file. */
    public List<Problem> located(String text, CaseFormat format) {
        Set<String> wanted = new HashSet<>();
        all.stream().filter(p -> p.line() == 0).forEach(p -> wanted.add(p.pointer()));
        Map<String, int[]> found = wanted.isEmpty() ? new HashMap<>() : Locator.locate(text, format, wanted);
        List<Problem> out = new ArrayList<>();
        for (Problem p : all) {
            int[] at = p.line() == 0 ? found.get(p.pointer()) : null;
            out.add(at == null ? p : p.at(at[0], at[1]));
        }
        out.sort(java.util.Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        if (left > 0) {
            out.add(new Problem(
                    Severity.ERROR,
                    "",
                    0,
                    0,
                    "a case with few slips",
                    left + " more problems that are not listed",
                    Optional.empty(),
                    "correct those listed and read the file again"));
        }
        return out;
    }
}
