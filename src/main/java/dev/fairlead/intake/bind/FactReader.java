package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.spelling.Abbreviations;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.spelling.DateSlips;
import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * Reads the facts that are not quantities: answers, choices, dates, texts, tooth numbers, and the few that must be
 * there.
 */
public final class FactReader {
    private static final Map<String, Pattern> PATTERNS = new ConcurrentHashMap<>();
    private static final ClassValue<Map<String, Fact<Choice>>> WORDS = new ClassValue<>() {
        @Override
        protected Map<String, Fact<Choice>> computeValue(Class<?> list) {
            Map<String, Fact<Choice>> words = new HashMap<>();
            for (Object value : list.getEnumConstants()) {
                Choice choice = (Choice) value;
                words.put(choice.word(), Fact.of(choice));
            }
            return words;
        }
    };

    private final Input in;

    public FactReader(Input in) {
        this.in = in;
    }

    /** Reads the current value as a fact of that kind; {@code blank} stands for unknown, and for what is refused. */
    public Object read(FieldShape f, String pointer, Object blank) throws IOException {
        if (in.parser.currentToken() == JsonToken.VALUE_STRING) {
            String word = in.parser.getText();
            if (f.kind().fact() && word.equals(CaseWords.UNKNOWN)) {
                return blank;
            }
            if (f.kind().fact() && word.equals(CaseWords.DOES_NOT_APPLY)) {
                if (!mayNotApply(f.about(), pointer)) {
                    return blank;
                }
                return blank instanceof Answer ? Answer.NOT_APPLICABLE : Fact.notApplicable();
            }
        }
        return switch (f.kind()) {
            case ANSWER -> answer(pointer, blank);
            case CHOICE -> choice(f, pointer, blank);
            case DATE -> date(pointer, blank);
            case TEXT, ID -> text(f, pointer, blank);
            case TOOTH -> tooth(pointer, blank);
            case FORMAT -> format(pointer, blank);
            default -> throw new IllegalStateException("no fact: " + f.kind());
        };
    }

    /** True when the field can be inapplicable; else the word is refused. */
    public boolean mayNotApply(Field about, String pointer) {
        if (!about.mayNotApply()) {
            in.error(
                    pointer,
                    "a value or unknown",
                    CaseWords.DOES_NOT_APPLY,
                    "",
                    "this always applies: write unknown when it is not known");
        }
        return about.mayNotApply();
    }

    private Object answer(String pointer, Object blank) throws IOException {
        switch (in.parser.currentToken()) {
            case VALUE_TRUE:
                return Answer.YES;
            case VALUE_FALSE:
                return Answer.NO;
            case VALUE_STRING:
                String word = in.parser.getText();
                if (word.equals("yes")) {
                    return Answer.YES;
                }
                if (word.equals("no")) {
                    return Answer.NO;
                }
                in.error(
                        pointer,
                        "yes, no or unknown",
                        Input.quoted(word),
                        "",
                        Abbreviations.answer(word).map(w -> "write " + w).orElse("write one of these words"));
                return blank;
            default:
                in.wrong(pointer, "yes, no or unknown");
                return blank;
        }
    }

    private Object choice(FieldShape f, String pointer, Object blank) throws IOException {
        if (in.parser.currentToken() != JsonToken.VALUE_STRING) {
            in.wrong(pointer, oneOf(f));
            return blank;
        }
        String word = in.parser.getText();
        Fact<Choice> known = WORDS.get(f.holds()).get(word);
        if (known != null) {
            return f.kind() == Kind.CHOICE ? known : known.get();
        }
        Privacy.Refusal personal = Privacy.text(word);
        List<String> near = Abbreviations.choice(word, f.words());
        in.error(
                pointer,
                oneOf(f),
                personal != null ? personal.found() : Input.quoted(word),
                near.size() == 1 ? "a slip in writing " + near.get(0) : "",
                personal != null ? personal.mend() : near.isEmpty() ? "" : "write " + String.join(" or ", near));
        return blank;
    }

    private static String oneOf(FieldShape f) {
        return "one of " + String.join(", ", f.words());
    }

    private Object date(String pointer, Object blank) throws IOException {
        String expected = "a date as year-month-day, such as 2026-03-09";
        if (in.parser.currentToken() != JsonToken.VALUE_STRING) {
            in.wrong(pointer, expected);
            return blank;
        }
        String text = in.parser.getText();
        try {
            LocalDate date = text.length() == 10 ? DateSlips.read(text) : null;
            if (date != null && date.getYear() >= CaseWords.FIRST_YEAR && date.getYear() <= CaseWords.LAST_YEAR) {
                return Fact.of(date);
            }
            in.error(
                    pointer,
                    date == null ? expected : "a date from " + CaseWords.FIRST_YEAR + " to " + CaseWords.LAST_YEAR,
                    Input.quoted(text),
                    DateSlips.slip(text),
                    DateSlips.mend(text));
        } catch (DateTimeException e) {
            in.error(pointer, expected, Input.quoted(text), DateSlips.slip(text), DateSlips.mend(text));
        }
        return blank;
    }

    private Object text(FieldShape f, String pointer, Object blank) throws IOException {
        if (in.parser.currentToken() != JsonToken.VALUE_STRING) {
            in.wrong(pointer, "a text");
            return blank;
        }
        String text = in.parser.getText();
        Privacy.Refusal personal = Privacy.text(text);
        // what is not sure is looked at once the whole case is read: it may say that the words name nobody
        if (personal != null && personal.sure()) {
            in.error(pointer, "a text that does not tell who the patient is", personal.found(), "", personal.mend());
            return blank;
        }
        OptionalInt odd = Visible.odd(text);
        if (odd.isPresent()) {
            in.error(
                    pointer,
                    "a text of characters that can be seen",
                    "the character " + Visible.name(odd.getAsInt()),
                    "copied from another program",
                    "write the text anew");
            return blank;
        }
        String pattern = f.about().pattern();
        boolean fits = pattern.isEmpty()
                ? !text.isBlank() && text.length() <= CaseWords.LONGEST_TEXT
                : form(pattern).matcher(text).matches();
        if (!fits) {
            in.error(
                    pointer,
                    pattern.isEmpty()
                            ? "a text of 1 to " + CaseWords.LONGEST_TEXT + " characters"
                            : Abbreviations.within(f.about().value()),
                    Input.quoted(text),
                    "",
                    "");
            return blank;
        }
        return f.kind() == Kind.ID ? text : Fact.of(text);
    }

    private static Pattern form(String pattern) {
        Pattern known = PATTERNS.get(pattern);
        if (known == null) {
            known = Pattern.compile(pattern);
            PATTERNS.put(pattern, known);
        }
        return known;
    }

    private Object tooth(String pointer, Object blank) throws IOException {
        JsonToken t = in.parser.currentToken();
        if (t != JsonToken.VALUE_STRING && t != JsonToken.VALUE_NUMBER_INT) {
            in.wrong(pointer, Numbering.EXPECTED);
            return blank;
        }
        Tooth tooth = Numbering.tooth(in.parser.getText());
        if (tooth == null) {
            Numbering.refuse(in, pointer, in.parser.getText());
            return blank;
        }
        return Fact.of(tooth);
    }

    private Object format(String pointer, Object blank) throws IOException {
        if (in.parser.currentToken() == JsonToken.VALUE_NUMBER_INT
                && in.parser.getText().equals(Integer.toString(CaseWords.FORMAT))) {
            return CaseWords.FORMAT;
        }
        in.error(
                pointer,
                "the version of the case format: " + CaseWords.FORMAT,
                in.found(),
                "a case for another version of Fairlead",
                "");
        in.parser.skipChildren();
        return blank;
    }
}
