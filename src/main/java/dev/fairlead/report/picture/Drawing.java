package dev.fairlead.report.picture;

import dev.fairlead.drawing.Picture;
import dev.fairlead.findings.Missing;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A picture of a case, or what is missing for it.
 *
 * @param title what is drawn, or would be
 * @param missing what is missing for it; beside a picture, what is missing in it
 */
public record Drawing(String title, Optional<Picture> picture, List<Missing> missing) {
    public Drawing {
        missing = List.copyOf(missing);
    }

    static Drawing of(Picture picture, CaseValue... wanted) {
        return new Drawing(picture.title(), Optional.of(picture), missing(wanted));
    }

    static Drawing without(String title, CaseValue... wanted) {
        return new Drawing(title, Optional.empty(), missing(wanted));
    }

    /** Nothing to draw and nothing missing: the case has not come to it, or has no use for it. */
    public boolean idle() {
        return picture.isEmpty() && missing.isEmpty();
    }

    /** The same, with what is there and cannot be used told apart from what was not entered. */
    Drawing in(Case c) {
        return new Drawing(
                title,
                picture,
                missing.stream().map(m -> Missing.in(c).apply(m.pointer())).toList());
    }

    private static List<Missing> missing(CaseValue... wanted) {
        TreeSet<String> pointers = new TreeSet<>();
        for (CaseValue k : wanted) {
            pointers.addAll(k.missing());
        }
        List<Missing> all = new ArrayList<>();
        pointers.stream().filter(p -> p.startsWith("/")).forEach(p -> all.add(Missing.of(p)));
        return all;
    }
}
