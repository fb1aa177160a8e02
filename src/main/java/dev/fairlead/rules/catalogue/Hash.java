package dev.fairlead.rules.catalogue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) as lower-case hexadecimal. */
public final class Hash {
    private static final MessageDigest EMPTY = empty();

    private Hash() {}

    public static String of(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A copy, which takes much less than to look for the algorithm again. */
    private static MessageDigest digest() {
        try {
            return (MessageDigest) EMPTY.clone();
        } catch (CloneNotSupportedException e) {
            throw new IllegalStateException("the SHA-256 of Java can be copied", e);
        }
    }

    private static MessageDigest empty() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
