package dev.fairlead.model.shape;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The components of one case record, and how to make the record. */
public final class RecordShape {
    /** So many records are made by reflection before a method handle is made, which is quicker but takes as long as some hundred of them. */
    private static final int FEW = 12;
    private static final Map<Class<?>, RecordShape> SHAPES = new ConcurrentHashMap<>();

    private final Class<? extends Record> type;
    private final List<FieldShape> fields;
    private final Map<String, FieldShape> byKey = new LinkedHashMap<>();
    private final Constructor<? extends Record> constructor;
    private MethodHandle quick;
    private int made;
    private final Map<String, Record> blanks = new ConcurrentHashMap<>();

    private RecordShape(Class<? extends Record> type) {
        this.type = type;
        List<FieldShape> all = new ArrayList<>();
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] parameters = new Class<?>[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                parameters[i] = components[i].getType();
                all.add(field(components[i], i));
            }
            constructor = type.getDeclaredConstructor(parameters);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read the shape of " + type, e);
        }
        fields = List.copyOf(all);
        fields.forEach(f -> byKey.put(f.key(), f));
    }

    /** The shape of a case record class; made once. */
    public static RecordShape of(Class<? extends Record> type) {
        RecordShape known = SHAPES.get(type);
        if (known == null) {
            known = new RecordShape(type);
            SHAPES.put(type, known);
        }
        return known;
    }

    /** The shape of a whole case. */
    public static RecordShape ofCase() {
        return of(Case.class);
    }

    public Class<? extends Record> type() {
        return type;
    }

    public List<FieldShape> fields() {
        return fields;
    }

    /** The component with that key in a file, or null. */
    public FieldShape field(String key) {
        return byKey.get(key);
    }

    /** Makes the record of its component values in order. */
    public Record make(Object[] values) {
        try {
            MethodHandle handle = quick;
            if (handle != null) {
                return (Record) handle.invokeExact(values);
            }
            // threads that count at once only make it a little later, or twice
            if (made++ > FEW) {
                quick = handle();
            }
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw new IllegalStateException("cannot make " + type, e.getCause());
        } catch (RuntimeException | Error e) {
            throw e;
        } catch (Throwable t) {
            throw new IllegalStateException("cannot make " + type, t);
        }
    }

    private MethodHandle handle() throws IllegalAccessException {
        return MethodHandles.lookup().unreflectConstructor(constructor).asSpreader(Object[].class, fields.size())
                .asType(MethodType.methodType(Record.class, Object[].class));
    }

    /** A record of which every fact is unknown; {@code pointer} says where it would stand. Required bare values are null. */
    public Record blank(String pointer) {
        Record known = blanks.get(pointer);
        if (known == null) {
            Object[] values = new Object[fields.size()];
            for (FieldShape f : fields) {
                values[f.index()] = blankOf(f, pointer + "/" + escape(f.key()));
            }
            known = make(values);
            if (blanks.size() < 2000) {
                blanks.put(pointer, known);
            }
        }
        return known;
    }

    /** What stands for an absent component at {@code pointer}. */
    public static Object blankOf(FieldShape field, String pointer) {
        return switch (field.kind()) {
            case QUANTITY -> Measured.unknown(pointer);
            case ANSWER -> Answer.unknown(pointer);
            case CHOICE, DATE, TEXT, TOOTH -> Fact.unknown(pointer);
            case RECORD -> field.nested().blank(pointer);
            case LIST -> List.of();
            case TOOTH_MAP -> Map.of();
            case FORMAT -> 0;
            case ID, REQUIRED_CHOICE -> null;
        };
    }

    /** Escapes a key for a JSON Pointer (RFC 6901). */
    public static String escape(String key) {
        return key.indexOf('~') < 0 && key.indexOf('/') < 0 ? key : key.replace("~", "~0").replace("/", "~1");
    }

    private static FieldShape field(RecordComponent c, int index) {
        Field about = c.getAnnotation(Field.class);
        if (about == null) {
            throw new IllegalStateException(c + " of " + c.getDeclaringRecord() + " says not what it means (@Field)");
        }
        Class<?> raw = c.getType();
        Type argument = c.getGenericType() instanceof ParameterizedType p ? p.getActualTypeArguments()[p.getActualTypeArguments().length - 1] : null;
        Class<?> inner = argument instanceof Class<?> k ? k : null;
        Kind kind;
        Class<?> element = null;
        if (raw == Measured.class) {
            kind = Kind.QUANTITY;
        } else if (raw == Answer.class) {
            kind = Kind.ANSWER;
        } else if (raw == Fact.class && inner == LocalDate.class) {
            kind = Kind.DATE;
        } else if (raw == Fact.class && inner == String.class) {
            kind = Kind.TEXT;
        } else if (raw == Fact.class && inner == Tooth.class) {
            kind = Kind.TOOTH;
        } else if (raw == Fact.class && Choice.class.isAssignableFrom(inner)) {
            kind = Kind.CHOICE;
            element = inner;
        } else if (raw == int.class) {
            kind = Kind.FORMAT;
        } else if (raw == String.class) {
            kind = Kind.ID;
        } else if (Choice.class.isAssignableFrom(raw)) {
            kind = Kind.REQUIRED_CHOICE;
            element = raw;
        } else if (raw.isRecord()) {
            kind = Kind.RECORD;
            element = raw;
        } else if (raw == List.class && inner != null && inner.isRecord()) {
            kind = Kind.LIST;
            element = inner;
        } else if (raw == Map.class && inner != null && inner.isRecord()) {
            kind = Kind.TOOTH_MAP;
            element = inner;
        } else {
            throw new IllegalStateException(c + " has a type that the case model does not know");
        }
        return new FieldShape(about.key().isEmpty() ? c.getName() : about.key(), kind, PlainField.of(about), element, index, c.getAccessor());
    }
}
