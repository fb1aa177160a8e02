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

    static final List<Gap> ALL = List.of(
            Gap.of(RECORDS, "ratio-of-widths", "/teeth/13/width", "/teeth/23/width"),
            Gap.of(RECORDS, "tooth-widths-plausible", "/teeth/41/width")
                    .also(INDICATION, "plan-meets-need")
                    .also(RECORDS, "antimeres-agree", "measurements-repeated", "ratio-of-widths")
                    .also(INDICATION, "advancement-needed", "shortage-within-reach", "prediction-agrees")
                    .when(c -> !Fault.reached(c).hasReached(HOLDING)),
            Gap.of(RECORDS, "records-fresh", "/films/models"),
            Gap.of(INDICATION, "incisor-inclination-after", "/plan/advanceLeft")
                    .also(INDICATION, "plan-meets-need", "midline-side-plan")
                    .also(
                            INDICATION,
                            "incisor-to-a-pog-after",
                            "inclination-relative-to-divergence",
                            "overbite-after",
                            "overjet-after")
                    .also(ACTIVATION, "fold-wire-left", "not-past-plan"),
            Gap.of(INDICATION, "shortage-within-reach", "/space/incisors", "/space/perimeter")
                    .also(INDICATION, "plan-meets-need")
                    .in(SPACE)
                    .also(INDICATION, "advancement-needed")
                    .also(RECORDS, "space-adds-up", "measurements-repeated"),
            Gap.of(BENCH, "fold-length-is-tube-length", "/hardware/left/length")
                    .also(BENCH, "blank-long-enough", "first-bend-offset")
                    .also(ACTIVATION, BY_BEAM_MODEL)
                    .alsoBeforeVisits(BENCH, PLANNED)
                    .also(ACTIVATION, BY_BEAM_MODEL),
            Gap.of(BENCH, "bends-small", "/bench/left/bendRadius")
                    .also(ACTIVATION, BY_BEAM_MODEL)
                    .alsoBeforeVisits(BENCH, PLANNED)
                    .also(ACTIVATION, "fold-wire-left"),
            Gap.of(BENCH, "arch-form-fits", "/bench/misfitRms", "/bench/misfitWorst", "/wire/formCanineWidth"),
            Gap.of(BENCH, "shape-kept", "/bench/misfitRmsAfter"),
            Gap.of(ACTIVATION, "stand-off-in-range", "{last}/left/standOff")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, BY_BEAM_MODEL),
            Gap.of(ACTIVATION, "sides-balanced", "{last}/left/gapOpened")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, "fold-wire-left"),
            Gap.of(ACTIVATION, "response-seen", "{last}/left/space")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, "not-past-plan")
                    .when(c -> c.visits().size() > 1),
            Gap.of(ACTIVATION, "no-permanent-set", "/wire/proofStrength"),
            Gap.of(ACTIVATION, "inclination-rechecked", "{last}/incisorAdvance", "{last}/inclinationRechecked")
                    .also(RECORDS, "readings-agree")
                    .also(ACTIVATION, "not-past-plan")
                    .when(c -> c.visits().size() > 1),
            Gap.of(ACTIVATION, "front-level", "{last}/frontOffLevel"),
            Gap.of(ACTIVATION, "hygiene-at-visit", "{last}/plaque"),
            Gap.of(RECORDS, "space-adds-up", "/space/perimeter").in(SPACE),
            Gap.of(RECORDS, "panoramic-seen", "/films/ectopic"),
            Gap.of(INDICATION, "prediction-agrees", "/plan/percentile"),
            Gap.of(INDICATION, "permanent-incisors-erupted", "/teeth/32/state")
                    .also(HOLDING, "incisors-in-before-arch"),
            Gap.of(INDICATION, "first-molars-erupted", "/teeth/36/state"),
            Gap.of(INDICATION, "buccal-window-open", "/teeth/35/state"),
            Gap.of(INDICATION, "eruption-path-clear", "/films/infraoccludedMolar"),
            Gap.of(INDICATION, "plan-meets-need", "/arch/molarDepth")
                    .also(BENCH, "blank-long-enough", "first-bend-offset")
                    .also(ACTIVATION, BY_BEAM_MODEL)
                    .alsoBeforeVisits(BENCH, PLANNED),
            Gap.of(INDICATION, "lower-brackets-clear", "/bite/biteOnBrackets"),
            Gap.of(INDICATION, "medical-history-read", "/child/historyTaken"),
            Gap.of(INDICATION, "habits-seen", "/mouth/habit"),
            Gap.of(INDICATION, "advancement-needed", "/space/left", "/space/right")
                    .also(INDICATION, "shortage-within-reach")
                    .also(INDICATION, "plan-meets-need")
                    .also(ACTIVATION, "readings-agree")
                    .in(SPACE)
                    .also(RECORDS, "space-adds-up", "measurements-repeated"),
            Gap.of(INDICATION, "incisor-inclination-before", "/headFilm/incisorMandibular")
                    .also(
                            INDICATION,
                            "incisor-inclination-after",
                            "inclination-relative-to-divergence",
                            "overbite-after")
                    .also(RECORDS, "measurements-repeated"),
            Gap.of(INDICATION, "incisor-to-a-pog-after", "/headFilm/incisorToAPog"),
            Gap.of(INDICATION, "inclination-relative-to-divergence", "/headFilm/mandibularPlane"),
            Gap.of(INDICATION, "overjet-after", "/bite/overjet").also(INDICATION, "class-iii-caution"),
            Gap.of(INDICATION, "overbite-after", "/bite/overbite"),
            Gap.of(INDICATION, "class-iii-caution", "/headFilm/anb"),
            Gap.of(INDICATION, "gingiva-thickness", "/teeth/41/gingivaThickness"),
            Gap.of(INDICATION, "keratinised-width", "/teeth/42/keratinised"),
            Gap.of(INDICATION, "recession-absent", "/teeth/31/recession"),
            Gap.of(INDICATION, "bone-and-roots", "/films/shortRoots"),
            Gap.of(INDICATION, "hygiene-and-caries", "/mouth/plaqueScore"),
            Gap.of(INDICATION, "alloy-sensitivity", "/mouth/nickelSensitivity"),
            Gap.of(INDICATION, "second-molar-path", "/films/secondMolarAngleLeft"),
            Gap.of(INDICATION, "midline-side-plan", "/bite/lowerMidline"),
            Gap.of(INDICATION, "consent-recorded", "/consent/stabilityExplained"),
            Gap.of(READINESS, "alignment-before-steel", "/hardware/flexibleWireFirst"),
            Gap.of(READINESS, "slot-takes-wire", "/hardware/brackets/31/slot"),
            Gap.of(READINESS, "tube-takes-wire", "/hardware/right/height"),
            Gap.of(READINESS, "brackets-on", "/hardware/brackets/41/loose"),
            Gap.of(READINESS, "molar-bands-sound", "/hardware/left/cemented"),
            Gap.of(READINESS, "working-model", "/hardware/modelOverBands"),
            Gap.of(READINESS, "rest-of-arch-free", "/hardware/buccalSegmentsFree"),
            Gap.of(BENCH, "wire-is-as-planned", "/wire/section")
                    .alsoBeforeVisits(BENCH, PLANNED)
                    .also(ACTIVATION, BY_BEAM_MODEL),
            Gap.of(BENCH, "midline-marked", "/bench/midlineMarked"),
            Gap.of(BENCH, "first-bend-offset", "/bench/right/firstBendOffset"),
            Gap.of(BENCH, "bends-square", "/bench/left/outOfSquare"),
            Gap.of(BENCH, "legs-parallel", "/bench/right/legsOutOfParallel"),
            Gap.of(BENCH, "exit-clears-gingiva", "/bench/left/clearGingiva"),
            Gap.of(BENCH, "other-side-marked-seated", "/bench/otherSideMarkedSeated"),
            Gap.of(BENCH, "sides-match", "/bench/left/firstMark"),
            Gap.of(BENCH, "passive-on-model", "/bench/passiveGap"),
            Gap.of(BENCH, "few-rebends", "/bench/rebends"),
            Gap.of(BENCH, "blank-long-enough", "/wire/blankLength"),
            Gap.of(INSERTION, "distal-ends-flush", "/insertion/left/endProud"),
            Gap.of(INSERTION, "cut-end-caught", "/insertion/right/cutEndCaught"),
            Gap.of(INSERTION, "no-cinch-needed", "/insertion/left/bentBehind"),
            Gap.of(INSERTION, "gingival-clearance", "/insertion/gingivalClearance"),
            Gap.of(INSERTION, "cheek-clearance", "/insertion/right/cheekSore"),
            Gap.of(INSERTION, "stop-seated", "/insertion/left/stopGap"),
            Gap.of(INSERTION, "passive-in-mouth", "/insertion/passiveGap"),
            Gap.of(INSERTION, "all-tied", "/insertion/bracketsTied"),
            Gap.of(INSERTION, "eye-and-airway-protection", "/insertion/airwayGuard"),
            Gap.of(INSERTION, "instructions-given", "/insertion/instructionsGiven"),
            Gap.of(ACTIVATION, "visit-interval", "/visits/1/date")
                    .also(RECORDS, "readings-agree")
                    .when(c -> c.visits().size() > 1),
            Gap.of(ACTIVATION, "legs-parallel-after", "{last}/right/legsOutOfParallel"),
            Gap.of(ACTIVATION, "molars-hold", "{last}/left/molarDistal"),
            Gap.of(ACTIVATION, "tissue-and-root-signs", "{last}/lastingPain"),
            Gap.of(HOLDING, "space-target-reached", "/holding/spaceLeft")
                    .also(HOLDING, "target-before-holding-arch", "not-overdone"),
            Gap.of(HOLDING, "holding-before-debond", "/holding/cemented").also(HOLDING, "holding-arch-not-too-long"),
            Gap.of(HOLDING, "incisors-aligned", "/holding/contacts/31-32"),
            Gap.of(HOLDING, "inclination-at-end", "/holding/incisorMandibular"),
            Gap.of(HOLDING, "holding-arch-passive", "/holding/passive"),
            Gap.of(HOLDING, "second-molars-watched", "/holding/secondMolarRecall"),
            Gap.of(HOLDING, "recall-planned", "/holding/removalPoint"));

    private Gaps() {}
}
