package dev.fairlead.intake.tree;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.intake.bind.QuantityObject;
import dev.fairlead.intake.spelling.Quantities;
import dev.fairlead.model.Field;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A quantity with an error of its own as a person writes it: {@code 5.4 ± 0.3}, {@code 0.020 in ± 0.001 in},
 * {@code 5.4; 5.5 ± 0.2}. The unit may stand behind either number and then holds for both.
 */
final class StatedError {
    private static final Pattern SIGN = Pattern.compile("\\s*(?:±|\\+/-|\\+-)\\s*");
    private static final Pattern QUANTITY = Pattern.compile(Quantities.FORM);

    private StatedError() {}

    /** The object for typed text with an error behind it; empty when the text has none, or is not written so. */
    static Optional<JsonNode> node(String typed, Field about, JsonNodeFactory nodes) {
        String[] halves = SIGN.split(typed, -1);
        Matcher error = QUANTITY.matcher(halves[halves.length - 1]);
        if (halves.length != 2 || !error.matches()) {
            return Optional.empty();
        }
        List<Matcher> readings = new ArrayList<>();
        for (String part : halves[0].split(";", -1)) {
            Matcher m = QUANTITY.matcher(part);
            if (!m.matches()) {
                return Optional.empty();
            }
            readings.add(m);
        }
        String of = readings.get(0).group(2);
        boolean oneUnit = readings.stream().allMatch(m -> java.util.Objects.equals(m.group(2), of));
        String behind = error.group(2);
        ObjectNode object = nodes.objectNode();
        boolean same = oneUnit && (of == null || behind == null || of.strip().equals(behind.strip()));
        boolean usual = behind != null && behind.strip().equals(about.unit().symbol());
        if (!same && !usual) {
            // an error in one unit on a value in another is more likely a slip than meant
            return Optional.empty();
        }
        List<JsonNode> values = readings.stream()
                .map(m -> same
                        ? nodes.numberNode(number(m))
                        : (JsonNode) nodes.textNode(m.group().strip()))
                .toList();
        if (values.size() == 1) {
            object.set("value", values.get(0));
        } else {
            object.putArray("repeats").addAll(values);
        }
        if (same && (of != null || behind != null)) {
            object.put("unit", (of != null ? of : behind).strip());
        }
        object.set("error", nodes.numberNode(number(error)));
        return Optional.of(object);
    }

    private static BigDecimal number(Matcher m) {
        return new BigDecimal(m.group(1).replace(',', '.').replace('\u2212', '-'));
    }

    /** What a person would write for a quantity in parts; empty when it has other parts than a quantity has. */
    static Optional<String> text(JsonNode object, Optional<Field> about) {
        Set<String> parts = new java.util.HashSet<>();
        object.fieldNames().forEachRemaining(parts::add);
        JsonNode value = object.has("repeats") ? object.get("repeats") : object.path("value");
        boolean plain = QuantityObject.KEYS.containsAll(parts)
                && !(object.has("repeats") && object.has("value"))
                && !value.isMissingNode()
                && !value.isObject()
                && !object.path("error").isContainerNode()
                && !object.path("unit").isContainerNode();
        if (!plain) {
            return Optional.empty();
        }
        String unit = object.has("unit") ? " " + object.get("unit").asText() : "";
        List<String> readings = new ArrayList<>();
        boolean named = false;
        for (JsonNode reading : value.isArray() ? value : List.of(value)) {
            String text = Typing.text(reading, about);
            named |= reading.isTextual() && text.matches(".*[^0-9.,\\s].*");
            readings.add(text + unit);
        }
        if (!object.has("error")) {
            return Optional.of(String.join("; ", readings));
        }
        // a value with its unit in the text: its error is in the unit of the field, which has to be said then
        String behind = !unit.isEmpty()
                ? unit
                : named ? about.map(f -> " " + f.unit().symbol()).orElse("") : "";
        return Optional.of(String.join("; ", readings) + " ± " + Typing.text(object.get("error"), about) + behind);
    }
}
