package dev.fairlead.report.wire;

import dev.fairlead.drawing.Wrap;
import dev.fairlead.findings.Missing;
import dev.fairlead.rules.catalogue.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The wire of one case as plain text for 80 columns; numbers in brackets are those of the sources at its end. */
public final class WireText {
    private static final int WIDE = 16;
    private static final int NARROW = 13;

    private WireText() {}

    public static String of(WireReport r) {
        StringBuilder out = new StringBuilder(Wrap.hanging("", "Wire of case " + r.id() + ": " + r.basis() + "."));
        List<String> keys = new ArrayList<>(r.sources().keySet());
        List<Source> sources = new ArrayList<>(r.sources().values());
        for (Section s : r.sections()) {
            out.append('\n');
            section(s, r.waits(s), keys, out);
        }
        out.append("\nWHAT THE MODEL CANNOT KNOW\n");
        r.cannot().forEach(c -> out.append(Wrap.hanging("  ", c)));
        out.append("\nSOURCES\n");
        for (int i = 0; i < keys.size(); i++) {
            out.append(Wrap.hanging("  [" + (i + 1) + "] ", sources.get(i).citation()));
        }
        return out.append('\n').append(Wrap.hanging("", r.caution())).toString();
    }

    private static void section(Section s, List<Missing> waits, List<String> keys, StringBuilder out) {
        int columns = s.lines().stream().mapToInt(l -> l.cells().size()).max().orElse(1);
        columns = Math.max(columns, s.head().size());
        int wide = columns <= 2 ? WIDE : columns == 3 ? WIDE - 1 : columns == 4 ? NARROW : NARROW - 1;
        int label = Wrap.WIDTH - 2 - columns * wide;
        String title = s.title().toUpperCase(Locale.ROOT);
        boolean roomy = Wrap.columns(title) <= label + 1;
        out.append(roomy ? title + " ".repeat(label + 2 - Wrap.columns(title)) : title + "\n" + " ".repeat(label + 2));
        s.head().forEach(h -> out.append(right(h, wide)));
        trim(out);
        for (Line l : s.lines()) {
            line(l, keys, label, wide, out);
        }
        s.notes().forEach(n -> out.append(Wrap.hanging("  ", n)));
        if (!waits.isEmpty()) {
            out.append(Wrap.hanging(
                    "  " + Missing.heading(waits).toLowerCase(Locale.ROOT) + "  ",
                    waits.stream().map(m -> m.words() + " " + m.pointer()).collect(Collectors.joining("; "))));
        }
    }

    private static void line(Line l, List<String> keys, int label, int wide, StringBuilder out) {
        String refs = l.sources().isEmpty()
                ? ""
                : " ["
                        + l.sources().stream()
                                .map(k -> keys.indexOf(k) + 1)
                                .sorted()
                                .map(String::valueOf)
                                .collect(Collectors.joining(","))
                        + "]";
        String name = "  " + l.label() + refs;
        boolean fits = Wrap.columns(name) <= label + 2;
        boolean one = l.cells().size() == 1;
        boolean wordy = !one && l.cells().stream().anyMatch(c -> Wrap.columns(c.text()) >= wide);
        out.append(fits ? name + " ".repeat(label + 2 - Wrap.columns(name)) : name + "\n" + " ".repeat(label + 2));
        if (wordy) {
            trim(out);
            l.cells().forEach(c -> out.append(right(c.text(), Wrap.WIDTH)).append('\n'));
        } else {
            l.cells().forEach(c -> out.append(right(c.text(), wide)));
            trim(out);
        }
    }

    private static String right(String text, int wide) {
        return " ".repeat(Math.max(1, wide - Wrap.columns(text))) + text;
    }

    private static void trim(StringBuilder out) {
        int end = out.length();
        while (end > 0 && out.charAt(end - 1) == ' ') {
            end--;
        }
        out.setLength(end);
        out.append('\n');
    }
}
