package dev.fairlead.intake.tree;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.intake.spelling.PlainNumber;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.CaseParsers;
import dev.fairlead.intake.text.Locator;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.intake.text.Syntax;
import dev.fairlead.intake.text.UnreadableTextException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * Builds a tree of a case text so that every value keeps its spelling and what the reader refuses is still refused
 * afterwards.
 */
final class TreeBuilder {
    private static final JsonNodeFactory NODES = new JsonNodeFactory(true);

    private TreeBuilder() {}

    static ObjectNode build(String text, CaseFormat format) throws UnreadableTextException {
        Problems problems = new Problems();
        try (JsonParser p = CaseParsers.open(text, format, problems)) {
            if (p.nextToken() != JsonToken.START_OBJECT) {
                throw unreadable(p, "", "an object", "something else");
            }
            ObjectNode root = object(p);
            if (p.nextToken() != null) {
                throw unreadable(p, "", "the end of the file", "more text behind the case");
            }
            if (problems.any()) {
                throw new UnreadableTextException(problems.located(text, format).get(0));
            }
            return root;
        } catch (JsonProcessingException e) {
            throw new UnreadableTextException(Syntax.problem(
                    e,
                    text,
                    format,
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr()),
                    e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getColumnNr())));
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory cannot fail", e);
        }
    }

    private static ObjectNode object(JsonParser p) throws IOException, UnreadableTextException {
        ObjectNode object = NODES.objectNode();
        while (p.nextToken() == JsonToken.FIELD_NAME) {
            String key = p.currentName();
            if (object.has(key)) {
                throw unreadable(p, Locator.pointer(p), "each field once", "\"" + key + "\" again");
            }
            p.nextToken();
            object.set(key, node(p));
        }
        return object;
    }

    private static JsonNode node(JsonParser p) throws IOException, UnreadableTextException {
        switch (p.currentToken()) {
            case START_OBJECT:
                return object(p);
            case START_ARRAY:
                ArrayNode array = NODES.arrayNode();
                while (p.nextToken() != JsonToken.END_ARRAY) {
                    array.add(node(p));
                }
                return array;
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT:
                String raw = p.getText();
                BigDecimal number = PlainNumber.read(raw);
                return number == null ? NODES.textNode(raw) : NODES.numberNode(number);
            case VALUE_TRUE:
                return NODES.booleanNode(true);
            case VALUE_FALSE:
                return NODES.booleanNode(false);
            case VALUE_NULL:
                return NODES.nullNode();
            default:
                return NODES.textNode(p.getText());
        }
    }

    private static UnreadableTextException unreadable(JsonParser p, String pointer, String expected, String found) {
        var at = p.currentTokenLocation();
        return new UnreadableTextException(new Problem(
                Severity.ERROR,
                pointer,
                Math.max(0, at.getLineNr()),
                Math.max(0, at.getColumnNr()),
                expected,
                found,
                Optional.empty(),
                ""));
    }
}
