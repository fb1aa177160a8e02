package dev.fairlead.audit.source;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How columns of a table become fields of a case.
 *
 * @param columns heading to field, for headings that are not fields themselves
 * @param constants field to text, for what is the same in every row
 * @param words heading to a word of the table and the word of a case file that it stands for
 * @param ignore headings of columns that are not read
 */
public record Mapping(
        Map<String, String> columns,
        Map<String, String> constants,
        Map<String, Map<String, String>> words,
        List<String> ignore) {
    /** Headings are the fields themselves. */
    public static final Mapping NONE = new Mapping(Map.of(), Map.of(), Map.of(), List.of());

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    public Mapping {
        columns = columns == null ? Map.of() : new LinkedHashMap<>(columns);
        constants = constants == null ? Map.of() : new LinkedHashMap<>(constants);
        words = words == null ? Map.of() : new LinkedHashMap<>(words);
        ignore = ignore == null ? List.of() : List.copyOf(ignore);
    }

    /** Reads a mapping file (JSON); the message of a failure is for people. */
    public static Mapping read(Path file) throws TableException {
        try {
            Mapping read = JSON.readValue(Files.readString(file), Mapping.class);
            for (Map<String, String> fields : List.of(flipped(read.columns), read.constants)) {
                for (String field : fields.keySet()) {
                    if (TableFields.pointer(field) == null) {
                        throw new TableException(file + ": " + TableFields.unknown(field));
                    }
                }
            }
            return read;
        } catch (JsonProcessingException e) {
            throw new TableException(file + ": no mapping of a table: " + e.getOriginalMessage());
        } catch (IOException e) {
            throw new TableException(file + ": cannot be read (" + e.getMessage() + ")");
        }
    }

    private static Map<String, String> flipped(Map<String, String> columns) {
        Map<String, String> fields = new LinkedHashMap<>();
        columns.forEach((heading, field) -> fields.put(String.valueOf(field), heading));
        return fields;
    }

    /** The word of a case file for what a table says in a column. */
    String word(String heading, String cell) {
        return words.getOrDefault(heading, Map.of()).getOrDefault(cell, cell);
    }
}
