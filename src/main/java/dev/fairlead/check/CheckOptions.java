package dev.fairlead.check;

import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How a case is to be checked.
 *
 * @param date the day for which it is judged; empty for the day that the case names
 * @param stage judge as if the case stood at this stage; empty for the stage that it names
 * @param workings whether the report carries the worked numbers
 */
public record CheckOptions(Optional<LocalDate> date, Optional<Stage> stage, boolean workings) {
    /** The case's own day and stage, with worked numbers. */
    public static final CheckOptions USUAL = new CheckOptions(Optional.empty(), Optional.empty(), true);

    public CheckOptions on(LocalDate day) {
        return new CheckOptions(Optional.of(day), stage, workings);
    }

    public CheckOptions at(Stage reached) {
        return new CheckOptions(date, Optional.of(reached), workings);
    }

    /** The verdicts alone, for many cases. */
    public CheckOptions withoutWorkings() {
        return new CheckOptions(date, stage, false);
    }
}
