package dev.fairlead.intake.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Turns the bytes of a file into text: UTF-8 with or without a byte order mark, and nothing else. */
public final class Decoding {
    private Decoding() {}

    /** The text, or null with a problem when the bytes are too many, none, or not UTF-8. */
    public static @Nullable String text(byte[] bytes, Problems problems) {
        if (bytes.length > CaseParsers.MOST_BYTES) {
            return refused(
                    problems,
                    0,
                    0,
                    "a file of at most " + CaseParsers.MOST_BYTES + " bytes",
                    "a larger one",
                    "look whether this is the right file");
        }
        if (bytes.length >= 2
                && (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF
                        || bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE
                        || bytes[0] == 0
                        || bytes[1] == 0)) {
            return refused(problems, 1, 1, "text in UTF-8", "text in UTF-16 or UTF-32", "save the file as UTF-8");
        }
        boolean mark =
                bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF;
        int from = mark ? 3 : 0;
        String text = new String(bytes, from, bytes.length - from, StandardCharsets.UTF_8);
        // a replacement character is there when bytes were bad, or when the file holds that very character
        if (text.indexOf('\uFFFD') >= 0) {
            CharBuffer out = CharBuffer.allocate(bytes.length);
            CoderResult result = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, bytes.length - from), out, true);
            if (result.isError()) {
                String good = out.flip().toString();
                int line = (int) good.chars().filter(c -> c == '\n').count() + 1;
                return refused(
                        problems,
                        line,
                        good.length() - good.lastIndexOf('\n'),
                        "text in UTF-8",
                        "a byte that is not UTF-8",
                        "save the file as UTF-8");
            }
        }
        if (text.isBlank()) {
            return refused(problems, 1, 1, "a case", "an empty file", "");
        }
        return text;
    }

    private static @Nullable String refused(
            Problems problems, int line, int column, String expected, String found, String mend) {
        problems.add(new Problem(Severity.ERROR, "", line, column, expected, found, Optional.empty(), mend));
        return null;
    }
}
