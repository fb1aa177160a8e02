package dev.fairlead.intake.tree;

import dev.fairlead.intake.spelling.Nearest;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A place in a case as a person types it: a JSON Pointer, or the same with points and without the first slash.
 *
 * @param pointer JSON Pointer (RFC 6901)
 * @param field the single fact there; empty when the format has none there
 * @param nearest what was probably meant, where the format has no such place; empty when nothing is near
 */
public record TypedPath(String pointer, Optional<FieldShape> field, Optional<String> nearest) {
    /** Takes what was typed, such as {@code plan.standOff} or {@code /teeth/31/width}. */
    public static TypedPath of(String typed) {
        String pointer = (typed.startsWith("/") ? "" : "/") + typed.strip().replace('.', '/');
        Optional<FieldShape> field =
                CasePaths.field(pointer).filter(f -> f.kind().fact() && !pointer.endsWith("/-"));
        return new TypedPath(pointer, field, field.isPresent() ? Optional.empty() : near(pointer));
    }

    private static Optional<String> near(String pointer) {
        StringBuilder path = new StringBuilder();
        RecordShape shape = RecordShape.ofCase();
        String[] parts = pointer.substring(1).split("/", -1);
        for (int i = 0; i < parts.length; i++) {
            if (shape == null) {
                return Optional.empty();
            }
            List<String> keys = shape.fields().stream().map(FieldShape::key).toList();
            Optional<String> key = keys.contains(parts[i]) ? Optional.of(parts[i]) : Nearest.of(parts[i], keys);
            if (key.isEmpty()) {
                return path.length() == 0
                        ? Optional.empty()
                        : Optional.of(path + "/… (" + String.join(", ", keys) + ")");
            }
            FieldShape field = Objects.requireNonNull(shape.field(key.get()));
            path.append('/').append(RecordShape.escape(key.get()));
            boolean entry = field.kind() == Kind.LIST || field.kind() == Kind.TOOTH_MAP;
            if (entry && ++i < parts.length) {
                path.append('/').append(parts[i]);
            }
            shape = entry || field.kind() == Kind.RECORD ? field.nested() : null;
        }
        return Optional.of(
                shape == null
                        ? path.toString()
                        : path + "/… ("
                                + String.join(
                                        ", ",
                                        shape.fields().stream()
                                                .map(FieldShape::key)
                                                .toList()) + ")");
    }
}
