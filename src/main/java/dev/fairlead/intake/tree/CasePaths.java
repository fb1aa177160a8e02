package dev.fairlead.intake.tree;

import dev.fairlead.intake.bind.Numbering;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds what a JSON Pointer means in the case format, whether or not a case holds anything there. */
public final class CasePaths {
    private CasePaths() {}

    /**
     * The field at a pointer such as {@code /teeth/31/width} or {@code /visits/0/left/gapOpened}; empty when the format
     * has none there, and for an entry of a list or a tooth as a whole.
     */
    public static Optional<FieldShape> field(String pointer) {
        RecordShape shape = RecordShape.ofCase();
        @Nullable FieldShape field = null;
        boolean element = false;
        if (!pointer.startsWith("/")) {
            return Optional.empty();
        }
        for (String part : pointer.substring(1).split("/", -1)) {
            if (element && field != null) {
                boolean fits = field.kind() == Kind.TOOTH_MAP
                        ? Numbering.tooth(part) != null
                        : part.matches("0|[1-9][0-9]{0,3}|-");
                if (!fits) {
                    return Optional.empty();
                }
                shape = field.nested();
                field = null;
                element = false;
                continue;
            }
            field = shape == null ? null : shape.field(part.replace("~1", "/").replace("~0", "~"));
            if (field == null) {
                return Optional.empty();
            }
            element = field.kind() == Kind.LIST || field.kind() == Kind.TOOTH_MAP;
            shape = field.kind() == Kind.RECORD ? field.nested() : null;
        }
        return Optional.ofNullable(field);
    }
}
