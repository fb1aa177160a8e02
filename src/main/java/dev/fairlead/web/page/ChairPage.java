package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.FormWords;
import java.util.List;

/**
 * One screen of chair mode.
 *
 * @param part {@code bench} or {@code insertion}
 * @param index of the question that is asked, from 0; the number of questions when it asks who answered
 * @param stops findings of the part that say not to go on
 * @param cautions other warnings of the part
 * @param judged false when the case stands at an earlier stage, so that answers are kept and not judged yet
 */
public record ChairPage(
        String base,
        String part,
        List<Checklist.Question> questions,
        int index,
        long answered,
        List<Finding> stops,
        List<Finding> cautions,
        boolean judged) {
    public Checklist.Question question() {
        return questions.get(index);
    }

    public boolean end() {
        return index >= questions.size();
    }

    public String link(int i) {
        return base + "/chair?part=" + part + "&q=" + i;
    }

    public String title() {
        return part.equals("bench") ? "At the bench" : "At the chair";
    }

    /** Who answered and when, in a sentence. */
    public static String signed(FieldView role, FieldView initials, FieldView date, FieldView time) {
        if (role.value().isEmpty()) {
            return "Nobody has signed for these answers yet.";
        }
        return "Answered by " + FormWords.of(role.value()).toLowerCase(java.util.Locale.ROOT)
                + (initials.value().isEmpty() ? "" : " " + initials.value())
                + (date.value().isEmpty() ? "" : " on " + date.value())
                + (time.value().isEmpty() ? "" : " at " + time.value()) + ".";
    }

    public int percent() {
        return questions.isEmpty() ? 0 : (int) (100 * answered / questions.size());
    }
}
