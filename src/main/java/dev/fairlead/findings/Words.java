package dev.fairlead.findings;

import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Says in words what a JSON Pointer into a case points at, from the labels of the case model. */
public final class Words {
    private Words() {}

    /** Words such as "gingival thickness of tooth 41" or "stand off, visit 2, left". */
    public static String of(String pointer) {
        if (pointer.endsWith("/-")) {
            return "second reading of " + of(pointer.substring(0, pointer.length() - 2));
        }
        List<String> where = new ArrayList<>();
        String what = "";
        RecordShape shape = RecordShape.ofCase();
        String[] steps = pointer.split("/");
        for (int i = 1; i < steps.length; i++) {
            String key = steps[i].replace("~1", "/").replace("~0", "~");
            FieldShape field = shape == null ? null : shape.field(key);
            if (field == null) {
                what = apart(key);
                shape = null;
                continue;
            }
            boolean last = i == steps.length - 1;
            if (last) {
                what = field.kind().fact() ? field.label() : "everything about " + field.label();
            } else if (field.kind() == Kind.TOOTH_MAP) {
                i++;
                where.clear(); // the tooth tells where better than the section does
                where.add(
                        (field.label().equals("teeth") ? "" : singular(field.label()) + " of ") + "tooth " + steps[i]);
            } else if (field.kind() == Kind.LIST && steps[i + 1].matches("\\d{1,6}")) {
                i++;
                where.add(singular(field.label()) + " " + (Integer.parseInt(steps[i]) + 1));
            } else {
                where.add(field.label());
            }
            shape = nested(field);
        }
        return join(what, where);
    }

    private static @Nullable RecordShape nested(FieldShape field) {
        return field.element() != null && field.element().isRecord() ? field.nested() : null;
    }

    private static String join(String what, List<String> where) {
        if (what.isEmpty()) {
            return String.join(", ", where);
        }
        if (where.isEmpty()) {
            return what;
        }
        boolean tooth = where.get(0).startsWith("tooth ");
        return what + (tooth ? " of " : ", ") + String.join(", ", where);
    }

    private static String singular(String plural) {
        return plural.endsWith("s") ? plural.substring(0, plural.length() - 1) : plural;
    }

    /** A key with its words apart. */
    static String apart(String key) {
        return key.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
