package dev.fairlead.base;

import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.cfg.MapperConfig;
import com.fasterxml.jackson.databind.deser.DeserializationProblemHandler;
import com.fasterxml.jackson.databind.introspect.AnnotatedClass;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads JSON that people write: nothing unknown, nothing missing, nothing twice, nothing guessed. */
public final class StrictJson {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .annotationIntrospector(new Words())
            .enable(
                    DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES,
                    DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES,
                    DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES,
                    DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES,
                    DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .defaultSetterInfo(JsonSetter.Value.forContentNulls(Nulls.FAIL))
            .build();

    private static final Pattern LIBRARY = Pattern.compile(
            "com\\.fasterxml|[A-Z]\\w+Feature|\\(code |ALLOW_|Stream\\w+Constraints|[\\p{Cntrl}\\p{Cf}\\p{Cs}]");

    private StrictJson() {}

    /** A constant of a closed list is written in lower case with dashes. */
    private static final class Words extends JacksonAnnotationIntrospector {
        private static final long serialVersionUID = 1L;

        @Override
        public String[] findEnumValues(
                MapperConfig<?> config, AnnotatedClass type, Enum<?>[] constants, String[] names) {
            return words(constants);
        }

        static String[] words(Object[] constants) {
            return Arrays.stream(constants)
                    .map(c -> c.toString().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .toArray(String[]::new);
        }
    }

    /** Tells a word that does not stand in a closed list, and goes on to whatever else is wrong. */
    private static final class WrongWords extends DeserializationProblemHandler {
        private final String file;
        private final List<String> problems;

        WrongWords(String file, List<String> problems) {
            this.file = file;
            this.problems = problems;
        }

        @Override
        public Object handleWeirdStringValue(DeserializationContext in, Class<?> type, String word, String fault) {
            if (!type.isEnum()) {
                return NOT_HANDLED;
            }
            JsonParser at = in.getParser();
            problems.add(
                    at(file, at.currentTokenLocation()) + at.getParsingContext().pathAsPointer() + ": " + word
                            + " is none of " + String.join(", ", Words.words(type.getEnumConstants())));
            return type.getEnumConstants()[0];
        }
    }

    /**
     * Reads {@code text} as {@code type}; on a fault adds a problem that names {@code file}, and returns null, or what
     * else stands there where only words of closed lists are wrong: of a file with a problem nothing may be used.
     */
    public static <T> @Nullable T read(String file, String text, TypeReference<T> type, List<String> problems) {
        try {
            T read = MAPPER.readerFor(type)
                    .withHandler(new WrongWords(file, problems))
                    .readValue(text);
            if (read == null) {
                problems.add(file + ": it says nothing");
            }
            return read;
        } catch (JsonProcessingException e) {
            problems.add(at(file, e.getLocation()) + plain(e));
            return null;
        }
    }

    private static String at(String file, @Nullable JsonLocation at) {
        return file + (at == null ? "" : ":" + at.getLineNr() + ":" + at.getColumnNr()) + ": ";
    }

    /** The reader's message without names of classes and settings, which say nothing to whoever edits a file. */
    public static String plain(JsonProcessingException e) {
        String plain = e.getOriginalMessage()
                .replaceAll("(?s)^(?:Missing|Null value for) creator property '(\\w+)'.*", "$1 is missing")
                .replaceAll("(?s)^Trailing token.*", "there is more text behind the end")
                .replaceAll("(?s)^Unexpected end-of-input.*", "the file ends too early")
                .replaceAll("(?s)^Unexpected character \\('(\\p{Print})'.*", "a character that cannot stand there: $1")
                .replaceAll("(?s)^Duplicate field '([^']+)'.*", "the field $1 stands there twice")
                .replaceAll("(?s)^Unrecognized field \"([^\"]+)\".*", "there is no field called $1")
                .replaceAll("`(?:java|dev)[\\w.$]*?(\\w+)`", "$1")
                .replaceAll("\\s+", " ");
        return LIBRARY.matcher(plain).find()
                ? "something else is expected at this place, or a sign is missing or one too many before it"
                : plain;
    }

    /** JSON merge patch (RFC 7396): {@code patch} laid over {@code base}. */
    public static JsonNode merge(JsonNode base, JsonNode patch) {
        if (!patch.isObject()) {
            return patch;
        }
        ObjectNode merged = base.isObject() ? base.deepCopy() : MAPPER.createObjectNode();
        patch.properties().forEach(p -> {
            if (p.getValue().isNull()) {
                merged.remove(p.getKey());
            } else {
                JsonNode old = merged.get(p.getKey());
                merged.set(p.getKey(), merge(old == null ? MAPPER.nullNode() : old, p.getValue()));
            }
        });
        return merged;
    }
}
