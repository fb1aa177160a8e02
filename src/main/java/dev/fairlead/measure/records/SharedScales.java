package dev.fairlead.measure.records;

import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.PictureReading;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What lengths that were read on one picture have in common: a scale that is 1 % too large makes all of them 1 % too
 * large, so that in a sum its error adds up instead of averaging out.
 */
final class SharedScales {
    private static final SharedScales NONE = new SharedScales(Map.of());

    /** One picture's share in a reading: {@code relative} of its length. */
    private record Share(String source, double relative) {}

    private final Map<String, List<Share>> byField;

    private SharedScales(Map<String, List<Share>> byField) {
        this.byField = byField;
    }

    static SharedScales of(Case c) {
        if (c.pictured().isEmpty()) {
            return NONE;
        }
        Map<String, List<Share>> byField = new HashMap<>();
        Map<Double, String> sources = new HashMap<>();
        for (int i = 0; i < c.pictured().size(); i++) {
            PictureReading r = c.pictured().get(i);
            if (r.field().known() && r.scaleError().known() && r.picture().known()) {
                String source = "/pictured/" + i + "/scaleError";
                String first = sources.putIfAbsent(r.picture().value(), source);
                byField.computeIfAbsent(r.field().get(), f -> new ArrayList<>())
                        .add(new Share(
                                first == null ? source : first, r.scaleError().value() / 100));
            }
        }
        return new SharedScales(byField);
    }

    /** The length with its whole error as it is, of which the part that comes of scales is shared. */
    Measured in(String field, Measured length) {
        List<Share> shares = byField.get(field);
        if (shares == null || !length.known() || length.unit() != Unit.MM) {
            return length;
        }
        Measured shared = length;
        int readings = Math.max(1, length.repeatCount());
        for (Share s : shares) {
            shared = shared.sharing(s.source(), Math.abs(length.value()) * s.relative() / readings);
        }
        return shared;
    }
}
