package dev.fairlead.findings;

import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Need;
import dev.fairlead.rules.catalogue.Threshold;
import dev.fairlead.rules.language.Verdict;
import dev.fairlead.rules.verdict.PlaceResult;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Fills the placeholders of a criterion's texts: {value}, {-value}, {limit}, {place}, a threshold, or a component that
 * the criterion needs; {a..b} for a span that is one number where both are the same; {value|# over|# short|as planned}
 * for words by the sign of a number, which stands without it where # is.
 */
final class Template {
    /**
     * In front of a component: its value with the opposite sign, so that a text can say "below" of a negative "over".
     */
    private static final String OPPOSITE = "-";

    /** Between the two ends of a span. */
    private static final String SPAN = "..";

    private final Criterion criterion;
    private final Catalogue catalogue;

    Template(Criterion criterion, Catalogue catalogue) {
        this.criterion = criterion;
        this.catalogue = catalogue;
    }

    /** A text that speaks of thresholds alone. */
    String general(String text) {
        return fill(text, null, null);
    }

    /** A text on what a verdict saw at a place. */
    String at(String text, PlaceResult place, Verdict verdict) {
        return fill(text, place, verdict);
    }

    private String fill(String text, @Nullable PlaceResult place, @Nullable Verdict verdict) {
        StringBuilder filled = new StringBuilder();
        int copied = 0;
        int after = 0;
        for (int close = text.indexOf('}'); close >= 0; close = text.indexOf('}', after)) {
            int open = text.lastIndexOf('{', close);
            if (open >= after && open + 1 < close) {
                filled.append(text, copied, open).append(value(text.substring(open + 1, close), place, verdict));
                copied = close + 1;
            }
            after = close + 1;
        }
        return copied == 0 ? text : filled.append(text, copied, text.length()).toString();
    }

    private String value(String name, @Nullable PlaceResult place, @Nullable Verdict verdict) {
        int bar = name.indexOf('|');
        if (bar > 0) {
            return bySign(name.substring(0, bar), name.substring(bar + 1).split("\\|"), place, verdict);
        }
        int dots = name.indexOf(SPAN);
        if (dots > 0) {
            String from = value(name.substring(0, dots), place, verdict);
            String to = value(name.substring(dots + SPAN.length()), place, verdict);
            return from.equals(to) ? from : from + " to " + to;
        }
        if (verdict != null && !verdict.seen().isEmpty() && name.matches("-?value|limit")) {
            Verdict.Seen seen = verdict.seen().get(0);
            Threshold t = catalogue.threshold(seen.limit());
            return switch (name) {
                case "value" -> Numbers.beside(seen.value(), t);
                case "-value" -> Numbers.oppositeBeside(seen.value(), t);
                default -> Numbers.text(t);
            };
        }
        if (place != null && name.equals("place")) {
            return place.place().words();
        }
        Threshold own = criterion.thresholds().containsKey(name)
                ? criterion.thresholds().get(name)
                : catalogue.thresholds().get(name);
        if (own != null) {
            return Numbers.text(own);
        }
        boolean opposite = name.startsWith(OPPOSITE);
        String component = opposite ? name.substring(OPPOSITE.length()) : name;
        for (Need need : criterion.needs()) {
            if (place != null && place.fact() != null && need.component().equals(component)) {
                CaseValue known = need.of(place.fact());
                return text(opposite && known instanceof Measured m ? m.times(-1) : known, verdict);
            }
        }
        throw new IllegalStateException(criterion.id() + ": nothing fills {" + name + "}");
    }

    /** Words for a number above nought, below it, and, where they differ, for one that shows as nought. */
    private String bySign(String name, String[] words, @Nullable PlaceResult place, @Nullable Verdict verdict) {
        String shown = value(name, place, verdict);
        boolean below = shown.replaceFirst("^\\(", "").startsWith(OPPOSITE);
        String number = below ? value(OPPOSITE + name, place, verdict) : shown;
        boolean nought = words.length > 2 && number.replaceFirst(" ±.*", "").matches("\\D*0(\\.0*)?\\D*");
        return words[nought ? 2 : below ? 1 : 0].replace("#", number);
    }

    /** A component; with the decimals of its threshold when it was held against one. */
    @SuppressWarnings("ReferenceEquality") // an equal number elsewhere was held against another threshold
    private String text(CaseValue known, @Nullable Verdict verdict) {
        if (!(known instanceof Measured m)) {
            return known.toString();
        }
        for (Verdict.Seen seen : verdict == null ? List.<Verdict.Seen>of() : verdict.seen()) {
            if (seen.value() == m) {
                return Numbers.beside(m, catalogue.threshold(seen.limit()));
            }
        }
        return Numbers.text(m);
    }
}
