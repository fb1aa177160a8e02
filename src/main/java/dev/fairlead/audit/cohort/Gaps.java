package dev.fairlead.audit.cohort;

import static dev.fairlead.model.Stage.ACTIVATION;
import static dev.fairlead.model.Stage.BENCH;
import static dev.fairlead.model.Stage.HOLDING;
import static dev.fairlead.model.Stage.INDICATION;
import static dev.fairlead.model.Stage.INSERTION;
import static dev.fairlead.model.Stage.READINESS;
import static dev.fairlead.model.Stage.RECORDS;

import java.util.List;

/** Facts that invented cases can lack, and the criterion that then waits for them. */
final class Gaps {
    private static final String PLANNED = "planned-force-fits";

    /** What only the beam model of the wire can tell; the total force is read on a gauge in all of these cases. */
    private static final String[] BY_BEAM_MODEL = {"no-permanent-set", "vertical-force"};

    /**
     * What one segment lacks can be told from the perimeter and the others: two gaps among them leave more open than
     * each alone.
     */
    private static final String SPACE = "space";

    static final List<PlantedGap> ALL = List.of(
            PlantedGap.of(RECORDS, "ratio-of-widths", "/teeth/13/width", "/teeth/23/width"),
            PlantedGap.of(RECORDS, "tooth-widths-plausible", "/teeth/41/width")
                    .also(INDICATION, "plan-meets-need")
                    .also(RECORDS, "antimeres-agree", "measurements-repeated", "ratio-of-widths")
                    .also(INDICATION, "advancement-needed", "shortage-within-reach", "prediction-agrees")
                    .when(c -> !Fault.reached(c).hasReached(HOLDING)),
            PlantedGap.of(RECORDS, "records-fresh", "/films/models"),
            PlantedGap.of(INDICATION, "incisor-inclination-after", "/plan/advanceLeft")
                    .also(INDICATION, "plan-meets-need", "midline-side-plan")
                    .also(
                            INDICATION,
                            "incisor-to-a-pog-after",
                            "inclination-relative-to-divergence",
                            "overbite-after",
                            "overjet-after")
                    .also(ACTIVATION, "fold-wire-left", "not-past-plan"),
            PlantedGap.of(INDICATION, "shortage-within-reach", "/space/incisors", "/space/perimeter")
                    .also(INDICATION, "plan-meets-need")
                    .in(SPACE)
                    .also(INDICATION, "advancement-needed")
                    .also(RECORDS, "space-adds-up", "measurements-repeated"),
            PlantedGap.of(BENCH, "fold-length-is-tube-length", "/hardware/left/length")
                    .also(BENCH, "blank-long-enough", "first-bend-offset")
                    .also(ACTIVATION, BY_BEAM_MODEL)
                    .alsoBeforeVisits(BENCH, PLANNED)
                    .also(ACTIVATION, BY_BEAM_MODEL),
            PlantedGap.of(BENCH, "bends-small", "/bench/left/bendRadius")
                    .also(ACTIVATION, BY_BEAM_MODEL)
                    .alsoBeforeVisits(BENCH, PLANNED)
                    .also(ACTIVATION, "fold-wire-left"),
            PlantedGap.of(BENCH, "arch-form-fits", "/bench/misfitRms", "/bench/misfitWorst", "/wire/formCanineWidth"),
            PlantedGap.of(BENCH, "shape-kept", "/bench/misfitRmsAfter"),
            PlantedGap.of(ACTIVATION, "stand-off-in-range", "{last}/left/standOff")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, BY_BEAM_MODEL),
            PlantedGap.of(ACTIVATION, "sides-balanced", "{last}/left/gapOpened")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, "fold-wire-left"),
            PlantedGap.of(ACTIVATION, "response-seen", "{last}/left/space")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, "not-past-plan")
                    .when(c -> c.visits().size() > 1),
            PlantedGap.of(ACTIVATION, "no-permanent-set", "/wire/proofStrength"),
            PlantedGap.of(ACTIVATION, "inclination-rechecked", "{last}/incisorAdvance", "{last}/inclinationRechecked")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, "not-past-plan")
                    .when(c -> c.visits().size() > 1),
            PlantedGap.of(ACTIVATION, "front-level", "{last}/frontOffLevel"),
            PlantedGap.of(ACTIVATION, "hygiene-at-visit", "{last}/plaque"),
            PlantedGap.of(RECORDS, "space-adds-up", "/space/perimeter").in(SPACE),
            PlantedGap.of(RECORDS, "panoramic-seen", "/films/ectopic"),
            PlantedGap.of(INDICATION, "prediction-agrees", "/plan/percentile"),
            PlantedGap.of(INDICATION, "permanent-incisors-erupted", "/teeth/32/state")
                    .also(HOLDING, "incisors-in-before-arch"),
            PlantedGap.of(INDICATION, "first-molars-erupted", "/teeth/36/state"),
            PlantedGap.of(INDICATION, "buccal-window-open", "/teeth/35/state"),
            PlantedGap.of(INDICATION, "eruption-path-clear", "/films/infraoccludedMolar"),
            PlantedGap.of(INDICATION, "plan-meets-need", "/arch/molarDepth")
                    .also(BENCH, "blank-long-enough", "first-bend-offset")
                    .also(ACTIVATION, BY_BEAM_MODEL)
                    .alsoBeforeVisits(BENCH, PLANNED),
            PlantedGap.of(INDICATION, "lower-brackets-clear", "/bite/biteOnBrackets"),
            PlantedGap.of(INDICATION, "medical-history-read", "/child/historyTaken"),
            PlantedGap.of(INDICATION, "habits-seen", "/mouth/habit"),
            PlantedGap.of(INDICATION, "advancement-needed", "/space/left", "/space/right")
                    .also(INDICATION, "shortage-within-reach")
                    .also(INDICATION, "plan-meets-need")
                    .also(ACTIVATION, "readings-agree")
                    .in(SPACE)
                    .also(RECORDS, "space-adds-up", "measurements-repeated"),
            PlantedGap.of(INDICATION, "incisor-inclination-before", "/headFilm/incisorMandibular")
                    .also(
                            INDICATION,
                            "incisor-inclination-after",
                            "inclination-relative-to-divergence",
                            "overbite-after")
                    .also(RECORDS, "measurements-repeated"),
            PlantedGap.of(INDICATION, "incisor-to-a-pog-after", "/headFilm/incisorToAPog"),
            PlantedGap.of(INDICATION, "inclination-relative-to-divergence", "/headFilm/mandibularPlane"),
            PlantedGap.of(INDICATION, "overjet-after", "/bite/overjet").also(INDICATION, "class-iii-caution"),
            PlantedGap.of(INDICATION, "overbite-after", "/bite/overbite"),
            PlantedGap.of(INDICATION, "class-iii-caution", "/headFilm/anb"),
            PlantedGap.of(INDICATION, "gingiva-thickness", "/teeth/41/gingivaThickness"),
            PlantedGap.of(INDICATION, "keratinised-width", "/teeth/42/keratinised"),
            PlantedGap.of(INDICATION, "recession-absent", "/teeth/31/recession"),
            PlantedGap.of(INDICATION, "bone-and-roots", "/films/shortRoots"),
            PlantedGap.of(INDICATION, "hygiene-and-caries", "/mouth/plaqueScore"),
            PlantedGap.of(INDICATION, "alloy-sensitivity", "/mouth/nickelSensitivity"),
            PlantedGap.of(INDICATION, "second-molar-path", "/films/secondMolarAngleLeft"),
            PlantedGap.of(INDICATION, "midline-side-plan", "/bite/lowerMidline"),
            PlantedGap.of(INDICATION, "consent-recorded", "/consent/stabilityExplained"),
            PlantedGap.of(READINESS, "alignment-before-steel", "/hardware/flexibleWireFirst"),
            PlantedGap.of(READINESS, "slot-takes-wire", "/hardware/brackets/31/slot"),
            PlantedGap.of(READINESS, "tube-takes-wire", "/hardware/right/height"),
            PlantedGap.of(READINESS, "brackets-on", "/hardware/brackets/41/loose"),
            PlantedGap.of(READINESS, "molar-bands-sound", "/hardware/left/cemented"),
            PlantedGap.of(READINESS, "working-model", "/hardware/modelOverBands"),
            PlantedGap.of(READINESS, "rest-of-arch-free", "/hardware/buccalSegmentsFree"),
            PlantedGap.of(BENCH, "wire-is-as-planned", "/wire/section")
                    .alsoBeforeVisits(BENCH, PLANNED)
                    .also(ACTIVATION, BY_BEAM_MODEL),
            PlantedGap.of(BENCH, "midline-marked", "/bench/midlineMarked"),
            PlantedGap.of(BENCH, "first-bend-offset", "/bench/right/firstBendOffset"),
            PlantedGap.of(BENCH, "bends-square", "/bench/left/outOfSquare"),
            PlantedGap.of(BENCH, "legs-parallel", "/bench/right/legsOutOfParallel"),
            PlantedGap.of(BENCH, "exit-clears-gingiva", "/bench/left/clearGingiva"),
            PlantedGap.of(BENCH, "other-side-marked-seated", "/bench/otherSideMarkedSeated"),
            PlantedGap.of(BENCH, "sides-match", "/bench/left/firstMark"),
            PlantedGap.of(BENCH, "passive-on-model", "/bench/passiveGap"),
            PlantedGap.of(BENCH, "few-rebends", "/bench/rebends"),
            PlantedGap.of(BENCH, "blank-long-enough", "/wire/blankLength"),
            PlantedGap.of(INSERTION, "distal-ends-flush", "/insertion/left/endProud"),
            PlantedGap.of(INSERTION, "cut-end-caught", "/insertion/right/cutEndCaught"),
            PlantedGap.of(INSERTION, "no-cinch-needed", "/insertion/left/bentBehind"),
            PlantedGap.of(INSERTION, "gingival-clearance", "/insertion/gingivalClearance"),
            PlantedGap.of(INSERTION, "cheek-clearance", "/insertion/right/cheekSore"),
            PlantedGap.of(INSERTION, "stop-seated", "/insertion/left/stopGap"),
            PlantedGap.of(INSERTION, "passive-in-mouth", "/insertion/passiveGap"),
            PlantedGap.of(INSERTION, "all-tied", "/insertion/bracketsTied"),
            PlantedGap.of(INSERTION, "eye-and-airway-protection", "/insertion/airwayGuard"),
            PlantedGap.of(INSERTION, "instructions-given", "/insertion/instructionsGiven"),
            PlantedGap.of(ACTIVATION, "visit-interval", "/visits/1/date")
                    .also(RECORDS, "readings-agree")
                    .when(c -> c.visits().size() > 1),
            PlantedGap.of(ACTIVATION, "legs-parallel-after", "{last}/right/legsOutOfParallel"),
            PlantedGap.of(ACTIVATION, "molars-hold", "{last}/left/molarDistal"),
            PlantedGap.of(ACTIVATION, "tissue-and-root-signs", "{last}/lastingPain"),
            PlantedGap.of(HOLDING, "space-target-reached", "/holding/spaceLeft")
                    .also(HOLDING, "target-before-holding-arch", "not-overdone"),
            PlantedGap.of(HOLDING, "holding-before-debond", "/holding/cemented")
                    .also(HOLDING, "holding-arch-not-too-long"),
            PlantedGap.of(HOLDING, "incisors-aligned", "/holding/contacts/31-32"),
            PlantedGap.of(HOLDING, "inclination-at-end", "/holding/incisorMandibular"),
            PlantedGap.of(HOLDING, "holding-arch-passive", "/holding/passive"),
            PlantedGap.of(HOLDING, "second-molars-watched", "/holding/secondMolarRecall"),
            PlantedGap.of(HOLDING, "recall-planned", "/holding/removalPoint"));

    private Gaps() {}
}
