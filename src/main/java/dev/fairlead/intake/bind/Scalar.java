package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonLocation;
import java.io.IOException;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A number or text with its place, kept until the unit that belongs to it has been read. */
record Scalar(String text, boolean numeric, @Nullable JsonLocation at) {
    /** The current token, or null when it is neither. */
    static @Nullable Scalar of(Input in) throws IOException {
        return switch (in.parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Scalar(in.parser.getText(), true, place(in));
            case VALUE_STRING -> new Scalar(in.parser.getText(), false, place(in));
            default -> null;
        };
    }

    private static @Nullable JsonLocation place(Input in) {
        return in.problems.kept() ? in.parser.currentTokenLocation() : null;
    }

    /** Where it begins; asked only in a reading that keeps places. */
    long offset() {
        return Objects.requireNonNull(at).getCharOffset();
    }

    String found() {
        return numeric ? "the number " + text : Input.quoted(text);
    }
}
