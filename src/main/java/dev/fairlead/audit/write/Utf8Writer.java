package dev.fairlead.audit.write;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Writes whole texts as UTF-8: a text that is plain ASCII is copied, and not encoded character by character. No text
 * may end within a character.
 */
public final class Utf8Writer extends Writer {
    private final OutputStream out;

    public Utf8Writer(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        write(text.substring(from, from + length));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(new String(text, from, length));
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
