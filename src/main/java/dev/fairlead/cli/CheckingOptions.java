package dev.fairlead.cli;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Doubting;
import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options on the day and stage for which many cases are judged. */
final class CheckingOptions {
    @Option(
            names = "--stage",
            paramLabel = "STAGE",
            converter = StageWord.class,
            completionCandidates = StageWord.class,
            description = "Judge as if every case stood at this stage: ${COMPLETION-CANDIDATES}.")
    private Stage stage;

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "The day for which to judge, such as 2026-10-01; else the day that each case names.")
    private LocalDate date;

    @Option(
            names = "--without-forces",
            description =
                    "Leave the beam model of the wire out, for very many cases: much quicker, but what it alone can tell ends as not assessed.")
    private boolean withoutForces;

    CheckOptions options() {
        return new CheckOptions(
                Optional.ofNullable(date), Optional.ofNullable(stage), false, Doubting.NONE, !withoutForces);
    }

    boolean forces() {
        return !withoutForces;
    }

    String day() {
        return date == null ? "" : date.toString();
    }

    String stage() {
        return stage == null ? "" : stage.word();
    }
}
