package dev.fairlead.web.plan;

import dev.fairlead.check.whatif.Change;
import dev.fairlead.check.whatif.Difference;
import dev.fairlead.check.whatif.Suggestion;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.working.Say;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A suggestion as a page shows it.
 *
 * @param difference what it would change
 */
public record PlanOffer(Suggestion suggestion, Difference difference) {
    /** The new values as a form sends them, by pointer. */
    public Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        suggestion.changes().forEach(c -> typed.put(c.pointer(), typed(c)));
        return typed;
    }

    /** A new value as a person would type it into its field. */
    static String typed(Change c) {
        return c.value() instanceof Double d
                ? new java.math.BigDecimal(d.toString()).stripTrailingZeros().toPlainString()
                : String.valueOf(c.value());
    }

    /** Whether a fact is a decision of the plan, which a case may hold before anything is done. */
    public static boolean planned(String pointer) {
        return pointer.startsWith("/plan/") || pointer.startsWith("/wire/");
    }

    /** What has to be bent or set so and then measured: a case holds what was read there, never what should be. */
    public List<Change> toBeMeasured() {
        return suggestion.changes().stream().filter(c -> !planned(c.pointer())).toList();
    }

    /** True when nothing of it is a decision of the plan. */
    public boolean nothingPlanned() {
        return toBeMeasured().size() == suggestion.changes().size();
    }

    /** What it costs the child, in sentences. */
    public List<String> costs() {
        List<String> all = new ArrayList<>();
        for (Side side : Side.values()) {
            Measured spare = suggestion.spare().get(side.ordinal());
            if (spare.known() && spare.value() < 0) {
                all.add("The " + side.word() + " side then gets "
                        + Numbers.text(Measured.exact(-spare.value(), spare.unit()))
                        + " less advance than it needs for its teeth.");
            }
        }
        return all;
    }

    /** A worked number before or after, to the digits that a change shows in. */
    public static String number(Measured m) {
        String symbol = m.known() ? m.unit().symbol() : "";
        return m.known()
                ? Say.num(m.value()) + (symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol)
                : Numbers.text(m);
    }
}
