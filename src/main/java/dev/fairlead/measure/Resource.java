package dev.fairlead.measure;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads a table of published figures that stands beside a class. */
public final class Resource {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private Resource() {}

    /** The JSON resource {@code name} in the package of {@code beside}, as {@code type}. */
    public static <T> T read(Class<?> beside, String name, Class<T> type) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is not beside " + beside.getName());
            }
            return MAPPER.readValue(in, type);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + name, e);
        }
    }
}
