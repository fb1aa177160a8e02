package dev.fairlead.web.form;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns the values of a sent form into what was typed for each fact. */
public final class Typed {
    /** Before the pointer of a fact, for the choice between a value, unknown and inapplicable. */
    public static final String STATE = "state:";

    /** Before the pointer of a quantity, for the error that it states itself. */
    public static final String ERROR = "error:";
    /** Between a quantity and its error. */
    static final String PLUS_MINUS = " ± ";

    private Typed() {}

    /**
     * What was typed, by pointer; several readings of one quantity have semicolons between, a stated error stands
     * behind ±. {@code only}, unless empty, takes that fact alone.
     */
    public static Map<String, String> of(Map<String, List<String>> sent, String only) {
        Map<String, String> typed = new LinkedHashMap<>();
        sent.forEach((name, values) -> {
            String pointer = name.startsWith(STATE) ? name.substring(STATE.length()) : name;
            Optional<FieldShape> field = pointer.startsWith("/") ? CasePaths.field(pointer) : Optional.empty();
            if (field.isPresent() && single(field.get()) && (only.isEmpty() || only.equals(pointer))) {
                String state = sent.getOrDefault(STATE + pointer, List.of()).stream()
                        .filter(v -> !v.isEmpty())
                        .findFirst()
                        .orElse("");
                String value = sent.getOrDefault(pointer, List.of()).stream()
                        .map(String::strip)
                        .filter(v -> !v.isEmpty())
                        .collect(Collectors.joining("; "));
                // a value that somebody typed outweighs a mark that was left standing
                typed.put(pointer, value.isEmpty() ? state : word(value) + error(sent, pointer, word(value)));
            }
        });
        return typed;
    }

    /**
     * An error that was stated stays with the value when only that is changed; an error that is typed behind the value
     * outweighs it.
     */
    private static String error(Map<String, List<String>> sent, String pointer, String value) {
        String error = sent.getOrDefault(ERROR + pointer, List.of()).stream()
                .map(String::strip)
                .filter(v -> !v.isEmpty())
                .findFirst()
                .orElse("");
        boolean none = error.isEmpty()
                || value.equals("unknown")
                || value.equals("does-not-apply")
                || value.matches(".*(±|\\+/?-).*");
        return none ? "" : PLUS_MINUS + error;
    }

    private static boolean single(FieldShape f) {
        return f.kind() != Kind.RECORD
                && f.kind() != Kind.LIST
                && f.kind() != Kind.TOOTH_MAP
                && f.kind() != Kind.FORMAT;
    }

    /** Short ways to say on a keyboard that a fact is not known or does not apply. */
    private static String word(String value) {
        return switch (value.toLowerCase(java.util.Locale.ROOT)) {
            case "?", "??" -> "unknown";
            case "n/a", "na", "/" -> "does-not-apply";
            default -> value;
        };
    }
}
