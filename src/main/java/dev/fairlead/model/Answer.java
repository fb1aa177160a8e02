package dev.fairlead.model;

import java.util.List;
import java.util.Objects;

/** A yes or no given by a person, or unknown, or not applicable. */
@SuppressWarnings("ReferenceEquality") // a yes, a no and what does not apply exist once each
public final class Answer implements CaseValue {
    public static final Answer YES = new Answer("yes", List.of());
    public static final Answer NO = new Answer("no", List.of());
    public static final Answer NOT_APPLICABLE = new Answer("does not apply", List.of());

    private final String word;
    private final List<String> missing;

    private Answer(String word, List<String> missing) {
        this.word = word;
        this.missing = missing;
    }

    public static Answer of(boolean yes) {
        return yes ? YES : NO;
    }

    /** An unknown answer; {@code pointer} says where in the case it would stand. */
    public static Answer unknown(String pointer) {
        return new Answer("unknown", List.of(pointer));
    }

    /** An unknown derived answer; {@code pointers} are the facts that would make it known. */
    public static Answer unknown(List<String> pointers) {
        return new Answer("unknown", List.copyOf(pointers));
    }

    /** True only for a known yes. */
    public boolean yes() {
        return this == YES;
    }

    /** True only for a known no. */
    public boolean no() {
        return this == NO;
    }

    @Override
    public boolean known() {
        return this == YES || this == NO;
    }

    @Override
    public boolean applies() {
        return this != NOT_APPLICABLE;
    }

    @Override
    public List<String> missing() {
        return missing;
    }

    /**
     * Yes when both are yes, no when either is no, else unknown with what is missing; not applicable parts are passed
     * over.
     */
    public Answer and(Answer other) {
        if (no() || other.no()) {
            return NO;
        }
        return join(other);
    }

    /**
     * Yes when either is yes, no when both are no, else unknown with what is missing; not applicable parts are passed
     * over.
     */
    public Answer or(Answer other) {
        if (yes() || other.yes()) {
            return YES;
        }
        return join(other);
    }

    private Answer join(Answer other) {
        if (!applies()) {
            return other;
        }
        if (!other.applies()) {
            return this;
        }
        if (known() && other.known()) {
            return this;
        }
        return new Answer("unknown", Pointers.union(missing, other.missing));
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Answer a && word.equals(a.word) && missing.equals(a.missing);
    }

    @Override
    public int hashCode() {
        return Objects.hash(word, missing);
    }

    @Override
    public String toString() {
        return word;
    }
}
