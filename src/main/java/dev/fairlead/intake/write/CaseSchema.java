package dev.fairlead.intake.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The JSON Schema (draft 2020-12) of a case, for editors and other programs; it is generated from the records and
 * compared in the tests.
 */
public final class CaseSchema {
    /** Where the schema lies on the class path. */
    public static final String RESOURCE = "/schema/fairlead-case.schema.json";

    private CaseSchema() {}

    /**
     * The schema as text. It checks form and ranges; contradictions, privacy and slips only {@link CaseReader} finds.
     */
    public static String text() {
        try (InputStream in = CaseSchema.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the schema is missing from the program: " + RESOURCE);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
