package dev.fairlead.findings;

import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which case was checked, how far, and for which day.
 *
 * @param id the pseudonym of the case
 * @param hash SHA-256 of its content; empty for a report that does not show it
 * @param reach how far it was judged
 * @param beyond warnings in the stages that were left out; empty when none was left out
 */
public record Subject(String id, String hash, Reach reach, OptionalInt beyond) {
    /** The day for which it was judged; empty when neither the case nor the call names one. */
    public Optional<LocalDate> date() {
        return reach.day();
    }

    /** Where stage or day that were judged differ from what the case says; empty when they agree. */
    public String note() {
        List<String> notes = new ArrayList<>();
        Stage recorded = reach.recorded();
        String stated = reach.stated().map(Stage::word).orElse("");
        if (reach.cut()) {
            Stage first = Stage.values()[reach.judged().ordinal() + 1];
            notes.add("Judged only as far as " + reach.judged().word() + ", as asked: "
                    + (first == reach.full()
                            ? first.word() + " is"
                            : first.word() + " to " + reach.full().word() + " are")
                    + " left out, " + warnings() + ".");
        } else if (stated.isEmpty()) {
            notes.add("The case names no stage; facts are recorded as far as " + recorded.word() + ".");
        } else if (reach.stated().get() != recorded) {
            notes.add("The case says " + stated + "; "
                    + (recorded.hasReached(reach.stated().get())
                            ? "facts of " + recorded.word() + " are recorded, so they are judged too."
                            : "nothing is recorded beyond " + recorded.word() + "."));
        }
        if (!reach.day().equals(reach.dated())) {
            notes.add(
                    (reach.dated().isPresent() ? "It is dated " + reach.dated().get() : "It has no date of its own")
                            + "; judged for the last recorded day.");
        }
        return String.join(" ", notes);
    }

    private String warnings() {
        int n = beyond.orElse(0);
        return n == 0 ? "without a warning there" : n == 1 ? "with 1 warning there" : "with " + n + " warnings there";
    }
}
