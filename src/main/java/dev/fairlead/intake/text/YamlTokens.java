package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.io.ContentReference;
import com.fasterxml.jackson.core.json.JsonReadContext;
import java.io.IOException;
import java.io.StringReader;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * YAML as the tokens of JSON, so that one reader serves both. Aliases, anchors and tags are reported: an alias would be
 * read as the anchor's name, which is wrong data without a warning.
 */
final class YamlTokens extends TextParser {
    private final ParserImpl events;
    private final Problems problems;
    private JsonReadContext context = JsonReadContext.createRootContext(null);
    private @Nullable Event event;
    private String value = "";
    private boolean closed;

    YamlTokens(String text, StreamReadConstraints limits, Problems problems) throws IOException {
        super(limits);
        limits.validateDocumentLength(text.length());
        events = new ParserImpl(new StreamReader(new StringReader(text)), new LoaderOptions());
        this.problems = problems;
    }

    @Override
    public @Nullable JsonToken nextToken() throws IOException {
        if (closed) {
            return null;
        }
        Event now;
        try {
            do {
                now = events.getEvent();
                event = now;
            } while (now.is(Event.ID.StreamStart) || now.is(Event.ID.DocumentStart) || now.is(Event.ID.DocumentEnd));
        } catch (YAMLException | NumberFormatException e) {
            throw _constructError(e.getMessage(), e);
        }
        if (now.is(Event.ID.StreamEnd)) {
            close();
            return _updateTokenToNull();
        }
        JsonToken token =
                _updateToken(context.inObject() && _currToken != JsonToken.FIELD_NAME ? key(now) : value(now));
        if (now instanceof NodeEvent node) {
            judge(node, token);
        }
        return token;
    }

    private JsonToken key(Event now) throws IOException {
        if (now.is(Event.ID.MappingEnd)) {
            context = context.getParent();
            return JsonToken.END_OBJECT;
        }
        if (!(now instanceof ScalarEvent name)) {
            throw _constructError("Expected a field name (Scalar value in YAML), got this instead: " + now, null);
        }
        value = name.getValue();
        context.setCurrentName(value);
        return JsonToken.FIELD_NAME;
    }

    private JsonToken value(Event now) throws IOException {
        if (context.inArray()) {
            context.expectComma();
        }
        switch (now.getEventId()) {
            case Scalar:
                ScalarEvent scalar = (ScalarEvent) now;
                value = scalar.getValue();
                return scalar.getScalarStyle() == ScalarStyle.PLAIN ? YamlScalars.token(value) : JsonToken.VALUE_STRING;
            case Alias:
                value = ((AliasEvent) now).getAnchor();
                return JsonToken.VALUE_STRING;
            case MappingStart:
                context = context.createChildObjectContext(-1, -1);
                streamReadConstraints().validateNestingDepth(context.getNestingDepth());
                return JsonToken.START_OBJECT;
            case SequenceStart:
                context = context.createChildArrayContext(-1, -1);
                streamReadConstraints().validateNestingDepth(context.getNestingDepth());
                return JsonToken.START_ARRAY;
            case SequenceEnd:
                context = context.getParent();
                return JsonToken.END_ARRAY;
            default:
                throw _constructError("Expected a value, got this instead: " + now, null);
        }
    }

    private void judge(NodeEvent node, JsonToken token) {
        if (node instanceof AliasEvent) {
            refuse("an alias", "write the value itself where the alias stands");
        } else if (token != JsonToken.FIELD_NAME && tag(node) != null) {
            refuse("a tag", "leave the tag out");
        } else if (node.getAnchor() != null) {
            refuse("an anchor", "leave the anchor out");
        }
    }

    private static @Nullable String tag(NodeEvent node) {
        return node instanceof ScalarEvent scalar
                ? scalar.getTag()
                : node instanceof CollectionStartEvent start ? start.getTag() : null;
    }

    private void refuse(String what, String mend) {
        JsonLocation at = currentTokenLocation();
        problems.add(new Problem(
                Severity.ERROR,
                Locator.pointer(this),
                at.getLineNr(),
                at.getColumnNr(),
                "plain YAML",
                what,
                Optional.empty(),
                mend));
    }

    @Override
    public @Nullable String getText() {
        return _currToken == null
                ? null
                : _currToken == JsonToken.FIELD_NAME || _currToken.isScalarValue() ? value : _currToken.asString();
    }

    @Override
    public String currentName() {
        return (_currToken != null && _currToken.isStructStart() ? context.getParent() : context).getCurrentName();
    }

    @Override
    public JsonReadContext getParsingContext() {
        return context;
    }

    @Override
    public JsonLocation currentTokenLocation() {
        return event == null ? JsonLocation.NA : location(event.getStartMark());
    }

    @Override
    public JsonLocation currentLocation() {
        return event == null ? JsonLocation.NA : location(event.getEndMark());
    }

    private static JsonLocation location(Mark mark) {
        return new JsonLocation(ContentReference.unknown(), mark.getIndex(), mark.getLine() + 1, mark.getColumn() + 1);
    }

    @Override
    public void close() {
        closed = true;
    }

    @Override
    public boolean isClosed() {
        return closed;
    }
}
