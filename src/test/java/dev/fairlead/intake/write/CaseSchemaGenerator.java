package dev.fairlead.intake.write;

import com.fasterxml.classmate.ResolvedType;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.victools.jsonschema.generator.CustomPropertyDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import dev.fairlead.intake.bind.QuantityParts;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.spelling.Quantities;
import dev.fairlead.model.Case;
import dev.fairlead.model.Field;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** Makes the JSON Schema from the records; run it after a change of the records to renew the file that is shipped. */
final class CaseSchemaGenerator {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> TEETH = IntStream.range(11, 86)
            .filter(Tooth::exists)
            .mapToObj(Integer::toString)
            .toList();

    private CaseSchemaGenerator() {}

    public static void main(String[] args) throws IOException {
        Path file = Path.of("src/main/resources" + CaseSchema.RESOURCE);
        Files.createDirectories(file.getParent());
        Files.writeString(file, generate());
    }

    static String generate() {
        SchemaGeneratorConfigBuilder config = new SchemaGeneratorConfigBuilder(
                        JSON, SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
                .with(Option.DEFINITIONS_FOR_ALL_OBJECTS)
                .without(Option.SCHEMA_VERSION_INDICATOR);
        // closed for records only: beside the anyOf of a fact it would forbid the object form of a quantity
        config.forTypesInGeneral()
                .withAdditionalPropertiesResolver((com.github.victools.jsonschema.generator.TypeScope s) ->
                        s.getType() != null && s.getType().getErasedType().isRecord() ? Void.class : null);
        config.forFields()
                .withPropertyNameOverrideResolver(f -> shape(f).key())
                .withRequiredCheck(f -> shape(f).about().required())
                .withCustomDefinitionProvider(CaseSchemaGenerator::definition)
                .withInstanceAttributeOverride((node, f, context) -> describe(node, f));
        ObjectNode made = new SchemaGenerator(config.build()).generateSchema(Case.class);
        ObjectNode head = JSON.createObjectNode();
        head.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        head.put("$id", "urn:fairlead:case:1");
        head.put("title", "Case for Fairlead");
        head.setAll(made);
        shared((ObjectNode) head.get("$defs"));
        try {
            return JSON.writer(CaseWriter.printer()).writeValueAsString(head) + "\n";
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static FieldShape shape(FieldScope scope) {
        Class<?> type = scope.getDeclaringType().getErasedType();
        var components = type.getRecordComponents();
        int index = IntStream.range(0, components.length)
                .filter(i -> components[i].getName().equals(scope.getDeclaredName()))
                .findFirst()
                .orElseThrow();
        return RecordShape.of(type.asSubclass(Record.class)).fields().get(index);
    }

    private static CustomPropertyDefinition definition(FieldScope scope, SchemaGenerationContext context) {
        FieldShape f = shape(scope);
        if (f.kind() == Kind.RECORD || f.kind() == Kind.LIST) {
            return null;
        }
        ObjectNode node = JSON.createObjectNode();
        if (f.kind() == Kind.TOOTH_MAP) {
            ResolvedType inner = context.getTypeContext().resolve(f.element());
            node.put("type", "object").putObject("propertyNames").set("enum", JSON.valueToTree(TEETH));
            node.set("additionalProperties", context.createDefinitionReference(inner));
        } else {
            fact(node, f);
        }
        return new CustomPropertyDefinition(node, CustomPropertyDefinition.INCLUDING_ATTRIBUTES);
    }

    private static void describe(ObjectNode node, FieldScope scope) {
        FieldShape f = shape(scope);
        if (scope.isFakeContainerItemScope()) {
            return;
        }
        node.put("description", f.about().value());
        if (f.kind() == Kind.LIST) {
            node.put("maxItems", 500);
        }
        if (f.kind() == Kind.QUANTITY && !f.about().unit().symbol().isEmpty()) {
            node.put("x-unit", f.about().unit().symbol());
        }
    }

    private static void fact(ObjectNode node, FieldShape f) {
        Field a = f.about();
        switch (f.kind()) {
            case FORMAT -> node.put("const", CaseWords.FORMAT);
            case ID -> node.put("type", "string").put("pattern", "^(?:" + a.pattern() + ")$");
            case ANSWER ->
                words(node.putArray("enum").add(true).add(false).add("yes").add("no"), a);
            case CHOICE -> {
                ArrayNode all = node.putArray("enum");
                f.words().forEach(all::add);
                words(all, a);
            }
            case TOOTH -> {
                ArrayNode all = node.putArray("enum");
                TEETH.forEach(t -> all.add(Integer.parseInt(t)));
                TEETH.forEach(all::add);
                words(all, a);
            }
            case DATE ->
                words(
                        node.putArray("anyOf")
                                .add(JSON.createObjectNode()
                                        .put("type", "string")
                                        .put("format", "date")
                                        .put("pattern", "^20[0-9]{2}-[0-9]{2}-[0-9]{2}$"))
                                .addObject()
                                .putArray("enum"),
                        a);
            case TEXT -> {
                ObjectNode text = JSON.createObjectNode().put("type", "string");
                if (a.pattern().isEmpty()) {
                    text.put("minLength", 1).put("maxLength", CaseWords.LONGEST_TEXT);
                } else {
                    text.put("pattern", "^(?:" + a.pattern() + ")$");
                }
                words(node.putArray("anyOf").add(text).addObject().putArray("enum"), a);
            }
            case QUANTITY -> quantity(node.putArray("anyOf"), a);
            default -> throw new IllegalStateException("no fact: " + f.kind());
        }
    }

    private static void words(ArrayNode all, Field a) {
        all.add(CaseWords.UNKNOWN);
        if (a.mayNotApply()) {
            all.add(CaseWords.DOES_NOT_APPLY);
        }
    }

    private static void quantity(ArrayNode forms, Field a) {
        boolean count = a.unit() == Unit.COUNT;
        ObjectNode number = JSON.createObjectNode().put("type", count ? "integer" : "number");
        number.set("minimum", exact(a.low()));
        number.set("maximum", exact(a.high()));
        forms.add(number).add(ref("TypedQuantity"));
        words(forms.addObject().putArray("enum"), a);
        if (!count) {
            ObjectNode reading = JSON.createObjectNode();
            reading.putArray("anyOf").add(number.deepCopy()).add(ref("TypedQuantity"));
            forms.add(list().set("items", reading));
        }
        forms.add(ref(count ? "CountInParts" : "QuantityInParts"));
    }

    private static ObjectNode list() {
        return JSON.createObjectNode()
                .put("type", "array")
                .put("minItems", 1)
                .put("maxItems", QuantityParts.MOST_REPEATS);
    }

    private static ObjectNode ref(String definition) {
        return JSON.createObjectNode().put("$ref", "#/$defs/" + definition);
    }

    /**
     * The forms that all quantities share, and that only differ by the range of their field, which only the reader
     * checks there.
     */
    private static void shared(ObjectNode definitions) {
        definitions
                .putObject("TypedQuantity")
                .put("type", "string")
                .put("pattern", Quantities.FORM)
                .put("description", "A number with or without its unit, such as 0.020 in or 5,4 mm.");
        ObjectNode bare = JSON.createObjectNode();
        bare.putArray("anyOf")
                .add(JSON.createObjectNode().put("type", "number"))
                .add(ref("TypedQuantity"));
        for (boolean count : new boolean[] {true, false}) {
            ObjectNode object = definitions
                    .putObject(count ? "CountInParts" : "QuantityInParts")
                    .put("type", "object")
                    .put("additionalProperties", false);
            ObjectNode parts = object.putObject("properties");
            parts.set("value", bare);
            if (!count) {
                parts.set("repeats", list().set("items", bare));
            }
            parts.putObject("unit").put("type", "string");
            parts.putObject("error")
                    .put("type", "number")
                    .put("minimum", 0)
                    .put("description", "One standard deviation, in the unit of the value.");
            object.putArray("oneOf").add(required("value")).add(required("repeats"));
        }
    }

    private static ObjectNode required(String key) {
        ObjectNode node = JSON.createObjectNode();
        node.putArray("required").add(key);
        return node;
    }

    private static com.fasterxml.jackson.databind.JsonNode exact(double v) {
        return v == Math.rint(v)
                ? JSON.getNodeFactory().numberNode((long) v)
                : JSON.getNodeFactory().numberNode(v);
    }
}
