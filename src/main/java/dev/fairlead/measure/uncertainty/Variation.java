package dev.fairlead.measure.uncertainty;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Case;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import dev.fairlead.model.shape.SharedScales;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Makes variants of a case in which every measurement that has an error is off by a random amount of its own error. A
 * variant stays within the range that the field allows: nobody would have recorded a value outside it. Its values are
 * exact: no outcome depends on an error, and working errors out would take most of the time.
 */
final class Variation {
    /** A part of the case that holds something to vary; gives a varied copy. */
    private interface Part {
        Object vary(double[] normal);
    }

    private final List<String> pointers = new ArrayList<>();
    private final RawErrors errors;
    private final Part whole;

    Variation(Case c) {
        this.errors = new RawErrors(new Readings(c));
        Part root = record(c, "");
        this.whole = root == null ? normal -> c : root;
    }

    /** The measurements that are varied, as JSON Pointers, in the order of the case. */
    List<String> pointers() {
        return List.copyOf(pointers);
    }

    /** A variant; {@code normal} holds a standard normal number for each pointer, in their order. */
    Case next(double[] normal) {
        return (Case) whole.vary(normal);
    }

    private @Nullable Part record(Record r, String at) {
        RecordShape shape = RecordShape.of(r.getClass());
        List<Part> parts = new ArrayList<>();
        List<Integer> places = new ArrayList<>();
        Object[] values = new Object[shape.fields().size()];
        for (FieldShape f : shape.fields()) {
            Object value = f.get(r);
            values[f.index()] = value;
            Part part = part(f, value, at + "/" + RecordShape.escape(f.key()));
            if (part != null) {
                parts.add(part);
                places.add(f.index());
            }
        }
        if (parts.isEmpty()) {
            return null;
        }
        Part[] varied = parts.toArray(Part[]::new);
        int[] where = places.stream().mapToInt(Integer::intValue).toArray();
        return normal -> {
            Object[] copy = values.clone();
            for (int i = 0; i < varied.length; i++) {
                copy[where[i]] = varied[i].vary(normal);
            }
            return shape.make(copy);
        };
    }

    private @Nullable Part part(FieldShape f, Object value, String at) {
        return switch (f.kind()) {
            case QUANTITY -> quantity(f.about(), (Measured) value, at);
            case RECORD -> record((Record) value, at);
            case LIST -> list((List<?>) value, at);
            case TOOTH_MAP -> map((Map<?, ?>) value, at);
            default -> null;
        };
    }

    private @Nullable Part quantity(Field about, Measured m, String at) {
        Measured counted = errors.counted(at, m);
        double whole = counted.known() ? counted.sd() : 0;
        if (whole == 0 || m.value() == 0 && about.low() == 0 && about.error().inTheMouth()) {
            // a probe that reads zero where nothing lies below it has found nothing: there is no size that could have
            // been misread
            return !m.known() || m.sd() == 0 ? null : normal -> m.withoutError();
        }
        List<String> scales =
                counted.sources().stream().filter(SharedScales::isScale).toList();
        int[] which = new int[scales.size() + 1];
        double[] by = new double[which.length];
        double rest = whole * whole;
        for (int i = 0; i < scales.size(); i++) {
            // one draw moves all lengths of a picture the same way
            double part = counted.part(scales.get(i));
            rest -= part * part;
            which[i] = place(scales.get(i));
            by[i] = part;
        }
        pointers.add(at);
        which[scales.size()] = pointers.size() - 1;
        by[scales.size()] = Math.sqrt(Math.max(0, rest));
        Measured exact = m.withoutError();
        double value = m.value();
        double low = Math.min(about.low(), value);
        double high = Math.max(about.high(), value);
        return normal -> {
            double drawn = value;
            for (int i = 0; i < which.length; i++) {
                drawn += by[i] * normal[which[i]];
            }
            return exact.shifted(Math.max(low, Math.min(high, drawn)) - value);
        };
    }

    private int place(String pointer) {
        int there = pointers.indexOf(pointer);
        if (there >= 0) {
            return there;
        }
        pointers.add(pointer);
        return pointers.size() - 1;
    }

    private @Nullable Part list(List<?> list, String at) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            parts.add(record((Record) list.get(i), at + "/" + i));
        }
        if (parts.stream().allMatch(p -> p == null)) {
            return null;
        }
        return normal -> {
            List<Object> copy = new ArrayList<>(list);
            for (int i = 0; i < copy.size(); i++) {
                if (parts.get(i) != null) {
                    copy.set(i, parts.get(i).vary(normal));
                }
            }
            return copy;
        };
    }

    private @Nullable Part map(Map<?, ?> map, String at) {
        Map<Object, Part> parts = new TreeMap<>();
        // in order: pointers are to stand as numbers are drawn for them, and the map's own order differs from run to
        // run
        new TreeMap<>(map)
                .forEach((tooth, r) ->
                        parts.put(tooth, r == null ? null : record((Record) r, at + "/" + (Tooth) tooth)));
        parts.values().removeIf(p -> p == null);
        if (parts.isEmpty()) {
            return null;
        }
        return normal -> {
            Map<Object, Object> copy = new HashMap<>(map);
            parts.forEach((tooth, p) -> copy.put(tooth, p.vary(normal)));
            return copy;
        };
    }
}
