package dev.fairlead.picture.read;

import java.util.Arrays;

/** What a file is, told by how it begins. */
public enum FileKind {
    PNG,
    JPEG,
    DICOM,
    OTHER;

    private static final byte[] PNG_START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final int DICOM_AT = 128;

    /** The kind of a file's content; its name says nothing. */
    public static FileKind of(byte[] bytes) {
        if (starts(bytes, 0, PNG_START)) {
            return PNG;
        }
        if (starts(bytes, 0, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF})) {
            return JPEG;
        }
        return starts(bytes, DICOM_AT, new byte[] {'D', 'I', 'C', 'M'}) ? DICOM : OTHER;
    }

    private static boolean starts(byte[] bytes, int at, byte[] with) {
        return bytes.length >= at + with.length && Arrays.equals(bytes, at, at + with.length, with, 0, with.length);
    }
}
