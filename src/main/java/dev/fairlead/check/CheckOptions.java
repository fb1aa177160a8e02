package dev.fairlead.check;

import dev.fairlead.findings.Reach;
import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How a case is to be checked.
 *
 * @param date the day for which it is judged; empty for the latest that the case records
 * @param stage the last stage to judge; empty for the furthest that the case names or holds facts of
 * @param workings whether the report carries the worked numbers
 * @param doubting how chances of another outcome are worked out
 * @param forces whether the beam model of the wire is solved, from the bench on
 */
public record CheckOptions(
        Optional<LocalDate> date, Optional<Stage> stage, boolean workings, Doubting doubting, boolean forces) {
    /** With the beam model of the wire. */
    public CheckOptions(Optional<LocalDate> date, Optional<Stage> stage, boolean workings, Doubting doubting) {
        this(date, stage, workings, doubting, true);
    }

    /**
     * The case's own day and stage, with worked numbers and with chances by first-order propagation, corrected by
     * draws.
     */
    public static final CheckOptions USUAL =
            new CheckOptions(Optional.empty(), Optional.empty(), true, Doubting.CORRECTED, true);

    /** How far a case is judged by these options, and for which day. */
    public Reach reach(Case c) {
        return Reach.of(c, stage, date);
    }

    public CheckOptions on(LocalDate day) {
        return new CheckOptions(Optional.of(day), stage, workings, doubting, forces);
    }

    public CheckOptions at(Stage reached) {
        return new CheckOptions(date, Optional.of(reached), workings, doubting, forces);
    }

    /** The verdicts alone, for many cases: no worked numbers, no chances. */
    public CheckOptions withoutWorkings() {
        return new CheckOptions(date, stage, false, Doubting.NONE, forces);
    }

    public CheckOptions with(Doubting chances) {
        return new CheckOptions(date, stage, workings, chances, forces);
    }

    /**
     * Without the beam model of the wire, which takes most of the time: what it alone can tell then ends as not
     * assessed.
     */
    public CheckOptions withoutForces() {
        return new CheckOptions(date, stage, workings, doubting, false);
    }
}
