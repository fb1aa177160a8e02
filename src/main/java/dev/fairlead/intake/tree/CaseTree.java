package dev.fairlead.intake.tree;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.model.Case;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The text of a case as a tree whose single values can be changed, for forms and for trying other plans; not safe
 * between threads.
 */
public final class CaseTree {
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .defaultPrettyPrinter(CaseWriter.printer())
            .build();
    // words such as yes and numbers in quotation marks keep their marks, all else is written bare
    private static final ObjectMapper YAML = YAMLMapper.builder(YAMLFactory.builder()
                    .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
                    .enable(YAMLGenerator.Feature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
                    .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
                    .disable(YAMLGenerator.Feature.SPLIT_LINES)
                    .build())
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private final ObjectNode root;

    private CaseTree(ObjectNode root) {
        this.root = root;
    }

    /**
     * Takes the text of a case in either format; it need not be a valid case, but it has to be an object without
     * aliases, tags and double keys.
     */
    public static CaseTree parse(String text, CaseFormat format) throws UnreadableTextException {
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return new CaseTree(TreeBuilder.build(bare, format.resolve("", bare)));
    }

    /** The tree of a case that was read. */
    public static CaseTree of(Case c) {
        try {
            return parse(CaseWriter.json(c), CaseFormat.JSON);
        } catch (UnreadableTextException e) {
            throw new IllegalStateException("what the writer writes can be read", e);
        }
    }

    /** A tree with nothing in it but the version of the format. */
    public static CaseTree empty() {
        return new CaseTree(JSON.createObjectNode().put("fairlead", CaseWords.FORMAT));
    }

    /** An independent copy. */
    public CaseTree copy() {
        return new CaseTree(root.deepCopy());
    }

    /**
     * What stands at a JSON Pointer, as a person would type it; empty when nothing does. Readings have semicolons
     * between, a stated error stands behind ±.
     */
    public Optional<String> get(String pointer) {
        JsonNode node = root.at(JsonPointer.compile(pointer));
        return node.isMissingNode()
                ? Optional.empty()
                : Optional.of(Typing.text(node, CasePaths.field(pointer).map(FieldShape::about)));
    }

    /** The number of entries of the list, or of fields of the object, at a JSON Pointer; 0 when there is neither. */
    public int size(String pointer) {
        return root.at(JsonPointer.compile(pointer)).size();
    }

    /** The keys of the object at a JSON Pointer, in the order of the text. */
    public List<String> keys(String pointer) {
        List<String> keys = new ArrayList<>();
        root.at(JsonPointer.compile(pointer)).fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    /**
     * Puts what a person typed at a JSON Pointer and makes the objects and lists around it; blank text removes what is
     * there. A list grows by one entry at its end, whose index is its size or {@code -}. Nothing is judged here:
     * reading the result does that.
     */
    public void set(String pointer, String typed) {
        if (typed.isBlank()) {
            remove(pointer);
            return;
        }
        put(pointer, Typing.node(typed, CasePaths.field(pointer)));
    }

    /** Puts a number at a JSON Pointer, in the unit of the field. */
    public void set(String pointer, double number) {
        put(
                pointer,
                Typing.node(
                        new BigDecimal(Double.toString(number))
                                .stripTrailingZeros()
                                .toPlainString(),
                        CasePaths.field(pointer)));
    }

    /**
     * Takes away what stands at a JSON Pointer, and objects around it that are then empty; later entries of a list move
     * up.
     */
    public void remove(String pointer) {
        JsonPointer p = JsonPointer.compile(pointer);
        if (p.matches()) {
            throw new IllegalArgumentException("the whole case cannot be taken away");
        }
        JsonNode parent = root.at(p.head());
        if (parent instanceof ObjectNode o) {
            o.remove(p.last().getMatchingProperty());
        } else if (parent instanceof ArrayNode a && p.last().getMatchingIndex() >= 0) {
            a.remove(p.last().getMatchingIndex());
        }
        if (!p.head().matches()
                && parent.isObject()
                && parent.isEmpty()
                && !(root.at(p.head().head()) instanceof ArrayNode)) {
            remove(p.head().toString());
        }
    }

    /** The text in that format, with a line break at the end. */
    public String text(CaseFormat format) {
        try {
            return format == CaseFormat.YAML
                    ? YAML.writeValueAsString(root)
                    : JSON.writer(CaseWriter.printer()).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    /** Reads the tree as a case; places in problems are those in {@link #text} as JSON. */
    public CaseReading read(String name) {
        return CaseReader.read(text(CaseFormat.JSON).getBytes(StandardCharsets.UTF_8), name, CaseFormat.JSON);
    }

    private void put(String pointer, JsonNode value) {
        JsonPointer p = JsonPointer.compile(pointer);
        if (p.matches()) {
            throw new IllegalArgumentException("a value needs a place below the whole case");
        }
        ContainerNode<?> at = root;
        StringBuilder path = new StringBuilder();
        for (; !p.tail().matches(); p = p.tail()) {
            path.append('/').append(RecordShape.escape(p.getMatchingProperty()));
            JsonNode next = at instanceof ArrayNode a ? a.path(p.getMatchingIndex()) : at.path(p.getMatchingProperty());
            if (!next.isContainerNode()) {
                boolean list = CasePaths.field(path.toString())
                        .map(FieldShape::kind)
                        .filter(k -> k == Kind.LIST)
                        .isPresent();
                next = list ? root.arrayNode() : root.objectNode();
                place(at, p, next);
            }
            at = (ContainerNode<?>) next;
        }
        place(at, p, value);
    }

    private static void place(ContainerNode<?> at, JsonPointer p, JsonNode value) {
        String key = p.getMatchingProperty();
        if (at instanceof ObjectNode o) {
            o.set(key, value);
            return;
        }
        ArrayNode list = (ArrayNode) at;
        int index = key.equals("-") ? list.size() : p.getMatchingIndex();
        if (index < 0 || index > list.size()) {
            throw new IllegalArgumentException("a list of " + list.size() + " entries has no place " + key);
        }
        if (index == list.size()) {
            list.add(value);
        } else {
            list.set(index, value);
        }
    }
}
