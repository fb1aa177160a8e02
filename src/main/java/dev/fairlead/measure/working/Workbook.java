package dev.fairlead.measure.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Collects the working while a case is measured; an unwanted workbook costs nothing (audits of many cases). */
public final class Workbook {
    private static final Workbook NONE = new Workbook(false);

    private final boolean wanted;
    private final List<Working> workings = new ArrayList<>();

    private Workbook(boolean wanted) {
        this.wanted = wanted;
    }

    /** A workbook that keeps every working. */
    public static Workbook kept() {
        return new Workbook(true);
    }

    /** A workbook that keeps nothing and builds no text. */
    public static Workbook none() {
        return NONE;
    }

    /** True when workings are kept; what only serves them need not be worked out otherwise. */
    public boolean wanted() {
        return wanted;
    }

    /** Notes a working; the supplier is asked only when workings are wanted. */
    public void add(Supplier<Working> working) {
        if (wanted) {
            workings.add(working.get());
        }
    }

    /** All workings, those of one group together, in the order in which groups and workings were begun. */
    public List<Working> workings() {
        if (!wanted) {
            return List.of();
        }
        Map<String, List<Working>> groups = new LinkedHashMap<>();
        workings.forEach(
                w -> groups.computeIfAbsent(w.group(), g -> new ArrayList<>()).add(w));
        return groups.values().stream().flatMap(List::stream).toList();
    }
}
