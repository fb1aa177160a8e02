package dev.fairlead.intake.tree;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.spelling.PlainNumber;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.model.Field;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.math.BigDecimal;
import java.util.Optional;

/** Between a value in a tree and the text that a person types or sees for it. */
final class Typing {
    private static final JsonNodeFactory NODES = new JsonNodeFactory(true);

    private Typing() {}

    /**
     * The node for typed text; what does not fit the field stays as it was typed, for the reader to refuse with its
     * reasons.
     */
    static JsonNode node(String typed, Optional<FieldShape> field) {
        String text = typed.strip();
        Kind kind = field.map(FieldShape::kind).orElse(Kind.TEXT);
        switch (kind) {
            case QUANTITY:
                Optional<JsonNode> stated = StatedError.node(text, field.get().about(), NODES);
                if (stated.isPresent()) {
                    return stated.get();
                }
                if (text.startsWith("{") || !text.contains(";")) {
                    return number(text);
                }
                ArrayNode list = NODES.arrayNode();
                for (String part : text.split(";")) {
                    list.add(number(part.strip()));
                }
                return list;
            case FORMAT, TOOTH:
                return number(text);
            case ANSWER:
                String word = text.toLowerCase(java.util.Locale.ROOT);
                return word.equals("yes") || word.equals("true")
                        ? NODES.booleanNode(true)
                        : word.equals("no") || word.equals("false")
                                ? NODES.booleanNode(false)
                                : NODES.textNode(word.equals(CaseWords.UNKNOWN) ? word : text);
            default:
                return NODES.textNode(text);
        }
    }

    private static JsonNode number(String text) {
        BigDecimal number = PlainNumber.read(text);
        return number == null ? NODES.textNode(text) : NODES.numberNode(number);
    }

    /**
     * What stands in a form for a node: readings with semicolons between, an error behind ±, yes and no for answers.
     */
    static String text(JsonNode node, Optional<Field> about) {
        if (node.isArray()) {
            StringBuilder all = new StringBuilder();
            node.forEach(n -> all.append(all.length() > 0 ? "; " : "").append(text(n, about)));
            return all.toString();
        }
        if (node.isNumber()) {
            return node.decimalValue().toPlainString();
        }
        return node.isBoolean()
                ? node.booleanValue() ? "yes" : "no"
                : Visible.of(node.isObject() ? StatedError.text(node, about).orElseGet(node::toString) : node.asText());
    }
}
