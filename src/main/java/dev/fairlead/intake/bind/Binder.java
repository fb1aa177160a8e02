package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonToken;
import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.model.Case;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Binds the tokens of a case straight to its records, as the records describe themselves; nothing is built between. */
public final class Binder {
    private static final int MOST_ELEMENTS = 500;

    private final Input in;
    private final FactReader facts;
    private final QuantityReader quantities;

    public Binder(Input in) {
        this.in = in;
        facts = new FactReader(in);
        quantities = new QuantityReader(in, facts);
    }

    /**
     * Reads the whole case from the current token, the start of the outer object; null when something that must be
     * there is not.
     */
    public @Nullable Case read() throws IOException {
        RecordPlace root = RecordPlace.root();
        Object[] values = values(root);
        boolean whole = true;
        for (FieldShape f : root.shape.fields()) {
            if (f.about().required() && (values[f.index()] == null || values[f.index()].equals(0))) {
                whole = false;
            }
        }
        return whole && !in.problems.errors() ? (Case) root.shape.make(values) : null;
    }

    private Object record(RecordPlace place) throws IOException {
        if (in.parser.currentToken() != JsonToken.START_OBJECT) {
            in.wrong(
                    place.pointer,
                    "an object with fields such as "
                            + place.shape.fields().get(0).key());
            return place.shape.blank(place.pointer);
        }
        return place.shape.make(values(place));
    }

    private Object[] values(RecordPlace place) throws IOException {
        Object[] values = place.blanks();
        long seen = 0;
        while (in.parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = in.parser.currentName();
            FieldShape f = place.shape.field(key);
            if (f == null || (seen & 1L << f.index()) != 0) {
                refuse(place, key, f != null);
                continue;
            }
            seen |= 1L << f.index();
            in.parser.nextToken();
            values[f.index()] = value(place, f);
        }
        if (place.demanding) {
            required(place, seen);
        }
        return values;
    }

    private void required(RecordPlace place, long seen) {
        for (FieldShape f : place.shape.fields()) {
            if (f.about().required() && (seen & 1L << f.index()) == 0) {
                in.problems.add(new Problem(
                        Severity.ERROR,
                        place.pointer(f),
                        1,
                        1,
                        "the field " + f.key() + ", which must be there",
                        "nothing",
                        java.util.Optional.empty(),
                        f.about().value()));
            }
        }
    }

    private void refuse(RecordPlace place, String key, boolean twice) throws IOException {
        String pointer = Keys.pointer(place.pointer, key);
        List<String> known = place.shape.fields().stream().map(FieldShape::key).toList();
        if (!twice && ContactKeys.refuse(in, place.shape, pointer, key)) {
            return;
        }
        Keys.refuse(in, pointer, key, known, twice);
    }

    private Object value(RecordPlace place, FieldShape f) throws IOException {
        String pointer = place.pointer(f);
        return switch (f.kind()) {
            case QUANTITY -> quantities.read(f, pointer, place.blank(f));
            case RECORD -> record(place.nested(f));
            case LIST -> list(place, f, pointer);
            case TOOTH_MAP -> teeth(place, f, pointer);
            default -> facts.read(f, pointer, place.blank(f));
        };
    }

    private List<Object> list(RecordPlace place, FieldShape f, String pointer) throws IOException {
        List<Object> all = new ArrayList<>();
        if (in.parser.currentToken() != JsonToken.START_ARRAY) {
            in.wrong(pointer, "a list");
            return all;
        }
        for (JsonToken t = in.parser.nextToken(); t != null && t != JsonToken.END_ARRAY; t = in.parser.nextToken()) {
            if (all.size() == MOST_ELEMENTS) {
                in.error(pointer + '/' + MOST_ELEMENTS, "at most " + MOST_ELEMENTS + " entries", "more", "", "");
                in.parser.skipChildren();
                while (in.parser.nextToken() != JsonToken.END_ARRAY && in.parser.currentToken() != null) {
                    in.parser.skipChildren();
                }
                return all;
            }
            all.add(record(place.element(f, all.size())));
        }
        return all;
    }

    private Map<Tooth, Object> teeth(RecordPlace place, FieldShape f, String pointer) throws IOException {
        Map<Tooth, Object> all = new HashMap<>();
        if (in.parser.currentToken() != JsonToken.START_OBJECT) {
            in.wrong(pointer, "an object with tooth numbers for keys");
            return all;
        }
        Set<String> odd = new HashSet<>();
        while (in.parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = in.parser.currentName();
            Tooth tooth = Numbering.tooth(key);
            if (tooth == null || all.containsKey(tooth)) {
                String p = Keys.pointer(pointer, key);
                if (tooth != null || !odd.add(key)) {
                    Keys.refuse(in, p, key, List.of(), true);
                } else if (Privacy.key(key) != null) {
                    Keys.refuse(in, p, key, List.of(), false);
                } else {
                    Numbering.refuse(in, p, key);
                    in.parser.nextToken();
                    in.parser.skipChildren();
                }
                continue;
            }
            in.parser.nextToken();
            all.put(tooth, record(place.tooth(f, tooth)));
        }
        return all;
    }
}
