package dev.fairlead.measure.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Side;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The workings of marks, blank and folds: the numbers that stand in a formula give the number that it is held to. */
class WireWordsTest {
    /** Wire of 0.508 mm round a beak of 0.746 mm: r = 1 mm; legs and tubes of 3 mm. */
    private static List<Working> workings(CaseBuilder b) {
        Case c = b.build();
        Workbook book = Workbook.kept();
        WireMeasures.blankSpare(c, new WireMarks(c, PatientArch.of(c)), book);
        return book.workings();
    }

    private static Working find(List<Working> all, String id) {
        return all.stream().filter(w -> w.id().equals("wire." + id)).findFirst().orElseThrow();
    }

    /** The terms of a sum as it is printed, each the product of its numbers. */
    private static double sum(String printed) {
        return Arrays.stream(printed.split(" \\+ "))
                .mapToDouble(term -> Arrays.stream(term.split(" x "))
                        .mapToDouble(n -> n.equals("pi") ? Math.PI : Double.parseDouble(n))
                        .reduce(1, (a, b) -> a * b))
                .sum();
    }

    @Test
    void eachMarkIsTheSumThatStandsBesideIt() {
        List<Working> all = workings(BaseCase.of());
        for (String side : new String[] {"right", "left"}) {
            for (String mark : new String[] {"first-bend", "second-bend", "cut"}) {
                Working w = find(all, mark + "." + side);
                assertThat(w.title()).endsWith(", " + side);
                assertThat(sum(w.substituted())).as(w.id()).isCloseTo(w.value().value(), within(2e-3));
            }
            assertThat(find(all, "second-bend." + side).substituted()).endsWith(" + pi x 1 + 3");
            assertThat(find(all, "cut." + side).substituted()).endsWith(" + 1.571 x 1 + 3");
            assertThat(find(all, "first-bend." + side).substituted()).endsWith(" + 3 + 1.571 x 1");
        }
        assertThat(sum(find(all, "blank").substituted())).isCloseTo(105.387, within(3e-3));
        assertThat(find(all, "blank-spare").substituted()).matches("120 - 105\\.38\\d");
    }

    /** Reference model: gap 1.433217 mm, 28.53784 degrees, 1.898099 mm of drop for 1.5 mm of stand-off. */
    @Test
    void eachFoldShowsItsAngle() {
        List<Working> all = workings(BaseCase.of().set("/plan/standOff", 1.5));
        for (String side : new String[] {"right", "left"}) {
            assertThat(find(all, "gap-to-open." + side).substituted()).isEqualTo("3 sin 28.538°");
            Working gain = find(all, "gain." + side);
            assertThat(gain.substituted()).isEqualTo("1.5 / 1.433");
            assertThat(gain.value().value()).isCloseTo(1.5 / 1.433217, within(1e-5));
            assertThat(gain.note()).isEqualTo("At the very first 2 r / L = 0.667; it rises as the fold opens.");
            Working drop = find(all, "drop." + side);
            assertThat(drop.substituted()).isEqualTo("a = 28.538°, r = 1, L = 3");
            assertThat(drop.value().value()).isCloseTo(1.898099 * Math.cos(Math.toRadians(20)), within(1e-5));
        }
    }

    @Test
    void theTipThatWouldKeepOneMillimetreToTheGingiva() {
        List<Working> all = workings(BaseCase.of().set("/bench/left/clearGingiva", 0.4));
        Working left = find(all, "tip-needed.left");
        assertThat(left.substituted()).isEqualTo("asin(sin 20 + (1 - 0.4) / 4)");
        // sin t' = 0.342020 + 0.15
        assertThat(left.value().value()).isCloseTo(Math.toDegrees(Math.asin(0.492020)), within(1e-4));
        assertThat(find(all, "tip-needed.right").substituted()).isEqualTo("asin(sin 20 + (1 - 1.5) / 4)");
    }

    @Test
    void whatIsNotKnownHasNoNumbersInItsFormula() {
        List<Working> all = workings(BaseCase.of().without("/wire/beakRadius"));
        assertThat(find(all, "gain.left").note()).isEmpty();
        assertThat(all)
                .filteredOn(w -> w.value().missing().contains("/wire/beakRadius"))
                .hasSize(16)
                .allMatch(w -> w.substituted().isEmpty());
    }

    @Test
    void heightAndSwingOfAPlannedFold() {
        Case c = BaseCase.of().set("/plan/standOff", 1.5).build();
        Workbook book = Workbook.kept();
        assertThat(WireMeasures.plannedHeight(c, book).value()).isCloseTo(4, within(1e-9));
        assertThat(book.workings())
                .singleElement()
                .satisfies(w -> assertThat(w.substituted()).isEqualTo("4 (0.746 + 0.508 / 2)"));
        Workbook swing = Workbook.kept();
        // 0.7 to 1.5 mm at 1.5 mm in the beam model: 1.1, with half of what lies between for two standard deviations
        assertThat(WireMeasures.swing(c, Side.RIGHT, swing).sd()).isCloseTo(0.2, within(0.01));
        assertThat(swing.workings()).singleElement().satisfies(w -> {
            assertThat(w.title()).isEqualTo("swing of the right fold towards the cheek");
            assertThat(w.substituted()).isEqualTo("0.73 x 1.5");
        });
    }
}
