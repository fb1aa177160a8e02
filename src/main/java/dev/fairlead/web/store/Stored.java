package dev.fairlead.web.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A case file as it was read.
 *
 * @param name the file's name within the folder
 * @param version a hash of the content, by which a window says what it has seen
 */
public record Stored(String name, String text, String version) {
    private static final int DIGITS = 20;

    /** The content of a file with its version. */
    public static Stored of(String name, byte[] bytes) {
        return new Stored(name, new String(bytes, StandardCharsets.UTF_8), version(bytes));
    }

    /** A case file that is kept in YAML, where saving loses comments. */
    public boolean yaml() {
        return name.endsWith(".yaml") || name.endsWith(".yml");
    }

    static String version(byte[] bytes) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes))
                    .substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
