package dev.fairlead.measure;

import dev.fairlead.model.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Collects the working while a case is measured; an unwanted workbook costs nothing (audits of many cases). */
public final class Workbook {
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
        return new Workbook(false);
    }

    /** Notes a working; the supplier is asked only when workings are wanted. */
    public void add(Supplier<Working> working) {
        if (wanted) {
            workings.add(working.get());
        }
    }

    /** Notes a working and hands its value on. */
    public Measured add(Measured value, java.util.function.Function<Measured, Working> working) {
        if (wanted) {
            workings.add(working.apply(value));
        }
        return value;
    }

    public List<Working> workings() {
        return List.copyOf(workings);
    }
}
