package dev.fairlead.report.summary;

import dev.fairlead.model.Stage;
import java.util.Locale;
import java.util.Map;

/** The stage whose criteria the worked numbers under a heading belong to. */
public final class StageOfWork {
    private static final Map<String, Stage> STAGES = Map.of(
            "records", Stage.RECORDS,
            "space", Stage.INDICATION,
            "incisor position", Stage.INDICATION,
            "arch form", Stage.INDICATION,
            "wire", Stage.BENCH,
            "activation", Stage.ACTIVATION,
            "schedule", Stage.ACTIVATION,
            "holding", Stage.HOLDING);

    private StageOfWork() {}

    /** The stage of a heading; throws for a heading that no working bears. */
    public static Stage of(String group) {
        Stage stage = STAGES.get(group.toLowerCase(Locale.ROOT));
        if (stage == null) {
            throw new IllegalArgumentException("no stage is known for worked numbers under " + group);
        }
        return stage;
    }
}
