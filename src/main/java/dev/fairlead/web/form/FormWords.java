package dev.fairlead.web.form;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/** How words and numbers of a case read on a page. */
public final class FormWords {
    private static final Map<String, String> READS = Map.ofEntries(
            Map.entry("class-i", "Class I"),
            Map.entry("class-ii", "Class II"),
            Map.entry("class-iii", "Class III"),
            Map.entry("end-to-end", "End to end"),
            Map.entry("grade-0", "Grade 0"),
            Map.entry("grade-i", "Grade I"),
            Map.entry("grade-ii", "Grade II"),
            Map.entry("grade-iii", "Grade III"),
            Map.entry("india-punjab", "India (Punjab)"),
            Map.entry("spain", "Spain"),
            Map.entry("primary-present", "Primary there"),
            Map.entry("nickel-titanium", "Nickel-titanium"),
            Map.entry("beta-titanium", "Beta-titanium"),
            Map.entry("cobalt-chromium", "Cobalt-chromium"),
            Map.entry("nickel-free-steel", "Nickel-free steel"),
            Map.entry("extra-hard", "Extra-hard"));
    /** What the fields of both sides have in common, by the part of the case. */
    private static final Map<String, String> SIDES = Map.of(
            "bench", "Right and left fold",
            "insertion", "Right and left tube",
            "hardware", "Right and left tube and band",
            "films", "Second molar to first molar, on the film",
            "headFilm", "Second molar to first molar, on the film",
            "visits", "Right and left fold",
            "plan", "Right and left",
            "holding", "Right and left");
    /** What the other fields have in common where those of both sides stand before them. */
    private static final Map<String, String> WHOLE = Map.of(
            "bench", "Whole wire",
            "insertion", "Front, gum and protection",
            "hardware", "Before steel goes in",
            "visits", "Front, gum and roots",
            "space", "Front and whole arch");

    private FormWords() {}

    /** A word of a closed list as it reads. */
    public static String of(String word) {
        String known = READS.get(word);
        return known != null ? known : capital(word.replace('-', ' '));
    }

    /** The label of a field: the question itself for an answer. */
    public static String label(FieldShape f) {
        return f.kind() == Kind.ANSWER ? f.about().value() : capital(f.label());
    }

    /** The heading over fields of both sides. */
    static String sides(String pointer) {
        return SIDES.getOrDefault(part(pointer), "");
    }

    /** The heading over what is not of one side, below fields of both. */
    static String whole(String pointer) {
        return WHOLE.getOrDefault(part(pointer), "");
    }

    private static String part(String pointer) {
        return pointer.isEmpty() ? "" : pointer.split("/")[1];
    }

    /** A number without needless digits. */
    public static String number(double v) {
        return new BigDecimal(Double.toString(v))
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A quantity that was read, in its unit, in inches too where it is a size that is sold so, with its error. */
    public static String quantity(Measured m, FieldShape f) {
        Unit unit = f.about().unit();
        double v = m.unit().to(unit, m.value());
        String text =
                number(v) + (unit.symbol().isEmpty() ? "" : unit.symbol().equals("°") ? "°" : " " + unit.symbol());
        if (unit == Unit.MM && f.about().high() <= 1.5) {
            text += " = " + inch(v);
        }
        if (m.repeatCount() > 1) {
            text = "mean " + text;
        }
        return text;
    }

    /** Millimetres as inches to a ten-thousandth, the way wire and slots are named. */
    public static String inch(double mm) {
        String plain = BigDecimal.valueOf(mm)
                .divide(BigDecimal.valueOf(25.4), 4, RoundingMode.HALF_UP)
                .toPlainString();
        return (plain.endsWith("0") ? plain.substring(0, plain.length() - 1) : plain) + " in";
    }

    /** The text with a capital at its start. */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
