package dev.fairlead.model.shape;

import dev.fairlead.model.Choice;
import dev.fairlead.model.Field;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One component of a case record.
 *
 * @param key the key in a case file
 * @param kind what it holds
 * @param about wording, unit, range
 * @param element the record class of a {@code RECORD}, {@code LIST} or {@code TOOTH_MAP}, the enum of a choice, else
 *     null
 * @param index position among the record's components
 */
public record FieldShape(
        String key, Kind kind, Field about, @Nullable Class<?> element, int index) {
    /** The class of what it holds; throws where it holds neither records nor choices. */
    public Class<?> holds() {
        return Objects.requireNonNull(element, key);
    }

    /** The shape of the nested record. */
    public RecordShape nested() {
        return RecordShape.of(holds().asSubclass(Record.class));
    }

    /** The words of a choice in their order. */
    public List<String> words() {
        return choices().stream().map(Choice::word).toList();
    }

    /** The values of a choice in their order; empty for other kinds. */
    public List<Choice> choices() {
        if (kind != Kind.CHOICE) {
            return List.of();
        }
        return java.util.Arrays.stream(holds().getEnumConstants())
                .map(Choice.class::cast)
                .toList();
    }

    /** The label for people: the given one, or the key with its words apart. */
    public String label() {
        if (!about.label().isEmpty()) {
            return about.label();
        }
        return key.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
    }

    /** Reads this component of a record. */
    public Object get(Record record) {
        return RecordShape.of(record.getClass()).get(record, this);
    }
}
