package dev.fairlead.model.shape;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Answer;
import dev.fairlead.model.Field;
import java.util.LinkedHashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the build compiled of the case records is what they say of themselves. */
class CompiledRecordsTest {
    record Other(@Field(value = "Any.", key = "else") Answer any) {}

    @Test
    void theCodeSaysWhatReflectionSays() {
        Set<Class<? extends Record>> types = new LinkedHashSet<>();
        collect(RecordShape.ofCase(), types);
        assertThat(types).hasSizeGreaterThan(20);
        for (Class<? extends Record> type : types) {
            RecordCode code = RecordShape.compiled().of(type);
            RecordCode reflected = new ReflectedRecord(type);
            assertThat(code).as(type.getName()).isNotNull();
            assertThat(code.fields()).as(type.getName()).isEqualTo(reflected.fields());
            Object[] values = new Object[code.fields().length];
            for (FieldShape f : code.fields()) {
                values[f.index()] = RecordShape.blankOf(f, "/" + f.key());
            }
            Record made = code.make(values);
            assertThat(made).isEqualTo(reflected.make(values));
            for (int i = 0; i < values.length; i++) {
                assertThat(code.get(made, i)).isEqualTo(values[i]).isEqualTo(reflected.get(made, i));
            }
        }
    }

    @Test
    void otherRecordsAreReadByReflection() {
        RecordShape shape = RecordShape.of(Other.class);
        assertThat(RecordShape.compiled().of(Other.class)).isNull();
        assertThat(shape.fields()).extracting(FieldShape::key).containsExactly("else");
        assertThat(shape.fields().get(0).get(shape.make(new Object[] {Answer.YES})))
                .isEqualTo(Answer.YES);
    }

    private static void collect(RecordShape shape, Set<Class<? extends Record>> types) {
        if (types.add(shape.type())) {
            shape.fields().stream()
                    .filter(f -> f.element() != null && f.element().isRecord())
                    .forEach(f -> collect(f.nested(), types));
        }
    }
}
