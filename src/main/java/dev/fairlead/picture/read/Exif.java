package dev.fairlead.picture.read;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Which way up a photograph is, from its EXIF block: the one thing of it that is used. */
final class Exif {
    private static final int ORIENTATION = 0x0112;
    private static final int MOST_ENTRIES = 500;

    private Exif() {}

    /** 1 to 8 as in JEITA CP-3451; 1 where the file does not say. */
    static int orientation(byte[] jpeg) {
        try {
            ByteBuffer in = ByteBuffer.wrap(jpeg);
            in.position(2);
            while (in.remaining() > 4 && (in.get() & 0xFF) == 0xFF) {
                int marker = in.get() & 0xFF;
                if (marker == 0xDA || marker == 0xD9) {
                    return 1;
                }
                int length = in.getShort() & 0xFFFF;
                int next = in.position() + length - 2;
                if (length < 2 || next > in.limit()) {
                    return 1;
                }
                if (marker == 0xE1 && length > 14 && in.getInt() == 0x45786966) {
                    in.getShort();
                    return directory(in.slice(in.position(), next - in.position()));
                }
                in.position(next);
            }
            return 1;
        } catch (BufferUnderflowException | IndexOutOfBoundsException e) {
            // a damaged block says nothing
            return 1;
        }
    }

    private static int directory(ByteBuffer tiff) {
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int at = tiff.getInt(4);
        int entries = Math.min(MOST_ENTRIES, tiff.getShort(at) & 0xFFFF);
        for (int i = 0; i < entries; i++) {
            int entry = at + 2 + 12 * i;
            if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION) {
                int o = tiff.getShort(entry + 8) & 0xFFFF;
                return o >= 1 && o <= 8 ? o : 1;
            }
        }
        return 1;
    }
}
