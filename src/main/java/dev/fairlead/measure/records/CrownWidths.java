package dev.fairlead.measure.records;

import dev.fairlead.measure.working.Resource;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.util.List;

/** Published mean crown widths with their spread; figures and sources stand in {@code crown-widths.txt}. */
public final class CrownWidths {
    private static final Row[] BY_NUMBER = new Row[100];

    static {
        for (Resource.Entry e : Resource.read(CrownWidths.class, "crown-widths.txt")) {
            Row row = new Row(
                    e.text("arch"),
                    e.flag("primary"),
                    (int) e.number("position"),
                    e.number("mean"),
                    e.number("sd"),
                    e.texts("sources"),
                    e.text("note"));
            boolean lower = row.arch.equals("lower");
            int first = (row.primary ? 5 : 1) + (lower ? 2 : 0);
            BY_NUMBER[first * 10 + row.position] = row;
            BY_NUMBER[(first + 1) * 10 + row.position] = row;
        }
    }

    private CrownWidths() {}

    /**
     * One kind of tooth.
     *
     * @param arch upper or lower
     * @param mean mean mesiodistal width, mm
     * @param sd spread between children, mm
     */
    public record Row(
            String arch, boolean primary, int position, double mean, double sd, List<String> sources, String note) {
        public Row {
            sources = List.copyOf(sources);
        }
    }

    /** True when widths of this tooth were published; third molars have none here. */
    public static boolean has(Tooth tooth) {
        return BY_NUMBER[tooth.number()] != null;
    }

    /** The row of a tooth. */
    public static Row of(Tooth tooth) {
        Row row = BY_NUMBER[tooth.number()];
        if (row == null) {
            throw new IllegalArgumentException("no published width of tooth " + tooth);
        }
        return row;
    }

    /** Distance of a width from the mean of its tooth in standard deviations, never negative. */
    public static Measured deviation(Tooth tooth, Measured width) {
        if (!width.known()) {
            return width;
        }
        Row row = of(tooth);
        return width.plus(-row.mean).abs().chain(Math.abs(width.value() - row.mean) / row.sd, 1 / row.sd, Unit.RATIO);
    }
}
