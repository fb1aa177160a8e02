package dev.fairlead.web.page;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The questions that a person works through at the bench or at the chair, one by one, as they stand for a case.
 *
 * @param part {@code bench} or {@code insertion}
 */
public record Checklist(String part, List<Question> questions) {
    /** Who answered and when: asked once, at the end. */
    private static final Set<String> WHO = Set.of("date", "answeredBy", "initials", "time");

    /**
     * One question.
     *
     * @param side {@code right}, {@code left}, or empty
     */
    public record Question(FieldView field, String side, String text) {
        public boolean answered() {
            return !field.value().isEmpty() || !field.state().isEmpty();
        }

        /** True when that word is the answer given. */
        public boolean gave(String word) {
            return field.value().equals(word) || field.state().equals(word);
        }

        public boolean yesOrNo() {
            return field.kind() == Kind.ANSWER;
        }
    }

    static Checklist of(String part, Fields fields) {
        List<Question> all = new ArrayList<>();
        RecordShape shape = CasePaths.field("/" + part).orElseThrow().nested();
        for (FieldShape f : shape.fields()) {
            String at = "/" + part + "/" + f.key();
            if (f.kind() == Kind.RECORD) {
                f.nested().fields().forEach(n -> all.add(question(fields.at(at + "/" + n.key()), f.key())));
            } else if (!WHO.contains(f.key())) {
                all.add(question(fields.at(at), ""));
            }
        }
        return new Checklist(part, List.copyOf(all));
    }

    private static Question question(FieldView field, String side) {
        return new Question(field, side, field.shape().about().value());
    }

    static Stage stage(String part) {
        return part.equals("bench") ? Stage.BENCH : Stage.INSERTION;
    }

    long answered() {
        return questions.stream().filter(Question::answered).count();
    }

    /** The first question without an answer; the end of the list when all have one. */
    int open() {
        for (int i = 0; i < questions.size(); i++) {
            if (!questions.get(i).answered()) {
                return i;
            }
        }
        return questions.size();
    }
}
