package dev.fairlead.audit.cohort;

import static dev.fairlead.audit.cohort.Draws.tenth;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Faults of activation and holding. */
final class CourseFaults {
    private static final String TARGET = "space-target-reached";
    private static final String BEFORE_TARGET = "target-before-holding-arch";

    private static final List<Fault> ACTIVATION = List.of(
            visit("stand-off-in-range", Fault.STEEL, "activated too little to matter", w ->
                    new Object[] {w.last() + "/left/standOff", 0.2, w.last() + "/right/standOff", 0.2}),
            visit("visit-interval", "interval", "activated again too early", w -> new Object[] {
                        "/visits/1/date",
                        w.made().visits().get(0).date().get().plusDays(w.draws().whole(10, 24))
                    })
                    .when(c -> c.visits().size() > 1)
                    .at(0.04),
            visit("sides-balanced", Fault.STEEL, "one side never activated", CourseFaults::leftOnly)
                    .when(c -> cumulative(c) > 2.2 && c.stage().is(Stage.ACTIVATION))
                    .at(0.1),
            visit("total-force-band", "gauge", "gauge far above the tipping range", w ->
                            new Object[] {w.last() + "/gauge", w.draws().whole(290, 460)})
                    .at(0.04),
            visit("no-permanent-set", Fault.STEEL, "a wire too soft for its load", w ->
                            new Object[] {"/wire/proofStrength", 300})
                    .when(c -> c.visits().get(0).left().standOff().value() > 0.9),
            visit("legs-parallel-after", "legs-after", "legs not parallel after opening", w -> new Object[] {
                w.last() + "/left/legsOutOfParallel", w.draws().whole(10, 20)
            }),
            visit("fold-wire-left", Fault.STEEL, "a fold with hardly any wire in it", CourseFaults::tinyFold)
                    .when(c ->
                            c.plan().advanceLeft().value() >= 2.5 && c.visits().size() == 1)
                    .at(0.1)
                    .alsoWarns("fold-length-is-tube-length", Stage.BENCH)
                    .alsoWarns("sides-match", Stage.BENCH),
            visit("vertical-force", Fault.STEEL, "tubes far above the brackets", w -> new Object[] {
                "/hardware/left/aboveBrackets",
                10,
                "/hardware/right/aboveBrackets",
                10,
                w.last() + "/left/standOff",
                1.6,
                w.last() + "/right/standOff",
                1.6
            }),
            visit("response-seen", Fault.STEEL, "no room gained", CourseFaults::noGain)
                    .when(c -> c.visits().size() > 2)
                    .at(0.04),
            visit("molars-hold", "molars", "a first molar driven back", w ->
                    new Object[] {w.last() + "/left/molarDistal", w.draws().tenth(1.5, 2.5)}),
            visit(
                            "tissue-and-root-signs",
                            "tissue",
                            "a sign in gingiva, tooth or root",
                            w -> w.draws()
                                    .one(
                                            new Object[] {w.last() + "/newRecession", true},
                                            new Object[] {w.last() + "/mobility", "grade-ii"},
                                            new Object[] {w.last() + "/blanching", true},
                                            new Object[] {w.last() + "/lastingPain", true},
                                            new Object[] {w.last() + "/resorption", true}))
                    .at(0.05),
            visit(
                            "inclination-rechecked",
                            Fault.STEEL,
                            "moved more than 3 mm and not looked at again",
                            CourseFaults::notRechecked)
                    .alsoWarns("not-past-plan", Stage.ACTIVATION)
                    .alsoWarns("readings-agree", Stage.RECORDS)
                    .when(c -> c.visits().size() > 1 && c.plan().advanceLeft().value() >= 2)
                    .at(0.1),
            visit("not-past-plan", Fault.STEEL, "moved further than planned", w ->
                            new Object[] {w.last() + "/incisorAdvance", w.advance() + 1.8})
                    .alsoWarns("readings-agree", Stage.RECORDS)
                    .when(c -> c.visits().size() > 1),
            visit("front-level", "level", "the front not levelled after opening", w ->
                    new Object[] {w.last() + "/frontOffLevel", w.draws().tenth(0.9, 2)}),
            visit(
                    "hygiene-at-visit",
                    "hygiene",
                    "plaque or white spots at a visit",
                    w -> w.draws()
                            .one(new Object[] {w.last() + "/plaque", w.draws().whole(45, 90)}, new Object[] {
                                w.last() + "/newWhiteSpots", true
                            })),
            visit("root-check-decided", "roots", "nobody thought of the roots", CourseFaults::rootsForgotten));

    private static final List<Fault> HOLDING = List.of(
            hold(TARGET, "target", "one side too short when the arch went in", w -> shorter(w, Side.LEFT))
                    .alsoWarns(BEFORE_TARGET, Stage.HOLDING)
                    .at(0.04),
            hold(
                            BEFORE_TARGET,
                            "target",
                            "the holding arch went in before the target was reached",
                            w -> shorter(w, Side.RIGHT))
                    .alsoWarns(TARGET, Stage.HOLDING)
                    .at(0.04),
            hold(
                            "holding-before-debond",
                            "order",
                            "brackets off before the holding arch was cemented",
                            w -> new Object[] {
                                "/holding/debonded",
                                w.made()
                                        .holding()
                                        .cemented()
                                        .get()
                                        .minusDays(w.draws().whole(4, 14))
                            })
                    .at(0.05),
            hold("not-overdone", "target", "more room made than needed", w -> new Object[] {
                "/holding/spaceRight",
                w.value("/holding/spaceRight") + w.draws().tenth(1.4, 2.2)
            }),
            hold("incisors-aligned", "end-contacts", "incisors crooked at the end", w ->
                    new Object[] {"/holding/contacts/41-31", w.draws().tenth(1.4, 2)}),
            hold("inclination-at-end", "end-inclination", "incisors steep at the end", w ->
                    new Object[] {"/holding/incisorMandibular", w.draws().tenth(97, 102)}),
            hold(
                    "holding-arch-passive",
                    "arch-fit",
                    "the holding arch does not lie as it should",
                    w -> w.draws()
                            .one(
                                    new Object[] {"/holding/passive", false},
                                    new Object[] {"/holding/touchesCingula", false},
                                    new Object[] {"/holding/tissueClearance", 0.2})),
            hold("incisors-in-before-arch", "incisor-eruption", "an incisor not in when the arch was made", w ->
                            new Object[] {"/teeth/42/state", "unerupted"})
                    .alsoWarns("permanent-incisors-erupted", Stage.INDICATION),
            hold("second-molars-watched", "second-molar-recall", "second molars looked at too rarely", w ->
                    new Object[] {"/holding/secondMolarRecall", w.draws().whole(9, 18)}),
            hold(
                    "holding-arch-not-too-long",
                    "end-date",
                    "the holding arch in for more than two years",
                    w -> new Object[] {
                        "/date",
                        w.made().holding().cemented().get().plusMonths(w.draws().whole(26, 40))
                    }),
            hold(
                    "recall-planned",
                    "recall",
                    "no recall worth the name",
                    w -> w.draws()
                            .one(new Object[] {"/holding/recall", 12}, new Object[] {"/holding/removalPoint", false})));

    static final List<Fault> ALL =
            Stream.of(ACTIVATION, HOLDING).flatMap(List::stream).toList();

    private CourseFaults() {}

    private static Fault visit(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.ACTIVATION, area, says, changes);
    }

    private static Fault hold(String criterion, String area, String says, Function<Fault.Work, Object[]> changes) {
        return Fault.of(criterion, Stage.HOLDING, area, says, changes);
    }

    private static double cumulative(Case c) {
        return c.visits().stream().mapToDouble(v -> v.left().standOff().value()).sum();
    }

    private static Object[] leftOnly(Fault.Work w) {
        List<Object> changes = new ArrayList<>();
        for (int i = 0; i < w.made().visits().size(); i++) {
            changes.addAll(List.of(
                    "/visits/" + i + "/activated",
                    "left",
                    "/visits/" + i + "/right/gapOpened",
                    0.0,
                    "/visits/" + i + "/right/standOff",
                    0.0));
        }
        return changes.toArray();
    }

    /**
     * A fold of 0.5 mm legs and bends of 0.35 mm reaches 1.9 mm at most; its gap stays below the length of its legs.
     */
    private static Object[] tinyFold(Fault.Work w) {
        return new Object[] {
            "/bench/left/length",
            0.5,
            "/bench/left/bendRadius",
            0.1,
            "/bench/left/height",
            1.4,
            "/visits/0/left/gapOpened",
            0.3
        };
    }

    /** In treatment for eleven months, and at no visit did anybody think of the roots. */
    private static Object[] rootsForgotten(Fault.Work w) {
        List<Object> changes = new ArrayList<>(List.of(
                "/insertion/date", earlier(w.made().insertion().date()),
                "/films/models", earlier(w.made().films().models()),
                "/films/headFilm", earlier(w.made().films().headFilm())));
        for (int i = 0; i < w.made().visits().size(); i++) {
            changes.addAll(List.of("/visits/" + i + "/rootFilmDecided", false));
        }
        return changes.toArray();
    }

    private static LocalDate earlier(Fact<LocalDate> day) {
        return day.get().minusMonths(11);
    }

    private static Object[] noGain(Fault.Work w) {
        List<Object> changes = new ArrayList<>();
        for (int i = 1; i < w.made().visits().size(); i++) {
            for (Side side : Side.values()) {
                changes.add("/visits/" + i + "/" + side.word() + "/space");
                changes.add(tenth(w.value("/visits/0/" + side.word() + "/space") + 0.05 * i));
            }
            // where no room was gained the front has not come forward either
            changes.add("/visits/" + i + "/incisorAdvance");
            changes.add(tenth(w.value("/visits/0/incisorAdvance")));
        }
        return changes.toArray();
    }

    private static Object[] notRechecked(Fault.Work w) {
        List<Object> changes = new ArrayList<>(List.of(w.last() + "/incisorAdvance", w.advance() + 1.8));
        for (int i = 0; i < w.made().visits().size(); i++) {
            changes.addAll(List.of("/visits/" + i + "/inclinationRechecked", false));
        }
        return changes.toArray();
    }

    private static Object[] shorter(Fault.Work w, Side side) {
        String at = "/holding/space" + (side == Side.LEFT ? "Left" : "Right");
        return new Object[] {at, tenth(w.value(at) - w.draws().uniform(1.3, 2.2))};
    }
}
