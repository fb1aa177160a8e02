package dev.fairlead.findings;

import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Field;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The error that is assumed for a measurement where a case states none and has too few duplicates of its own.
 *
 * @param sd one standard deviation of a single reading, in {@code unit}
 * @param source where the figure comes from
 */
public record AssumedError(double sd, Unit unit, String source) {
    /**
     * The one assumed for the measurement at a JSON Pointer (RFC 6901) into a case; empty when it points at no
     * measurement.
     */
    public static Optional<AssumedError> of(String pointer) {
        RecordShape shape = RecordShape.ofCase();
        String[] steps = pointer.split("/");
        for (int i = 1; i < steps.length && shape != null; i++) {
            FieldShape field = shape.field(steps[i].replace("~1", "/").replace("~0", "~"));
            if (field == null) {
                return Optional.empty();
            }
            if (i == steps.length - 1) {
                return field.kind() == Kind.QUANTITY && field.about().error() != ErrorKind.NONE
                        ? Optional.of(of(field.about()))
                        : Optional.empty();
            }
            i += field.kind() == Kind.TOOTH_MAP || field.kind() == Kind.LIST ? 1 : 0;
            shape = field.element() != null && field.element().isRecord() ? field.nested() : null;
        }
        return Optional.empty();
    }

    private static AssumedError of(Field about) {
        return new AssumedError(
                about.error().defaultSd(), about.unit(), about.error().source());
    }

    /** Such as "0.4 mm: reading of a probe or ruler in the mouth". */
    public String says() {
        String number = sd == Math.rint(sd) ? Long.toString(Math.round(sd)) : Double.toString(sd);
        return number + (unit == Unit.DEGREE || unit == Unit.PERCENT ? "" : " ") + unit.symbol() + ": " + source;
    }

    /** What stands in front of the errors that are assumed. */
    public static final String INTRODUCTION =
            "Where the case states no error of its own, one standard deviation of a reading is taken as";

    /** The errors assumed for these measurements, each told once. */
    public static List<String> all(List<String> pointers) {
        Set<String> all = new LinkedHashSet<>();
        for (String pointer : pointers) {
            of(pointer).ifPresent(assumed -> all.add(assumed.says()));
        }
        return List.copyOf(all);
    }

    /** One sentence on the errors assumed for these measurements; empty when none is. */
    public static String sentence(List<String> pointers) {
        List<String> all = all(pointers);
        return all.isEmpty() ? "" : INTRODUCTION + " " + String.join("; as ", all) + ".";
    }
}
