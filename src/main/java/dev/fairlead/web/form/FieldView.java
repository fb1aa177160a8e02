package dev.fairlead.web.form;

import dev.fairlead.model.Choice;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.util.List;

/**
 * One field of a form as it stands.
 *
 * @param label short, with a capital
 * @param value what stands there as it was typed, without the words for unknown and inapplicable
 * @param state {@code unknown}, {@code does-not-apply}, or empty
 * @param note what is to be said beside the field
 * @param uses identifiers of the criteria that look at this fact
 */
public record FieldView(
        String pointer, FieldShape shape, String label, String value, String state, Note note, List<String> uses) {
    /**
     * What is said beside a field.
     *
     * @param tone {@code error}, {@code doubt}, {@code echo} or empty
     * @param text what is wrong, or the value as it was read
     * @param mend what to do; may be empty
     * @param person true where the value may name somebody, and a person may answer that it does not
     */
    public record Note(String tone, String text, String mend, boolean person) {
        static final Note NONE = new Note("", "", "", false);
    }

    /** A name that can be used as an element's id. */
    public String id() {
        return id(pointer);
    }

    /** The element's id for a pointer. */
    public static String id(String pointer) {
        return "f" + pointer.replace('/', '_').replace("~1", "-");
    }

    public Kind kind() {
        return shape.kind();
    }

    /** How the field says what is asked: for answers the question itself. */
    public boolean question() {
        return kind() == Kind.ANSWER;
    }

    public String help() {
        // a help that only repeats the label says nothing
        return question() || shape.about().value().replace(".", "").equalsIgnoreCase(label)
                ? ""
                : shape.about().value();
    }

    public String unit() {
        return kind() == Kind.QUANTITY ? shape.about().unit().symbol() : "";
    }

    /** The unit to say behind the value; empty where the value as typed has one already. */
    public String unitBehind() {
        return value.isEmpty() || !value.matches("[-+−0-9.,;± ]+") ? "" : unit();
    }

    public boolean mayNotApply() {
        return shape.about().mayNotApply();
    }

    /** Wire sizes and slots, which are sold in inches: both units are offered and shown. */
    public boolean sized() {
        return kind() == Kind.QUANTITY
                && shape.about().unit() == Unit.MM
                && shape.about().high() <= 1.5;
    }

    /** True where a second reading makes sense. */
    public boolean repeatable() {
        return kind() == Kind.QUANTITY && shape.about().error().defaultSd() > 0;
    }

    /** The single readings; one empty one when there is none. */
    public List<String> readings() {
        String all = stated() ? value.substring(0, value.lastIndexOf(Typed.PLUS_MINUS)) : value;
        return all.isEmpty() ? List.of("") : List.of(all.split("; "));
    }

    /** The error that the value states, as typed; empty where it has the usual one. */
    public String error() {
        return stated() ? value.substring(value.lastIndexOf(Typed.PLUS_MINUS) + Typed.PLUS_MINUS.length()) : "";
    }

    /**
     * What stands in the boxes of the field; with {@code again}, an empty box for one more reading where that makes
     * sense.
     */
    public List<String> boxes(boolean again) {
        List<String> all = new java.util.ArrayList<>(readings());
        if (again && repeatable()) {
            all.add("");
        }
        return all;
    }

    /** A value that states an error of its own, which has a box of its own. */
    public boolean stated() {
        return kind() == Kind.QUANTITY && value.contains(Typed.PLUS_MINUS);
    }

    /** Keys on a telephone or tablet: digits with a separator, unless a minus or an inch sign may be needed. */
    public String keys() {
        return kind() != Kind.QUANTITY ? "text" : shape.about().low() < 0 || sized() ? "text" : "decimal";
    }

    /** Words of a choice with how they read. */
    public List<String[]> options() {
        return shape.choices().stream()
                .map(Choice::word)
                .map(w -> new String[] {w, FormWords.of(w)})
                .toList();
    }

    /** A text of some length rather than a code or a time of day. */
    public boolean prose() {
        return kind() == Kind.TEXT && shape.about().pattern().isEmpty();
    }

    public boolean wrong() {
        return note.tone().equals("error");
    }

    public String range() {
        return kind() != Kind.QUANTITY
                ? ""
                : FormWords.number(shape.about().low()) + " to "
                        + FormWords.number(shape.about().high()) + (unit().isEmpty() ? "" : " " + unit());
    }
}
