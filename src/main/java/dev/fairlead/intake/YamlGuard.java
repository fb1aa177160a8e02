package dev.fairlead.intake;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.JsonParserDelegate;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.Optional;

/** Reports aliases, anchors and tags: an alias would be read as the anchor's name, which is wrong data without a warning. */
final class YamlGuard extends JsonParserDelegate {
    private final YAMLParser yaml;
    private final String text;
    private final Problems problems;
    private final boolean anchors;
    private long codePoint;
    private int index;

    YamlGuard(JsonParser parser, String text, Problems problems) {
        super(parser);
        yaml = (YAMLParser) parser;
        this.text = text;
        this.problems = problems;
        anchors = text.indexOf('&') >= 0;
    }

    @Override
    public JsonToken nextToken() throws IOException {
        JsonToken token = yaml.nextToken();
        if (token == null || token.isStructEnd()) {
            return token;
        }
        if (yaml.isCurrentAlias()) {
            refuse("an alias", "write the value itself where the alias stands");
        } else if (token != JsonToken.FIELD_NAME && yaml.getTypeId() != null) {
            refuse("a tag", "leave the tag out");
        } else if (anchors && anchored()) {
            refuse("an anchor", "leave the anchor out");
        }
        return token;
    }

    @Override
    public JsonParser skipChildren() throws IOException {
        JsonToken token = currentToken();
        if (token == null || !token.isStructStart()) {
            return this;
        }
        for (int depth = 1; depth > 0; ) {
            JsonToken t = nextToken();
            if (t == null) {
                return this;
            }
            depth += t.isStructStart() ? 1 : t.isStructEnd() ? -1 : 0;
        }
        return this;
    }

    private boolean anchored() throws IOException {
        if (yaml.getObjectId() != null) {
            return true;
        }
        // the parser tells no anchor of a scalar value, but the token then starts with it
        long at = yaml.currentTokenLocation().getCharOffset();
        if (at < codePoint) {
            return false;
        }
        // offsets count code points; going on from the token before keeps a long file linear
        while (codePoint < at && index < text.length()) {
            index += Character.charCount(text.codePointAt(index));
            codePoint++;
        }
        return index < text.length() && text.charAt(index) == '&';
    }

    private void refuse(String what, String mend) {
        JsonLocation at = yaml.currentTokenLocation();
        problems.add(new Problem(Severity.ERROR, Locator.pointer(yaml), at.getLineNr(), at.getColumnNr(), "plain YAML",
                what, Optional.empty(), mend));
    }
}
