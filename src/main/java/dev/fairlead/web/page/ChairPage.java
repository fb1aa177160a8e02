package dev.fairlead.web.page;

import java.util.List;

/**
 * Chair mode: one question large, the verdict in sight, all questions below.
 *
 * @param index of the question that is asked, from 0; the number of questions when it asks who answered
 * @param voided whose signature ended because an answer was changed after it; empty when none did
 * @param from whole number near which the answer is expected, where a press on plus or minus begins; empty where that
 *     is zero
 * @param signed who signed and when, in a sentence; empty when nobody has
 */
public record ChairPage(
        String base,
        Checklist checklist,
        int index,
        String from,
        ChairVerdict verdict,
        String signed,
        String voided,
        List<String> roles,
        String role,
        String initials) {
    public String part() {
        return checklist.part();
    }

    public boolean bench() {
        return part().equals("bench");
    }

    public List<Checklist.Question> questions() {
        return checklist.questions();
    }

    public long answered() {
        return checklist.answered();
    }

    public Checklist.Question question() {
        return questions().get(index);
    }

    public boolean end() {
        return index >= questions().size();
    }

    public String link(int i) {
        return base + "/chair?part=" + part() + "&q=" + i;
    }

    public String title() {
        return bench() ? "At the bench" : "At the chair";
    }

    public int percent() {
        return questions().isEmpty() ? 0 : (int) (100 * answered() / questions().size());
    }
}
