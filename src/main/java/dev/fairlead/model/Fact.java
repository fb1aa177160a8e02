package dev.fairlead.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A fact that is not a quantity (a date, a choice, a short text): known, unknown, or not applicable. */
public final class Fact<T> implements CaseValue {
    private static final Fact<?> NOT_APPLICABLE = new Fact<>(null, List.of(), false);

    private final @Nullable T value;
    private final List<String> missing;
    private final boolean applies;

    private Fact(@Nullable T value, List<String> missing, boolean applies) {
        this.value = value;
        this.missing = missing;
        this.applies = applies;
    }

    public static <T> Fact<T> of(T value) {
        return new Fact<>(Objects.requireNonNull(value), List.of(), true);
    }

    /** An unknown fact; {@code pointer} says where in the case it would stand. */
    public static <T> Fact<T> unknown(String pointer) {
        return new Fact<>(null, List.of(pointer), true);
    }

    @SuppressWarnings("unchecked")
    public static <T> Fact<T> notApplicable() {
        return (Fact<T>) NOT_APPLICABLE;
    }

    @Override
    public boolean known() {
        return value != null;
    }

    @Override
    public boolean applies() {
        return applies;
    }

    @Override
    public List<String> missing() {
        return missing;
    }

    /** True when known and equal to {@code other}; false when unknown. */
    public boolean is(T other) {
        return value != null && value.equals(other);
    }

    /** True when known and different from {@code other}; false when unknown, so it never passes by absence. */
    public boolean isOther(T other) {
        return value != null && !value.equals(other);
    }

    public Optional<T> value() {
        return Optional.ofNullable(value);
    }

    /** The value; throws when it is not known. */
    public T get() {
        if (value == null) {
            throw new IllegalStateException("not known: " + missing);
        }
        return value;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Fact<?> f
                && Objects.equals(value, f.value)
                && missing.equals(f.missing)
                && applies == f.applies;
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, missing, applies);
    }

    @Override
    public String toString() {
        return value != null ? value.toString() : applies ? "unknown" + missing : "does not apply";
    }
}
