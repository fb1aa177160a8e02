package dev.fairlead.audit.source;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.base.StrictJson;
import dev.fairlead.model.shape.FieldShape;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * How columns of a table become fields of a case.
 *
 * @param columns heading to field, for headings that are not fields themselves
 * @param constants field to text, for what is the same in every row
 * @param words heading to a word of the table and the word of a case file that it stands for
 * @param ignore headings of columns that are not read
 * @param dates forms of days, such as {@code d.M.yyyy}
 * @param missing words that stand for nothing known, such as {@code n/a}
 * @param yes words that stand for yes
 * @param no words that stand for no
 */
public record Mapping(
        Map<String, String> columns,
        Map<String, String> constants,
        Map<String, Map<String, String>> words,
        List<String> ignore,
        List<String> dates,
        List<String> missing,
        List<String> yes,
        List<String> no) {
    /** Headings are the fields themselves. */
    public static final Mapping NONE =
            new Mapping(Map.of(), Map.of(), Map.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    private static final Pattern FLOAT_NOISE = Pattern.compile("-?\\d{1,6}[.,]\\d{10,20}");

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
        dates = dates == null ? List.of() : List.copyOf(dates);
        missing = missing == null ? List.of() : List.copyOf(missing);
        yes = yes == null ? List.of() : List.copyOf(yes);
        no = no == null ? List.of() : List.copyOf(no);
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
            for (String form : read.dates) {
                try {
                    form(form);
                } catch (IllegalArgumentException e) {
                    throw new TableException(file + ": " + TableFields.quoted(form)
                            + " is no form of a day; write d, M and yyyy, such as d.M.yyyy");
                }
            }
            return read;
        } catch (JsonProcessingException e) {
            throw new TableException(file + ": no mapping of a table: " + StrictJson.plain(e));
        } catch (IOException e) {
            throw new TableException(file + ": cannot be read (" + e.getMessage() + ")");
        }
    }

    private static Map<String, String> flipped(Map<String, String> columns) {
        Map<String, String> fields = new LinkedHashMap<>();
        columns.forEach((heading, field) -> fields.put(String.valueOf(field), heading));
        return fields;
    }

    /** What a cell says in the words of a case file; empty for a word that stands for nothing known. */
    String word(String heading, String cell, FieldShape field) {
        String word = words.getOrDefault(heading, Map.of()).get(cell);
        if (word != null) {
            return word;
        }
        if (listed(missing, cell)) {
            return "";
        }
        return switch (field.kind()) {
            case ANSWER -> listed(yes, cell) ? "yes" : listed(no, cell) ? "no" : cell;
            case DATE -> day(cell);
            case QUANTITY -> FLOAT_NOISE.matcher(cell).matches() ? rounded(cell) : cell;
            default -> cell;
        };
    }

    private static boolean listed(List<String> words, String cell) {
        return words.stream().anyMatch(w -> w.equalsIgnoreCase(cell));
    }

    private String day(String cell) {
        for (String form : dates) {
            try {
                return LocalDate.parse(cell, form(form)).toString();
            } catch (DateTimeException e) {
                // another form may fit; a day that fits none is told by who reads the case
            }
        }
        return cell;
    }

    private static DateTimeFormatter form(String form) {
        return DateTimeFormatter.ofPattern(form.replace('y', 'u'), Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    }

    /** Spreadsheets give 5.4 as 5,4000000000000004: twelve digits are more than anybody measures. */
    private static String rounded(String cell) {
        BigDecimal r = new BigDecimal(cell.replace(',', '.'))
                .round(new MathContext(12))
                .stripTrailingZeros();
        return (r.scale() < 0 ? r.setScale(0) : r).toPlainString();
    }
}
