package dev.fairlead.model.shape;

import dev.fairlead.model.Case;
import dev.fairlead.model.Tooth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Reads and changes single facts of a case by JSON Pointer (RFC 6901); a change gives a new case and leaves the old one
 * as it is.
 */
public final class Edit {
    private Edit() {}

    /**
     * What stands at {@code pointer}: a fact, a section, a list, a map, or the whole case. A tooth of which the case
     * says nothing reads as all unknown; a pointer that leads nowhere throws.
     */
    public static Object get(Case from, String pointer) {
        Object at = from;
        @Nullable FieldShape field = null;
        String path = "";
        for (String token : tokens(pointer)) {
            path += "/" + RecordShape.escape(token);
            if (at instanceof Record r) {
                field = component(RecordShape.of(r.getClass()), token, path);
                at = field.get(r);
            } else if (at instanceof List<?> l) {
                at = l.get(index(l, token, path));
            } else if (at instanceof Map<?, ?> m) {
                Object found = m.get(tooth(token, path));
                at = found != null
                        ? found
                        : Objects.requireNonNull(field).nested().blank(path);
            } else {
                throw new IllegalArgumentException(path + " leads into a single value");
            }
        }
        return at;
    }

    /** The same; empty where a pointer that somebody typed leads nowhere. */
    public static Optional<Object> find(Case from, String pointer) {
        try {
            return Optional.of(get(from, pointer));
        } catch (IllegalArgumentException nowhere) {
            return Optional.empty();
        }
    }

    /**
     * The case with another value at {@code pointer}. The value is plain (a number in the field's unit, a list of
     * readings, a yes or no as Boolean, a word, a date) or as the record holds it; {@code -} as the last token appends
     * to a list.
     */
    public static Case set(Case from, String pointer, Object value) {
        List<String> tokens = tokens(pointer);
        if (tokens.isEmpty()) {
            throw new IllegalArgumentException("the whole case is not a fact");
        }
        return (Case) replaced(from, "", tokens, value, false);
    }

    /**
     * The case without what stands at {@code pointer}: a fact becomes unknown, a section all unknown, a list or map
     * empty, a tooth absent. An element of a list becomes all unknown and keeps its place, since others are counted by
     * theirs. Absent teeth and elements stay absent.
     */
    public static Case forget(Case from, String pointer) {
        List<String> tokens = tokens(pointer);
        if (tokens.isEmpty()) {
            throw new IllegalArgumentException("the whole case is not a fact");
        }
        return (Case) replaced(from, "", tokens, null, true);
    }

    /**
     * Pointers of all single facts, known or not, in the order of the records; of lists and maps those that are there.
     */
    public static List<String> factPointers(Case from) {
        List<String> all = new ArrayList<>();
        collect(from, "", all);
        return List.copyOf(all);
    }

    private static void collect(Record record, String pointer, List<String> all) {
        for (FieldShape f : RecordShape.of(record.getClass()).fields()) {
            String at = pointer + "/" + RecordShape.escape(f.key());
            Object value = f.get(record);
            if (f.kind().fact()) {
                all.add(at);
            } else if (value instanceof Record r) {
                collect(r, at, all);
            } else if (value instanceof List<?> l) {
                for (int i = 0; i < l.size(); i++) {
                    collect((Record) l.get(i), at + "/" + i, all);
                }
            } else if (value instanceof Map<?, ?> m) {
                new TreeMap<>(m).forEach((tooth, r) -> collect((Record) r, at + "/" + tooth, all));
            }
        }
    }

    /** The record with the change made below it; {@code value} is ignored when forgetting. */
    private static Record replaced(
            Record record, String pointer, List<String> tokens, @Nullable Object value, boolean forget) {
        String key = tokens.get(0);
        String at = pointer + "/" + RecordShape.escape(key);
        FieldShape field = component(RecordShape.of(record.getClass()), key, at);
        Draft<? extends Record> draft = Draft.of(record, pointer);
        if (tokens.size() == 1) {
            return (forget ? draft.forget(key) : draft.set(key, value)).make();
        }
        List<String> rest = tokens.subList(1, tokens.size());
        Object old = field.get(record);
        Object changed = switch (field.kind()) {
            case RECORD -> replaced((Record) old, at, rest, value, forget);
            case LIST -> element(field, (List<?>) old, at, rest, value, forget);
            case TOOTH_MAP -> entry(field, (Map<?, ?>) old, at, rest, value, forget);
            default -> throw new IllegalArgumentException(at + " is a single value");
        };
        return changed == old ? record : draft.set(key, changed).make();
    }

    private static List<?> element(
            FieldShape field,
            List<?> old,
            String pointer,
            List<String> tokens,
            @Nullable Object value,
            boolean forget) {
        List<Object> list = new ArrayList<>(old);
        boolean append = tokens.get(0).equals("-") && tokens.size() == 1 && !forget;
        int i = append ? old.size() : index(old, tokens.get(0), pointer + "/" + tokens.get(0));
        String at = pointer + "/" + i;
        if (append) {
            list.add(value);
        } else if (tokens.size() > 1) {
            list.set(i, replaced((Record) old.get(i), at, tokens.subList(1, tokens.size()), value, forget));
        } else {
            list.set(i, forget ? field.nested().blank(at) : value);
        }
        return list;
    }

    private static Map<?, ?> entry(
            FieldShape field,
            Map<?, ?> old,
            String pointer,
            List<String> tokens,
            @Nullable Object value,
            boolean forget) {
        Tooth tooth = tooth(tokens.get(0), pointer + "/" + tokens.get(0));
        if (forget && !old.containsKey(tooth)) {
            return old;
        }
        String at = pointer + "/" + tooth;
        Map<Object, Object> map = new TreeMap<>(old);
        if (tokens.size() > 1) {
            Object there = old.get(tooth);
            Record start = there != null ? (Record) there : field.nested().blank(at);
            map.put(tooth, replaced(start, at, tokens.subList(1, tokens.size()), value, forget));
        } else if (forget) {
            map.remove(tooth);
        } else {
            map.put(tooth, value);
        }
        return map;
    }

    private static FieldShape component(RecordShape shape, String key, String at) {
        FieldShape field = shape.field(key);
        if (field == null) {
            throw new IllegalArgumentException(at + " is no part of a case");
        }
        return field;
    }

    private static int index(List<?> list, String token, String at) {
        if (token.matches("0|[1-9][0-9]{0,5}") && Integer.parseInt(token) < list.size()) {
            return Integer.parseInt(token);
        }
        throw new IllegalArgumentException(at + " is not there; the list has " + list.size());
    }

    private static Tooth tooth(String token, String at) {
        if (token.matches("[1-8][1-8]") && Tooth.exists(Integer.parseInt(token))) {
            return Tooth.of(Integer.parseInt(token));
        }
        throw new IllegalArgumentException(at + " names no tooth of ISO 3950");
    }

    private static List<String> tokens(String pointer) {
        if (pointer.isEmpty()) {
            return List.of();
        }
        if (pointer.charAt(0) != '/') {
            throw new IllegalArgumentException("a JSON Pointer starts with a slash: " + pointer);
        }
        List<String> tokens = new ArrayList<>();
        for (String t : pointer.substring(1).split("/", -1)) {
            tokens.add(t.indexOf('~') < 0 ? t : t.replace("~1", "/").replace("~0", "~"));
        }
        return tokens;
    }
}
