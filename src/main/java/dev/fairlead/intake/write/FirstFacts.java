package dev.fairlead.intake.write;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The facts of a first consult: what can be read at once, and what space and position are first reckoned from. */
public final class FirstFacts {
    /** Pointers by heading, in the order in which they come to hand. */
    public static final Map<String, List<String>> GROUPS = groups();

    private FirstFacts() {}

    private static Map<String, List<String>> groups() {
        Map<String, List<String>> all = new LinkedHashMap<>();
        all.put("Child", List.of("/child/age"));
        all.put(
                "Widths of the lower incisors",
                List.of("/teeth/42/width", "/teeth/41/width", "/teeth/31/width", "/teeth/32/width"));
        all.put("Lower arch", List.of("/space/right", "/space/left", "/space/incisors"));
        all.put(
                "Irregularity: displacement at the five contact points",
                List.of("/contacts/43-42", "/contacts/42-41", "/contacts/41-31", "/contacts/31-32", "/contacts/32-33"));
        all.put("Bite", List.of("/bite/overjet", "/bite/overbite"));
        all.put("Lateral cephalogram", List.of("/headFilm/incisorMandibular"));
        all.put(
                "Gingiva of the lower incisors",
                List.of(
                        "/teeth/31/gingivaThickness",
                        "/teeth/41/gingivaThickness",
                        "/teeth/31/recession",
                        "/teeth/41/recession"));
        return java.util.Collections.unmodifiableMap(all);
    }
}
