package dev.fairlead.web.page;

import java.util.Map;

/** Which small drawing shows where a measurement at the bench or at the chair is taken. */
public final class Caliper {
    private static final Map<String, String> DRAWINGS = Map.ofEntries(
            Map.entry("firstMark", "laid"),
            Map.entry("firstBendOffset", "laid"),
            Map.entry("midlineMarked", "laid"),
            Map.entry("length", "fold"),
            Map.entry("height", "fold"),
            Map.entry("bendRadius", "fold"),
            Map.entry("legsOutOfParallel", "fold"),
            Map.entry("gapOpened", "fold"),
            Map.entry("rebends", "fold"),
            Map.entry("outOfSquare", "above"),
            Map.entry("misfitRms", "arch"),
            Map.entry("misfitWorst", "arch"),
            Map.entry("misfitRmsAfter", "arch"),
            Map.entry("misfitWorstAfter", "arch"),
            Map.entry("space", "arch"),
            Map.entry("clearCheek", "cheek"),
            Map.entry("cheekSore", "cheek"),
            Map.entry("buccalTip", "cheek"),
            Map.entry("clearGingiva", "gum"),
            Map.entry("gingivalClearance", "gum"),
            Map.entry("blanching", "gum"),
            Map.entry("passiveGap", "front"),
            Map.entry("bracketsTied", "front"),
            Map.entry("standOff", "front"),
            Map.entry("gauge", "front"),
            Map.entry("incisorAdvance", "front"),
            Map.entry("frontOffLevel", "level"),
            Map.entry("molarDistal", "molar"),
            Map.entry("stopGap", "tube"),
            Map.entry("endProud", "tube"),
            Map.entry("underHook", "tube"),
            Map.entry("bentBehind", "tube"));

    private Caliper() {}

    /** Name of the drawing for a fact; empty where there is none. */
    public static String drawing(String pointer) {
        return pointer.matches("/(bench|insertion|visits)/.*") ? DRAWINGS.getOrDefault(key(pointer), "") : "";
    }

    /** The last part of a pointer. */
    public static String key(String pointer) {
        return pointer.substring(pointer.lastIndexOf('/') + 1);
    }
}
