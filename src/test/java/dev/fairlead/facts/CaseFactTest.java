package dev.fairlead.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.model.Answer;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CaseFactTest {
    static Stream<Class<?>> types() {
        return Stream.of(CaseFact.class.getPermittedSubclasses());
    }

    @ParameterizedTest
    @MethodSource("types")
    void tellsAllOfItsComponentsInOrder(Class<?> type) throws ReflectiveOperationException {
        List<Object> given = new ArrayList<>();
        List<CaseValue> knowable = new ArrayList<>();
        for (RecordComponent c : type.getRecordComponents()) {
            given.add(value(c, given.size()));
            if (given.get(given.size() - 1) instanceof CaseValue k) {
                knowable.add(k);
            }
        }
        Class<?>[] parameters = Stream.of(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);

        CaseFact fact = (CaseFact) type.getConstructor(parameters).newInstance(given.toArray());

        assertThat(knowable).isNotEmpty();
        assertThat(fact.components())
                .usingElementComparator((a, b) -> a == b ? 0 : 1)
                .containsExactlyElementsOf(knowable);
    }

    @Test
    void tellsWhichComponentWasNotGivenAndWhereToGiveIt() {
        CaseFact fact =
                AntimeresBuilder.builder().place(Place.CASE).left(Tooth.of(31)).build();

        assertThatThrownBy(fact::components)
                .hasMessage("Antimeres.difference was not given:"
                        + " write .difference(...) where measure.gather builds Antimeres");
    }

    /** An object of its own for each component that can be known, so that none passes for another. */
    private static Object value(RecordComponent component, int number) {
        if (component.getType() == Measured.class) {
            return Measured.exact(number, Unit.MM);
        }
        if (component.getType() == Answer.class) {
            return Answer.unknown(List.of("/" + number));
        }
        return component.getType() == int.class ? 0 : null;
    }
}
