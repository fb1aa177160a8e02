package dev.fairlead.measure;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of published figures that stands beside a class as JSON. It is read token by token: a check reads several such tables once, and to
 * make ready for binding them to classes takes far longer than to read them.
 */
public final class Resource {
    private static final JsonFactory JSON = new JsonFactory();

    private Resource() {}

    /** One object of a table; a field that is not there is our own error. */
    public record Entry(String table, Map<String, Object> fields) {
        private <T> T get(String field, Class<T> type) {
            Object value = fields.get(field);
            if (!type.isInstance(value)) {
                throw new IllegalStateException(table + " has no such " + field + ": " + value);
            }
            return type.cast(value);
        }

        public String text(String field) {
            return get(field, String.class);
        }

        public double number(String field) {
            return get(field, Double.class);
        }

        public boolean flag(String field) {
            return get(field, Boolean.class);
        }

        public List<String> texts(String field) {
            return ((List<?>) get(field, List.class)).stream().map(String.class::cast).toList();
        }

        public double[] numbers(String field) {
            List<?> all = get(field, List.class);
            double[] numbers = new double[all.size()];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = (Double) all.get(i);
            }
            return numbers;
        }

        /** The object within this one, and the names of its fields in their order. */
        public Entry inner(String field) {
            Map<String, Object> inner = new LinkedHashMap<>();
            for (Map.Entry<?, ?> one : ((Map<?, ?>) get(field, Map.class)).entrySet()) {
                inner.put((String) one.getKey(), one.getValue());
            }
            return new Entry(table, inner);
        }
    }

    /** The objects of the resource {@code name} in the package of {@code beside}, which is one object or a list of them. */
    public static List<Entry> read(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is not beside " + beside.getName());
            }
            try (JsonParser parser = JSON.createParser(in)) {
                parser.nextToken();
                Object read = value(parser);
                List<Entry> entries = new ArrayList<>();
                for (Object one : read instanceof List<?> list ? list : List.of(read)) {
                    entries.add(new Entry(name, Map.of("", one)).inner(""));
                }
                return entries;
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read table " + name, e);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        switch (parser.currentToken()) {
            case START_OBJECT:
                Map<String, Object> fields = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    parser.nextToken();
                    fields.put(key, value(parser));
                }
                return fields;
            case START_ARRAY:
                List<Object> all = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    all.add(value(parser));
                }
                return all;
            case VALUE_TRUE, VALUE_FALSE:
                return parser.getBooleanValue();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT:
                return parser.getDoubleValue();
            default:
                return parser.getText();
        }
    }
}
