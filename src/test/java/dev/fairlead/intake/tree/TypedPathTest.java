package dev.fairlead.intake.tree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places of a case as people type them, and what stands there. */
class TypedPathTest {
    @ParameterizedTest
    @CsvSource({
        "plan.standOff, /plan/standOff",
        "/plan/standOff, /plan/standOff",
        "' plan.standOff ', /plan/standOff",
        "teeth.31.width, /teeth/31/width",
        "visits.0.left.gapOpened, /visits/0/left/gapOpened",
        "contacts.43-42, /contacts/43-42"
    })
    void aPlaceIsTypedWithPointsOrSlashes(String typed, String pointer) {
        TypedPath path = TypedPath.of(typed);
        assertThat(path.pointer()).isEqualTo(pointer);
        assertThat(path.field()).isPresent();
        assertThat(path.nearest()).isEmpty();
    }

    /** Of a place that the format does not have: the nearest, or what it has there; nothing where nothing is near. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            plan.standof             | /plan/standOff
            visits.0.lfet.gapOpend   | /visits/0/left/gapOpened
            teeth.31.wdith           | /teeth/31/width
            plan                     | /plan/… (advanceLeft,
            plan.qqqq                | /plan/… (advanceLeft,
            visits                   | /visits/… (date,
            visits.0                 | /visits/0/… (date,
            qqqq.standOff            |
            plan.standOff.value      |
            """)
    void whatWasProbablyMeantIsTold(String typed, String nearest) {
        TypedPath path = TypedPath.of(typed);
        assertThat(path.field()).isEmpty();
        if (nearest == null) {
            assertThat(path.nearest()).isEmpty();
        } else {
            assertThat(path.nearest().orElseThrow()).startsWith(nearest);
            assertThat(path.nearest().orElseThrow().contains("(")).isEqualTo(nearest.contains("("));
        }
    }

    /** What stands in a form for what stands in a file, and the other way round. */
    @Test
    void whatIsShownIsWhatAPersonWouldType() throws UnreadableTextException {
        CaseTree t = CaseTree.parse(
                "\uFEFF{\"bite\":{\"overjet\":{\"repeats\":[\"3 mm\",4],\"error\":0.2},\"overbite\":{\"value\":\"0.1 in\",\"error\":1},"
                        + "\"lowerMidline\":{\"value\":1,\"unit\":\"mm\"}},\"consent\":{\"guardian\":false},\"plan\":{\"standOff\":null,"
                        + "\"percentile\":{\"value\":1,\"error\":[2]}},\"visits\":[{\"date\":\"2026-03-09\"},[],7]}",
                CaseFormat.JSON);
        assertThat(t.get("/bite/overjet")).contains("3 mm; 4 ± 0.2 mm");
        assertThat(t.get("/bite/overbite")).contains("0.1 in ± 1 mm");
        assertThat(t.get("/bite/lowerMidline")).contains("1 mm");
        assertThat(t.get("/consent/guardian")).contains("no");
        assertThat(t.get("/plan/standOff")).contains("null");
        assertThat(t.get("/plan/percentile")).contains("{\"value\":1,\"error\":[2]}");
        assertThat(t.size("/visits")).isEqualTo(3);
        assertThat(t.size("/nowhere")).isZero();
        t.set("/visits/1", " ");
        t.set("/bite/overjet", 3.50);
        t.set("/consent/guardian", "TRUE");
        t.set("/consent/child", "unknown");
        assertThat(t.text(CaseFormat.JSON))
                .contains("\"overjet\": 3.5", "\"guardian\": true")
                .endsWith("}\n");
        assertThat(t.get("/visits/1")).contains("7");
        t.remove("/visits/0/date");
        assertThat(t.size("/visits"))
                .as("an entry of a list stays, though empty")
                .isEqualTo(2);
        assertThat(CaseTree.empty().text(CaseFormat.YAML)).isEqualTo("fairlead: 1\n");
    }
}
