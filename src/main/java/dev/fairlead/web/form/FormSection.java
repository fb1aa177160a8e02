package dev.fairlead.web.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One page of the form: facts that are collected together.
 *
 * @param key in the address
 * @param lead what is recorded here and when, in a sentence
 * @param roots JSON Pointers of the parts of the case that stand here
 */
public record FormSection(String key, String title, String lead, List<String> roots) {
    /** All sections, in the order in which facts are collected. */
    public static final List<FormSection> ALL = List.of(
            new FormSection(
                    "child",
                    "Child and case",
                    "Who is planned for, without anything that tells who it is, and how far care has come.",
                    List.of("/id", "/stage", "/date", "/resident", "/site", "/child", "/consent", "/notPersons")),
            new FormSection(
                    "teeth",
                    "Teeth",
                    "State and width of each tooth, and the gingiva of the lower incisors.",
                    List.of("/teeth")),
            new FormSection(
                    "arch",
                    "Lower arch",
                    "What is measured on the model before treatment.",
                    List.of("/space", "/contacts", "/arch", "/landmarks", "/pictured")),
            new FormSection(
                    "films",
                    "Films",
                    "Which films there are, what a clinician read on them, and angles from the lateral cephalogram.",
                    List.of("/films", "/headFilm", "/images")),
            new FormSection(
                    "mouth", "Bite and mouth", "Overjet, midline, hygiene, gingiva.", List.of("/bite", "/mouth")),
            new FormSection("plan", "Plan", "How far forward, on which side, how fast.", List.of("/plan")),
            new FormSection(
                    "hardware",
                    "Brackets and bands",
                    "What is in the mouth before steel goes in.",
                    List.of("/hardware")),
            new FormSection("wire", "Wire", "The archwire as planned and as chosen.", List.of("/wire")),
            new FormSection("bench", "Bench", "The wire as it was bent and tried in on the model.", List.of("/bench")),
            new FormSection(
                    "insertion",
                    "Insertion",
                    "The checklist at the chair. Chair mode asks the same, one question at a time.",
                    List.of("/insertion")),
            new FormSection(
                    "visits",
                    "Visits",
                    "Every activation. The visits page is quicker for a new one.",
                    List.of("/visits")),
            new FormSection(
                    "holding", "Holding", "Target, holding arch, removal of brackets, recall.", List.of("/holding")));

    /** The section of that key, or null. */
    public static @Nullable FormSection of(String key) {
        return ALL.stream().filter(s -> s.key().equals(key)).findFirst().orElse(null);
    }

    /** The section in which a pointer stands; waivers stand in none. */
    public static @Nullable FormSection holding(String pointer) {
        return ALL.stream()
                .filter(s -> s.roots().stream().anyMatch(r -> pointer.equals(r) || pointer.startsWith(r + "/")))
                .findFirst()
                .orElse(null);
    }

    /** The section after this one, or null. */
    public @Nullable FormSection next() {
        int i = ALL.indexOf(this) + 1;
        return i < ALL.size() ? ALL.get(i) : null;
    }
}
