package dev.fairlead.audit.cohort;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Tooth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Faults that speak against advancing this child's incisors, or against the plan. */
final class IndicationFaults {
    private static final String AFTER = "incisor-inclination-after";
    private static final String DIVERGENCE = "inclination-relative-to-divergence";

    static final List<Fault> ALL = List.of(
            fault("permanent-incisors-erupted", "incisor-eruption", "a lateral incisor is not in yet", w ->
                            new Object[] {"/teeth/32/state", "unerupted"})
                    .alsoWarns("incisors-in-before-arch", Stage.HOLDING),
            fault("first-molars-erupted", "molar-eruption", "a first molar is not in far enough for a band", w ->
                    new Object[] {"/teeth/46/state", "unerupted"}),
            fault(
                    "buccal-window-open",
                    "window",
                    "both premolars of one side are in, or a primary molar was lost early",
                    w -> w.draws()
                            .one(
                                    new Object[] {"/teeth/34/state", "erupted", "/teeth/35/state", "erupted"},
                                    new Object[] {"/teeth/35/state", "unerupted", "/teeth/75/state", "missing"})),
            fault(
                    "eruption-path-clear",
                    "eruption-path",
                    "an infraoccluded primary molar, or a tooth off its path",
                    w -> w.draws()
                            .one(
                                    new Object[] {"/films/infraoccludedMolar", true},
                                    new Object[] {"/films/ectopicFirstMolar", true},
                                    new Object[] {"/films/caninePathNormal", false})),
            fault("plan-meets-need", "space", "segments of one side read 1.7 mm too long", w -> longer(w, 1.7))
                    .when(RecordFaults::untouched)
                    .at(0.04),
            fault("lower-brackets-clear", "brackets-clear", "the upper incisors bite on the lower brackets", w ->
                    new Object[] {"/bite/biteOnBrackets", true}),
            fault(
                    "medical-history-read",
                    "history",
                    "no history, or a finding without advice",
                    w -> w.draws().one(new Object[] {"/child/historyTaken", false}, new Object[] {
                        "/child/medicalFinding", true, "/child/medicalAdvice", false
                    })),
            fault(
                    "habits-seen",
                    "habits",
                    "habits not looked for, or left out of the plan",
                    w -> w.draws().one(new Object[] {"/mouth/habitsLookedFor", false}, new Object[] {
                        "/mouth/habit", true, "/plan/habitAddressed", false
                    })),
            fault(
                            "advancement-needed",
                            "space",
                            "no side lacks room",
                            w -> roomier(w, w.draws().tenth(2.4, 2.8)))
                    .alsoWarns("plan-meets-need", Stage.INDICATION)
                    .when(RecordFaults::untouched)
                    .at(0.06),
            fault(
                            "shortage-within-reach",
                            "space",
                            "far more room is lacking than an advancement can give",
                            w -> roomier(w, -w.draws().tenth(2.4, 4)))
                    .alsoWarns("plan-meets-need", Stage.INDICATION)
                    .when(RecordFaults::untouched)
                    .at(0.06),
            fault("prediction-agrees", "percentile", "the table read at a percentile far from the usual one", w ->
                            new Object[] {"/plan/percentile", 5})
                    .when(IndicationFaults::inTable),
            fault("incisor-inclination-before", "inclination", "incisors steep before treatment", w -> new Object[] {
                        "/headFilm/incisorMandibular", twice(w.draws().tenth(97, 99)), "/headFilm/mandibularPlane", 26
                    })
                    .alsoWarns(AFTER, Stage.INDICATION)
                    .alsoWarns(DIVERGENCE, Stage.INDICATION),
            fault(AFTER, "inclination", "incisors that the plan makes steep", w -> new Object[] {
                        "/headFilm/incisorMandibular",
                        twice(w.draws().tenth(93.2, 94.2)),
                        "/headFilm/mandibularPlane",
                        26
                    })
                    .alsoWarns(DIVERGENCE, Stage.INDICATION)
                    .at(0.05),
            fault(DIVERGENCE, "inclination", "incisors too far forward for a steep mandibular plane", w ->
                    new Object[] {"/headFilm/mandibularPlane", w.draws().whole(41, 44)}),
            fault("incisor-to-a-pog-after", "a-pog", "edge in front of A-Pog already", w ->
                    new Object[] {"/headFilm/incisorToAPog", w.draws().tenth(2.9, 3.6)}),
            fault("overjet-after", "overjet", "the plan eats up the overjet", w -> new Object[] {
                        "/bite/overjet", w.advance() + w.draws().tenth(-0.4, 0.4)
                    })
                    .at(0.04),
            fault("overbite-after", "overbite", "an open bite", w ->
                    new Object[] {"/bite/overbite", w.draws().tenth(-2.5, -1)}),
            fault(
                            "class-iii-caution",
                            "sagittal",
                            "a tendency to class III",
                            w -> w.draws()
                                    .one(
                                            new Object[] {
                                                "/headFilm/anb", w.draws().tenth(-3, -1)
                                            },
                                            new Object[] {"/bite/anteriorShift", true},
                                            new Object[] {"/child/familyClassIII", true},
                                            new Object[] {
                                                "/bite/molarLeft", "class-iii", "/bite/molarRight", "class-iii"
                                            }))
                    .at(0.04),
            fault(
                            "gingiva-thickness",
                            "gingiva",
                            "thin gingiva on the centrals",
                            w -> thin(w.draws().one(0.3, 0.7, 0.8)))
                    .at(0.05),
            fault("keratinised-width", "keratinised", "hardly any keratinised gingiva", w ->
                    new Object[] {"/teeth/41/keratinised", w.draws().tenth(0.5, 1.5)}),
            fault("recession-absent", "recession", "recession, and no periodontal opinion", w ->
                    new Object[] {"/teeth/31/recession", w.draws().tenth(0.5, 2)}),
            fault("bone-and-roots", "roots", "short or resorbed roots", w ->
                    new Object[] {w.draws().one("/films/shortRoots", "/films/resorption"), true}),
            fault(
                            "hygiene-and-caries",
                            "hygiene",
                            "plaque, caries or gingivitis",
                            w -> w.draws()
                                    .one(
                                            new Object[] {
                                                "/mouth/plaqueScore", w.draws().whole(38, 80)
                                            },
                                            new Object[] {"/mouth/untreatedCaries", true},
                                            new Object[] {"/mouth/activeGingivitis", true}))
                    .at(0.08),
            fault("alloy-sensitivity", "nickel", "a sensitivity to nickel", w ->
                            new Object[] {"/mouth/nickelSensitivity", true})
                    .at(0.01),
            fault("second-molar-path", "second-molar", "a second molar steeply tipped", w ->
                    new Object[] {"/films/secondMolarAngleLeft", w.draws().whole(28, 40)}),
            fault("midline-side-plan", "midline", "midline off, and the plan the same on both sides", w ->
                            new Object[] {"/bite/lowerMidline", w.draws().one(-2.2, 2.0, 2.4)})
                    .at(0.04),
            fault("consent-recorded", "consent", "consent or the limits of stability not recorded", w -> new Object[] {
                        w.draws().one("/consent/guardian", "/consent/stabilityExplained", "/consent/risksExplained"),
                        false
                    })
                    .at(0.04));

    private IndicationFaults() {}

    private static Fault fault(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.INDICATION, area, says, changes);
    }

    /** Off its usual row the table of Moyers 1973 ends at an incisor sum of 25 mm. */
    private static boolean inTable(Case c) {
        return Tooth.LOWER_INCISORS.stream()
                        .mapToDouble(t -> c.tooth(t).width().value())
                        .sum()
                <= 25;
    }

    /** Both segments longer by so much, and the perimeter with them; the spread of the readings stays. */
    private static Object[] roomier(Fault.Work w, double by) {
        List<Object> changes = new ArrayList<>();
        for (String p : List.of("left", "right", "perimeter")) {
            Measured there = (Measured) dev.fairlead.model.shape.Edit.get(w.made(), "/space/" + p);
            double[] readings = there.repeats();
            for (int i = 0; i < readings.length; i++) {
                readings[i] += p.equals("perimeter") ? 2 * by : by;
            }
            changes.add("/space/" + p);
            changes.add(readings);
        }
        return changes.toArray();
    }

    /** One segment longer by so much, and the perimeter with it; the spread of the readings stays. */
    private static Object[] longer(Fault.Work w, double by) {
        List<Object> changes = new ArrayList<>();
        for (String p : List.of("left", "perimeter")) {
            double[] readings = ((Measured) dev.fairlead.model.shape.Edit.get(w.made(), "/space/" + p)).repeats();
            for (int i = 0; i < readings.length; i++) {
                readings[i] += by;
            }
            changes.add("/space/" + p);
            changes.add(readings);
        }
        return changes.toArray();
    }

    /** Two readings half a unit to either side. */
    private static double[] twice(double value) {
        return new double[] {value - 0.5, value + 0.5};
    }

    private static Object[] thin(double thickness) {
        return new Object[] {"/teeth/31/gingivaThickness", thickness, "/teeth/41/gingivaThickness", thickness};
    }
}
