package dev.fairlead.audit.cohort;

import static dev.fairlead.audit.cohort.Draws.tenth;

import dev.fairlead.model.Case;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Faults of readiness, bench and insertion. */
final class WireFaults {
    private static final List<Fault> READINESS = List.of(
            ready(
                            "alignment-before-steel",
                            "alignment",
                            "steel before the incisors are aligned",
                            w -> w.draws().one(new Object[] {"/hardware/flexibleWireFirst", false}, new Object[] {
                                "/hardware/contactsNow/42-41", w.draws().tenth(1.3, 2.4)
                            }))
                    .at(0.06),
            ready("slot-takes-wire", "slots", "a slot too small for the wire", w ->
                    new Object[] {"/hardware/brackets/41/slot", 0.457}),
            ready("tube-takes-wire", Fault.STEEL, "a tube too small for the wire", w ->
                    new Object[] {"/hardware/left/height", 0.51}),
            ready(
                            "brackets-on",
                            "brackets",
                            "a bracket loose or missing",
                            w -> w.draws().one(new Object[] {"/hardware/brackets/42/loose", true}, new Object[] {
                                "/hardware/brackets/32/bonded", false
                            }))
                    .at(0.04),
            ready(
                    "molar-bands-sound",
                    "bands",
                    "a band loose, or no hook",
                    w -> w.draws()
                            .one(
                                    new Object[] {"/hardware/right/loose", true},
                                    new Object[] {"/hardware/right/cemented", false},
                                    new Object[] {"/hardware/left/hook", false})),
            ready("working-model", "working-model", "no model over the bands", w ->
                    new Object[] {"/hardware/modelOverBands", false}),
            ready("rest-of-arch-free", "buccal-segments", "another appliance binds the buccal segments", w ->
                    new Object[] {"/hardware/buccalSegmentsFree", false}));

    private static final List<Fault> BENCH = List.of(
            bench("wire-is-as-planned", Fault.STEEL, "0.018 in wire taken for 0.020 in", w ->
                            new Object[] {"/wire/size", 0.457})
                    .when(WireFaults::underWay),
            bench("arch-form-fits", "arch-form", "a preform of the wrong size", w -> new Object[] {
                "/bench/misfitRms",
                w.draws().tenth(1.4, 2),
                "/bench/misfitWorst",
                w.draws().tenth(3, 4),
                "/wire/formMolarWidth",
                w.value("/wire/formMolarWidth") + 5,
                "/wire/formCanineWidth",
                w.value("/wire/formCanineWidth") + 3
            }),
            bench("midline-marked", "midline-mark", "midline not marked", w ->
                    new Object[] {"/bench/midlineMarked", false}),
            bench("first-bend-offset", "marks", "first bends marked too far back on both sides", w -> new Object[] {
                "/bench/left/firstBendOffset",
                3.4,
                "/bench/right/firstBendOffset",
                3.5,
                "/bench/left/firstMark",
                w.value("/bench/left/firstMark") + 1.4,
                "/bench/right/firstMark",
                w.value("/bench/right/firstMark") + 1.4
            }),
            bench(
                    "fold-length-is-tube-length",
                    Fault.STEEL,
                    "folds longer than the tubes",
                    w -> opened(w, 1.32, "/bench/left/length", 4.2, "/bench/right/length", 4.3)),
            bench(
                            "bends-small",
                            Fault.STEEL,
                            "bends made too far down the beak",
                            w -> opened(w, 0.6, "/bench/left/bendRadius", 1.45, "/bench/right/bendRadius", 1.45))
                    .when(WireFaults::underWay),
            bench("bends-square", "square", "a fold out of square", w ->
                    new Object[] {"/bench/left/outOfSquare", w.draws().whole(10, 20)}),
            bench("legs-parallel", "legs", "legs of a fold not parallel", w ->
                    new Object[] {"/bench/right/legsOutOfParallel", w.draws().whole(10, 20)}),
            bench("exit-clears-gingiva", "clearance", "a fold that digs into gingiva or cheek", w ->
                    new Object[] {w.draws().one("/bench/left/clearGingiva", "/bench/right/clearCheek"), 0.3}),
            bench("other-side-marked-seated", "second-side", "second side marked with the first not seated", w ->
                    new Object[] {"/bench/otherSideMarkedSeated", false}),
            bench("sides-match", "marks", "one side marked 2 mm further back", w ->
                    new Object[] {"/bench/left/firstMark", w.value("/bench/left/firstMark") + 2}),
            bench("shape-kept", "shape", "the arch lost its shape in bending", w -> new Object[] {
                "/bench/misfitRmsAfter",
                w.draws().tenth(1.4, 2),
                "/bench/misfitWorstAfter",
                w.draws().tenth(3, 4)
            }),
            bench("passive-on-model", "passive", "the wire is not passive on the model", w ->
                    new Object[] {"/bench/passiveGap", w.draws().tenth(0.9, 2)}),
            bench("planned-activation-fits", "planned", "activations planned too close together", w ->
                    new Object[] {"/plan/intervalWeeks", 2}),
            bench("planned-force-fits", Fault.STEEL, "a wire too soft for its plan", w ->
                            new Object[] {"/wire/proofStrength", 300})
                    .when(c -> c.visits().isEmpty() && c.plan().standOff().value() > 0.9),
            bench("few-rebends", "rebends", "the same spot bent back and forth", w ->
                    new Object[] {"/bench/rebends", w.draws().whole(3, 5)}),
            bench("blank-long-enough", "blank", "a blank too short", w ->
                    new Object[] {"/wire/blankLength", w.draws().whole(84, 90)}));

    private static final List<Fault> INSERTION = List.of(
            chair("distal-ends-flush", "ends", "an end left long", w ->
                            new Object[] {"/insertion/left/endProud", w.draws().tenth(1, 2.5)})
                    .at(0.04),
            chair("cut-end-caught", "cut-end", "a cut end not accounted for", w ->
                    new Object[] {"/insertion/right/cutEndCaught", false}),
            chair("no-cinch-needed", "cinch", "an end bent behind the tube", w ->
                    new Object[] {"/insertion/right/bentBehind", true}),
            chair(
                    "gingival-clearance",
                    "wire-gingiva",
                    "the wire touches or blanches the gingiva",
                    w -> w.draws().one(new Object[] {"/insertion/gingivalClearance", 0.1}, new Object[] {
                        "/insertion/blanching", true
                    })),
            chair("cheek-clearance", "cheek", "a fold digs into the cheek", w ->
                    new Object[] {"/insertion/left/cheekSore", true}),
            chair(
                    "stop-seated",
                    "stop",
                    "a fold stands off its tube, or beside the hook",
                    w -> w.draws().one(new Object[] {"/insertion/left/stopGap", 1.0}, new Object[] {
                        "/insertion/left/underHook", false
                    })),
            chair("passive-in-mouth", "passive-mouth", "the wire is not passive in the mouth", w ->
                    new Object[] {"/insertion/passiveGap", tenth(w.draws().uniform(0.9, 2))}),
            chair("all-tied", "ties", "a bracket left untied", w ->
                    new Object[] {"/insertion/bracketsTied", w.draws().whole(2, 3)}),
            chair("eye-and-airway-protection", "protection", "cut without eye protection or airway guard", w ->
                            new Object[] {w.draws().one("/insertion/eyeProtection", "/insertion/airwayGuard"), false})
                    .at(0.04),
            chair("instructions-given", "instructions", "the guardian was told nothing", w ->
                    new Object[] {"/insertion/instructionsGiven", false}));

    static final List<Fault> ALL =
            Stream.of(READINESS, BENCH, INSERTION).flatMap(List::stream).toList();

    private WireFaults() {}

    /** With a visit on record the planned force counts no longer: before, a softer wire may push too little. */
    private static boolean underWay(Case c) {
        return !c.visits().isEmpty();
    }

    /**
     * Larger bends travel further for the same gap, longer legs less far: the gaps are other by as much, so that the
     * front moves as planned.
     */
    private static Object[] opened(Fault.Work w, double times, Object... folds) {
        List<Object> changes = new ArrayList<>(List.of(folds));
        for (int i = 0; i < w.made().visits().size(); i++) {
            for (String side : List.of("/left/gapOpened", "/right/gapOpened")) {
                changes.add("/visits/" + i + side);
                changes.add(tenth(times * w.value("/visits/" + i + side)));
            }
        }
        return changes.toArray();
    }

    private static Fault ready(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.READINESS, area, says, changes);
    }

    private static Fault bench(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.BENCH, area, says, changes);
    }

    private static Fault chair(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.INSERTION, area, says, changes);
    }
}
