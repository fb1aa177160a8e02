package dev.fairlead.measure;

import dev.fairlead.model.Stage;
import java.util.Map;

/** An invented case in which every fact is known. */
public final class SampleCase {
    private SampleCase() {}

    /** The same before anything of a later stage was recorded. */
    public static CaseBuilder until(Stage stage) {
        CaseBuilder b = full().set("/stage", stage.word());
        Map<String, Stage> sections = Map.of(
                "/hardware", Stage.READINESS,
                "/bench", Stage.BENCH,
                "/insertion", Stage.INSERTION,
                "/visits", Stage.ACTIVATION,
                "/holding", Stage.HOLDING);
        sections.forEach((section, of) -> {
            if (!stage.hasReached(of)) {
                b.drop(section);
            }
        });
        return b;
    }

    public static CaseBuilder full() {
        CaseBuilder b = new CaseBuilder();
        b.set("/date", "2026-03-01").set("/resident", "r-1");
        b.set("/child/age", 9.5).set("/child/sex", "male").set("/child/population", "spain");
        double[] widths = {5.9, 5.4, 5.5, 6.0};
        int[] incisors = {42, 41, 31, 32};
        for (int i = 0; i < 4; i++) {
            String t = "/teeth/" + incisors[i];
            b.set(t + "/state", "erupted").set(t + "/width", new double[] {widths[i], widths[i] + 0.1});
            b.set(t + "/gingivaThickness", 1.2).set(t + "/keratinised", 4).set(t + "/recession", 0);
            String k = "/hardware/brackets/" + incisors[i];
            b.set(k + "/slot", 0.559)
                    .set(k + "/bonded", true)
                    .set(k + "/loose", false)
                    .set(k + "/fromMidline", i % 3 == 0 ? 8.5 : 2.7);
        }
        b.set("/teeth/73/width", 5.9).set("/teeth/74/width", 7.8).set("/teeth/75/width", 9.9);
        b.set("/teeth/83/width", 6.0).set("/teeth/84/width", 7.7).set("/teeth/85/width", 9.8);
        for (int n : new int[] {73, 74, 75, 83, 84, 85}) {
            b.set("/teeth/" + n + "/state", "erupted");
        }
        for (int n : new int[] {33, 34, 35, 43, 44, 45}) {
            b.set("/teeth/" + n + "/state", "unerupted");
        }
        for (int n : new int[] {36, 46, 11, 12, 21, 22}) {
            b.set("/teeth/" + n + "/state", "erupted")
                    .set("/teeth/" + n + "/width", n > 30 ? 11.0 : n % 10 == 1 ? 8.6 : 6.6);
        }
        b.set("/teeth/13/width", 7.8).set("/teeth/23/width", 7.7);
        contacts(b, "/contacts", 0.5, 1.2, 0.8, 1.5, 0.5);
        contacts(b, "/hardware/contactsNow", 0.1, 0.2, 0.1, 0.3, 0.0);
        contacts(b, "/holding/contacts", 0.0, 0.1, 0.0, 0.2, 0.0);
        b.set("/space/left", new double[] {20.4, 20.6}).set("/space/right", new double[] {21.0, 20.8});
        b.set("/space/incisors", new double[] {21.0, 21.2}).set("/space/perimeter", 62.4);
        b.set("/arch/molarWidth", 44)
                .set("/arch/molarDepth", 24)
                .set("/arch/canineWidth", 26)
                .set("/arch/canineDepth", 6);
        image(b, 0, 33, 7.6, 36, 11.9);
        image(b, 1, 34, 7.9, 36, 11.9);
        image(b, 2, 35, 8.1, 36, 11.9);
        image(b, 3, 43, 7.7, 46, 11.8);
        image(b, 4, 44, 7.8, 46, 11.8);
        image(b, 5, 45, 8.0, 46, 11.8);
        b.set("/films/models", "2026-01-15")
                .set("/films/headFilm", "2025-12-01")
                .set("/films/panoramic", "2025-12-01");
        b.set("/films/panoramicRead", true)
                .set("/films/missingTeeth", false)
                .set("/films/supernumerary", false)
                .set("/films/ectopic", false);
        b.set("/films/shortRoots", false).set("/films/resorption", false);
        b.set("/films/secondMolarAngleLeft", 14).set("/films/secondMolarAngleRight", 15);
        b.set("/headFilm/incisorMandibular", new double[] {88, 89})
                .set("/headFilm/mandibularPlane", 27)
                .set("/headFilm/incisorToAPog", 0.5);
        b.set("/headFilm/anb", 3).set("/headFilm/tippingRadius", 22);
        b.set("/bite/overjet", 4)
                .set("/bite/overbite", 3)
                .set("/bite/lowerMidline", 0.5)
                .set("/bite/anteriorShift", false);
        b.set("/bite/molarLeft", "class-i").set("/bite/molarRight", "class-i");
        b.set("/mouth/plaqueScore", 15).set("/mouth/untreatedCaries", false).set("/mouth/activeGingivitis", false);
        b.set("/mouth/nickelSensitivity", false).set("/mouth/periodontalOpinion", false);
        b.set("/consent/guardian", true)
                .set("/consent/stabilityExplained", true)
                .set("/consent/risksExplained", true);
        b.set("/child/familyClassIII", false)
                .set("/child/historyTaken", true)
                .set("/child/medicalFinding", true)
                .set("/child/medicalAdvice", true);
        b.set("/films/caninePathNormal", true)
                .set("/films/infraoccludedMolar", false)
                .set("/films/ectopicFirstMolar", false);
        b.set("/headFilm/occlusalMandibular", 17).set("/bite/biteOnBrackets", false);
        b.set("/mouth/opinionSays", "may-advance")
                .set("/mouth/habitsLookedFor", true)
                .set("/mouth/habit", true);
        b.set("/plan/habitAddressed", true);
        b.set("/plan/advanceLeft", 2)
                .set("/plan/advanceRight", 1.5)
                .set("/plan/moreOn", "left")
                .set("/plan/standOff", 1.5);
        b.set("/plan/intervalWeeks", 5)
                .set("/plan/pattern", "both-sides")
                .set("/plan/start", "2026-01-20")
                .set("/plan/percentile", 75);
        b.set("/hardware/flexibleWireFirst", true)
                .set("/hardware/modelOverBands", true)
                .set("/hardware/buccalSegmentsFree", true);
        b.set("/wire/material", "stainless-steel")
                .set("/wire/section", "round")
                .set("/wire/plannedSize", 0.508)
                .set("/wire/size", 0.508);
        b.set("/wire/modulus", 180)
                .set("/wire/proofStrength", 1500)
                .set("/wire/temper", "hard")
                .set("/wire/formClass", "ovoid");
        b.set("/wire/formMolarWidth", 44.5)
                .set("/wire/formCanineWidth", 26.5)
                .set("/wire/formDepth", 24.2)
                .set("/wire/reshaped", false);
        b.set("/wire/beakRadius", 0.75).set("/wire/blankLength", 120);
        b.set("/bench/midlineMarked", true)
                .set("/bench/otherSideMarkedSeated", true)
                .set("/bench/passiveGap", 0.2)
                .set("/bench/rebends", 0);
        b.set("/bench/misfitRms", 0.5)
                .set("/bench/misfitWorst", 1.1)
                .set("/bench/misfitRmsAfter", 0.6)
                .set("/bench/misfitWorstAfter", 1.2);
        for (String side : new String[] {"left", "right"}) {
            boolean left = side.equals("left");
            String h = "/hardware/" + side;
            b.set(h + "/height", 0.711)
                    .set(h + "/length", 3)
                    .set(h + "/cemented", true)
                    .set(h + "/loose", false)
                    .set(h + "/marginsSeated", true)
                    .set(h + "/hook", true)
                    .set(h + "/aboveBrackets", 1.5);
            String f = "/bench/" + side;
            b.set(f + "/firstMark", left ? 35.2 : 35.0)
                    .set(f + "/firstBendOffset", 2)
                    .set(f + "/length", left ? 3.1 : 3.0)
                    .set(f + "/height", left ? 4.1 : 4.0)
                    .set(f + "/bendRadius", 0.75)
                    .set(f + "/outOfSquare", 2)
                    .set(f + "/legsOutOfParallel", 1)
                    .set(f + "/clearGingiva", 1.5)
                    .set(f + "/clearCheek", 3)
                    .set(f + "/buccalTip", 20);
            String i = "/insertion/" + side;
            b.set(i + "/endProud", 0.2)
                    .set(i + "/cutEndCaught", true)
                    .set(i + "/bentBehind", false)
                    .set(i + "/stopGap", 0.1)
                    .set(i + "/underHook", true)
                    .set(i + "/cheekSore", false);
        }
        b.set("/insertion/gingivalClearance", 1)
                .set("/insertion/blanching", false)
                .set("/insertion/passiveGap", 0.2)
                .set("/insertion/bracketsTied", 4);
        b.set("/insertion/eyeProtection", true)
                .set("/insertion/airwayGuard", true)
                .set("/insertion/instructionsGiven", true);
        b.set("/insertion/date", "2026-01-20").set("/insertion/answeredBy", "clinician");
        visit(b, 0, "2026-01-20", 0, 20.5, 20.9);
        visit(b, 1, "2026-02-24", 0.6, 21.0, 21.3);
        visit(b, 2, "2026-03-31", 1.2, 21.5, 21.8);
        b.set("/holding/impression", "2026-06-01")
                .set("/holding/cemented", "2026-06-08")
                .set("/holding/debonded", "2026-06-15");
        b.set("/holding/spaceLeft", 22.3).set("/holding/spaceRight", 22.2).set("/holding/incisorMandibular", 92);
        b.set("/holding/touchesCingula", true).set("/holding/passive", true).set("/holding/tissueClearance", 1.2);
        b.set("/holding/secondMolarRecall", 4).set("/holding/recall", 4).set("/holding/removalPoint", true);
        return b;
    }

    private static void contacts(CaseBuilder b, String at, double... d) {
        String[] keys = {"43-42", "42-41", "41-31", "31-32", "32-33"};
        for (int i = 0; i < keys.length; i++) {
            b.set(at + "/" + keys[i], d[i]);
        }
    }

    private static void image(CaseBuilder b, int i, int tooth, double width, int reference, double referenceWidth) {
        String at = "/images/" + i;
        b.set(at + "/tooth", tooth)
                .set(at + "/imageWidth", width)
                .set(at + "/reference", reference)
                .set(at + "/referenceImageWidth", referenceWidth);
    }

    private static void visit(CaseBuilder b, int i, String date, double advance, double left, double right) {
        String at = "/visits/" + i;
        b.set(at + "/date", date)
                .set(at + "/activated", "both")
                .set(at + "/gauge", 180)
                .set(at + "/incisorAdvance", advance);
        b.set(at + "/newRecession", false)
                .set(at + "/mobility", "grade-i")
                .set(at + "/blanching", false)
                .set(at + "/lastingPain", false);
        b.set(at + "/resorption", false).set(at + "/inclinationRechecked", i == 1);
        b.set(at + "/left/gapOpened", 0.8)
                .set(at + "/left/standOff", 1.5)
                .set(at + "/left/legsOutOfParallel", 2)
                .set(at + "/left/space", left)
                .set(at + "/left/molarDistal", 0.2);
        b.set(at + "/right/gapOpened", 0.7)
                .set(at + "/right/standOff", 1.4)
                .set(at + "/right/legsOutOfParallel", 1)
                .set(at + "/right/space", right)
                .set(at + "/right/molarDistal", 0.1);
    }
}
