package dev.fairlead.model.shape;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.PictureReading;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What lengths that were read on one picture have in common: a scale that is 1 % too large makes all of them 1 % too
 * large, so that in a sum its error adds up instead of averaging out.
 */
public final class SharedScales {
    private static final String PICTURED = "/pictured/";
    private static final String SCALE = "/scaleError";
    /** In the place of a field it stands for all points of the arch: their coordinates come of one picture. */
    public static final String LANDMARKS = "/landmarks";

    private static final SharedScales NONE = new SharedScales(Map.of());

    /** One picture's share in a reading: {@code relative} of its length. */
    private record Share(String source, double relative) {}

    private final Map<String, List<Share>> byField;

    private SharedScales(Map<String, List<Share>> byField) {
        this.byField = byField;
    }

    /** Those of a case. */
    public static SharedScales of(Case c) {
        if (c.pictured().isEmpty()) {
            return NONE;
        }
        Map<String, List<Share>> byField = new HashMap<>();
        Map<Double, String> sources = new HashMap<>();
        for (int i = 0; i < c.pictured().size(); i++) {
            PictureReading r = c.pictured().get(i);
            if (r.field().known() && r.scaleError().known() && r.picture().known()) {
                String source = PICTURED + i + SCALE;
                String first = sources.putIfAbsent(r.picture().value(), source);
                byField.computeIfAbsent(r.field().get(), f -> new ArrayList<>())
                        .add(new Share(
                                first == null ? source : first, r.scaleError().value() / 100));
            }
        }
        return new SharedScales(byField);
    }

    /** The length with its whole error as it is, of which the part that comes of scales is shared. */
    public Measured in(String field, Measured length) {
        List<Share> shares = byField.get(field.startsWith(LANDMARKS) ? LANDMARKS : field);
        if (shares == null || !length.known() || length.unit() != Unit.MM) {
            return length;
        }
        Measured shared = length;
        int readings = Math.max(1, length.repeatCount());
        for (Share s : shares) {
            if (length.part(s.source()) == 0) {
                shared = shared.sharing(s.source(), length.value() * s.relative() / readings);
            }
        }
        return shared;
    }

    /** The case with the shared part told apart in every length that was read on a picture. */
    public static Case in(Case c) {
        SharedScales scales = of(c);
        Case shared = c;
        for (String field : scales.fields(c)) {
            if (Edit.find(shared, field).orElse(null) instanceof Measured m) {
                Measured in = scales.in(field, m);
                shared = Edit.set(shared, field, in);
            }
        }
        return shared;
    }

    /** The length with its whole error as its own, none of it shared. */
    public static Measured alone(Measured length) {
        List<String> own = length.sources().stream().filter(s -> !isScale(s)).toList();
        return own.size() == length.sources().size()
                ? length
                : Measured.of(length.value(), length.unit(), own.get(0), length.sd(), length.repeats());
    }

    private Set<String> fields(Case c) {
        Set<String> all = new TreeSet<>(byField.keySet());
        if (all.remove(LANDMARKS)) {
            for (int i = 0; i < c.landmarks().size(); i++) {
                all.add(LANDMARKS + '/' + i + "/x");
                all.add(LANDMARKS + '/' + i + "/y");
                all.add(LANDMARKS + '/' + i + "/z");
            }
        }
        return all;
    }

    /** True for a source of error that is the scale of a picture. */
    public static boolean isScale(String source) {
        return source.startsWith(PICTURED) && source.endsWith(SCALE);
    }
}
