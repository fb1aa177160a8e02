package dev.fairlead.report.text;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.rules.catalogue.Source;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Worked numbers as plain text for 80 columns: result, formula, substituted values, source. */
public final class WorkText {
    private WorkText() {}

    /** Workings of a case under their headings; {@code sources} is the bibliography. */
    public static String of(List<Working> workings, Case subject, Map<String, Source> sources) {
        StringBuilder out = new StringBuilder();
        String group = "";
        for (Working w : workings) {
            if (!w.group().equals(group)) {
                group = w.group();
                out.append(out.isEmpty() ? "" : "\n")
                        .append(group.toUpperCase(java.util.Locale.ROOT))
                        .append('\n');
            }
            one(w, subject, sources, out);
        }
        return out.toString();
    }

    private static void one(Working w, Case subject, Map<String, Source> sources, StringBuilder out) {
        out.append(Wrap.hanging("  ", w.title() + ": " + Numbers.text(w.value())));
        if (!w.value().known() && w.value().applies()) {
            List<Missing> missing = Missing.of(w.value(), subject);
            boolean entered = Missing.heading(missing).equals(Missing.WAITS);
            out.append(Wrap.hanging(
                    entered ? "      waits for  " : "      missing  ",
                    missing.stream().map(m -> m.words() + " " + m.pointer()).collect(Collectors.joining("; "))));
        }
        if (!w.formula().isEmpty()) {
            out.append(Wrap.hanging("      formula  ", w.formula()));
        }
        if (!w.substituted().isEmpty()) {
            out.append(Wrap.hanging("      here     ", w.substituted()));
        }
        if (!w.note().isEmpty()) {
            out.append(Wrap.hanging("      note     ", w.note()));
        }
        String cited = w.sources().stream()
                .map(k -> sources.containsKey(k) ? sources.get(k).citation() : k)
                .collect(Collectors.joining(" "));
        if (!cited.isEmpty()) {
            out.append(Wrap.hanging("      source   ", cited));
        }
    }
}
