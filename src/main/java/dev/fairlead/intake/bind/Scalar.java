package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonLocation;
import java.io.IOException;

/** A number or text with its place, kept until the unit that belongs to it has been read. */
record Scalar(String text, boolean numeric, JsonLocation at) {
    /** The current token, or null when it is neither. */
    static Scalar of(Input in) throws IOException {
        return switch (in.parser.currentToken()) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Scalar(in.parser.getText(), true, place(in));
            case VALUE_STRING -> new Scalar(in.parser.getText(), false, place(in));
            default -> null;
        };
    }

    private static JsonLocation place(Input in) {
        return in.problems.kept() ? in.parser.currentTokenLocation() : null;
    }

    String found() {
        return numeric ? "the number " + text : Input.quoted(text);
    }
}
