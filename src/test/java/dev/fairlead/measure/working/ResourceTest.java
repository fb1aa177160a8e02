package dev.fairlead.measure.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import dev.fairlead.measure.working.Resource.Entry;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A table of text beside a class, as {@code beads.txt} beside this one, and months between days. */
class ResourceTest {
    private final List<Entry> beads = Resource.read(ResourceTest.class, "beads.txt");

    @Test
    void cellsAreReadAsWhatTheirColumnHolds() {
        assertThat(beads).hasSize(3);
        Entry first = beads.get(0);
        assertThat(first.text("name")).isEqualTo("first");
        assertThat(first.number("width")).isEqualTo(12.5);
        assertThat(first.flag("round")).isTrue();
        assertThat(first.texts("colours")).containsExactly("red", "green");
        assertThat(first.numbers("readings")).containsExactly(1, 2.5);
        Entry second = beads.get(1);
        assertThat(second.number("width")).isEqualTo(7);
        assertThat(second.flag("round")).isFalse();
        assertThat(second.numbers("readings")).containsExactly(3);
    }

    @Test
    void aCellThatIsNotThereOrNotOfItsKindIsAnErrorOfOurOwn() {
        Entry third = beads.get(2);
        assertThatIllegalStateException()
                .isThrownBy(() -> third.number("width"))
                .withMessage("beads.txt: x is no width");
        assertThatIllegalStateException()
                .isThrownBy(() -> third.flag("round"))
                .withMessage("beads.txt: maybe is no round");
        assertThatIllegalStateException()
                .isThrownBy(() -> third.text("readings"))
                .withMessageStartingWith("beads.txt has no readings in");
        assertThatIllegalStateException().isThrownBy(() -> third.text("weight"));
        assertThatIllegalStateException()
                .isThrownBy(() -> Resource.read(ResourceTest.class, "none.txt"))
                .withMessageContaining("none.txt is not beside");
    }

    /** A month and 19 of the 31 days that follow 20 December; back again it is as much below nought. */
    @Test
    void monthsAreThoseOfTheCalendar() {
        LocalDate from = LocalDate.of(2025, 11, 20);
        LocalDate to = LocalDate.of(2026, 1, 8);
        assertThat(CalendarMonths.between(from, to)).isEqualTo(Measured.exact(1 + 19 / 31.0, Unit.MONTH));
        assertThat(CalendarMonths.between(to, from).value()).isEqualTo(-(1 + 19 / 31.0));
        assertThat(CalendarMonths.between(from, from).value()).isZero();
    }

    @Test
    void aWorkbookThatNobodyReadsTakesNothing() {
        assertThat(Workbook.none().wanted()).isFalse();
        assertThat(Workbook.kept().wanted()).isTrue();
    }
}
