package dev.fairlead.model.shape;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Choice;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How the records of one class are described, made and taken apart, by reflection. */
final class ReflectedRecord {
    private final RecordComponent[] components;
    private final Constructor<? extends Record> constructor;

    ReflectedRecord(Class<? extends Record> type) {
        components = type.getRecordComponents();
        Class<?>[] parameters = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            parameters[i] = components[i].getType();
        }
        try {
            constructor = type.getDeclaredConstructor(parameters);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("cannot read the shape of " + type, e);
        }
    }

    /** The components in their order. */
    FieldShape[] fields() {
        FieldShape[] fields = new FieldShape[components.length];
        for (int i = 0; i < fields.length; i++) {
            fields[i] = field(components[i], i);
        }
        return fields;
    }

    /** Makes the record of its component values in order. */
    Record make(Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException own) {
                throw own;
            }
            throw new IllegalStateException("cannot make " + constructor.getDeclaringClass(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + constructor.getDeclaringClass(), e);
        }
    }

    /** Reads one component of a record. */
    Object get(Record record, int field) {
        try {
            return components[field].getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + components[field], e);
        }
    }

    private static FieldShape field(RecordComponent c, int index) {
        Field about = c.getAnnotation(Field.class);
        if (about == null) {
            throw new IllegalStateException(c + " of " + c.getDeclaringRecord() + " says not what it means (@Field)");
        }
        Class<?> raw = c.getType();
        Type argument = c.getGenericType() instanceof ParameterizedType p
                ? p.getActualTypeArguments()[p.getActualTypeArguments().length - 1]
                : null;
        Class<?> inner = argument instanceof Class<?> k ? k : null;
        Kind kind;
        @Nullable Class<?> element = null;
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
        } else if (raw == Fact.class && inner != null && Choice.class.isAssignableFrom(inner)) {
            kind = Kind.CHOICE;
            element = inner;
        } else if (raw == int.class) {
            kind = Kind.FORMAT;
        } else if (raw == String.class) {
            kind = Kind.ID;
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
        return new FieldShape(
                about.key().isEmpty() ? c.getName() : about.key(), kind, PlainField.of(about), element, index);
    }
}
