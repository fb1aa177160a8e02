package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;

/** The parsers for case files, with limits far above any case and far below what would tie up a machine. */
public final class CaseParsers {
    /** Bytes of a file; a case with a hundred visits has about 60 000. */
    public static final int MOST_BYTES = 2_000_000;

    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(50)
            .maxStringLength(10_000)
            .maxNumberLength(40)
            .maxTokenCount(200_000)
            .maxNameLength(200)
            .maxDocumentLength(MOST_BYTES)
            .build();
    /**
     * The YAML parser copies its buffer again and again within one run of characters: a line of a million takes
     * seconds, of this length 25 ms.
     */
    private static final int LONGEST_LINE = 100_000;

    private CaseParsers() {}

    /** Made when the first JSON is read: a reader of YAML does without. */
    private static final class Json {
        // NaN and Infinity are let through here so that they are refused at their field, together with all other
        // problems
        private static final JsonFactory FACTORY = JsonFactory.builder()
                .streamReadConstraints(LIMITS)
                .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                .build();
    }

    /** JSON straight from bytes that are known to be UTF-8. */
    public static JsonParser open(byte[] json) throws IOException {
        return Json.FACTORY.createParser(json);
    }

    /** A parser of text; what is no plain YAML is told to {@code problems}. */
    public static JsonParser open(String text, CaseFormat format, Problems problems) throws IOException {
        if (format != CaseFormat.YAML) {
            return Json.FACTORY.createParser(text);
        }
        int start = 0;
        for (int end = text.indexOf('\n'); start < text.length(); start = end + 1, end = text.indexOf('\n', start)) {
            end = end < 0 ? text.length() : end;
            if (end - start > LONGEST_LINE) {
                throw new StreamConstraintsException("a line of more than " + LONGEST_LINE + " characters");
            }
        }
        return new YamlTokens(text, LIMITS, problems);
    }
}
