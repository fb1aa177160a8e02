package dev.fairlead.audit.cohort;

import static dev.fairlead.audit.cohort.Draws.tenth;

import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import java.util.List;
import java.util.function.Function;

/** Faults in the records themselves. */
final class RecordFaults {
    static final List<Fault> ALL = List.of(
            fault("tooth-widths-plausible", "molar-widths", "first molars wider than any", w ->
                    new Object[] {"/teeth/36/width", 13.9, "/teeth/46/width", 13.9}),
            fault("antimeres-agree", "molar-widths", "first molars read 0.9 mm apart", w -> new Object[] {
                "/teeth/46/width", tenth(w.value("/teeth/36/width") + (w.value("/teeth/36/width") > 10.8 ? -0.9 : 0.9))
            }),
            fault(
                    "ratio-of-widths",
                    "upper-widths",
                    "upper front teeth too narrow for the lower",
                    RecordFaults::narrowUppers),
            fault("records-fresh", "record-dates", "models nine months old when treatment began", w -> new Object[] {
                        "/films/models",
                        (w.made().visits().isEmpty()
                                        ? w.made().date()
                                        : w.made().visits().get(0).date())
                                .get()
                                .minusDays(275)
                    })
                    .at(0.05),
            fault(
                    "measurements-repeated",
                    "space",
                    "second readings of all segments far from the first",
                    w -> new Object[] {
                        "/space/left", apart(w, "/space/left"), "/space/right", apart(w, "/space/right"),
                        "/space/incisors", apart(w, "/space/incisors"), "/space/perimeter", apart(w, "/space/perimeter")
                    }),
            fault("readings-agree", "visit-readings", "an advance that the space gained contradicts", w ->
                            new Object[] {"/visits/0/incisorAdvance", 2.6})
                    .when(c -> c.visits().size() == 1 && c.plan().advanceLeft().value() >= 2.5)
                    .at(0.1),
            fault("space-adds-up", "space", "perimeter 1.8 mm longer than its parts", w -> new Object[] {
                "/space/perimeter", w.value("/space/left") + w.value("/space/right") + w.value("/space/incisors") + 1.8
            }),
            fault(
                            "panoramic-seen",
                            "panoramic",
                            "the panoramic film was not read, or shows a tooth that is missing, too many or astray",
                            w -> w.draws()
                                    .one(
                                            new Object[] {"/films/panoramicRead", false},
                                            new Object[] {"/films/missingTeeth", true},
                                            new Object[] {"/films/supernumerary", true},
                                            new Object[] {"/films/ectopic", true}))
                    .at(0.04));

    private RecordFaults() {}

    private static Fault fault(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.RECORDS, area, says, changes);
    }

    private static Object[] narrowUppers(Fault.Work w) {
        int[] teeth = {13, 12, 11, 21, 22, 23};
        Object[] changes = new Object[2 * teeth.length];
        for (int i = 0; i < teeth.length; i++) {
            changes[2 * i] = "/teeth/" + teeth[i] + "/width";
            changes[2 * i + 1] = tenth(0.92 * w.value("/teeth/" + teeth[i] + "/width"));
        }
        return changes;
    }

    /** Two readings 1.6 mm apart around the value that was there. */
    private static double[] apart(Fault.Work w, String pointer) {
        return new double[] {w.value(pointer) + 0.8, w.value(pointer) - 0.8};
    }

    /**
     * True while no steel is in: the space before treatment can still be changed without contradicting what visits
     * show.
     */
    static boolean untouched(Case c) {
        return c.visits().isEmpty();
    }
}
