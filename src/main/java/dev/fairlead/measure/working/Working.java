package dev.fairlead.measure.working;

import dev.fairlead.model.Measured;
import java.util.List;

/**
 * One worked number: what it is, how it was worked out, from what.
 *
 * @param id name by which it is known, such as {@code space.required.left}
 * @param group heading under which it is shown, such as "Space"
 * @param title what it is, for people
 * @param value the result with unit and error, or what is missing
 * @param formula the formula in symbols or words; empty when the value is as measured
 * @param substituted the formula with this case's values; empty when something is missing
 * @param sources keys of the bibliography
 * @param note what a reader must know to take it rightly; empty when nothing
 */
public record Working(
        String id,
        String group,
        String title,
        Measured value,
        String formula,
        String substituted,
        List<String> sources,
        String note) {
    public Working {
        sources = List.copyOf(sources);
        substituted = value.known() ? substituted : "";
    }

    /** A working with its sources last. */
    public static Working of(
            String id,
            String group,
            String title,
            Measured value,
            String formula,
            String substituted,
            String note,
            String... sources) {
        return new Working(id, group, title, value, formula, substituted, List.of(sources), note);
    }
}
