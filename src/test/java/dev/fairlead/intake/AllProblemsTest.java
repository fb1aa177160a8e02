package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One file with many slips: every one is told at once, with its pointer, its line and what it probably is. */
class AllProblemsTest {
    private static final String YAML = """
            fairlead: 1
            id: demo-01
            stage: bench
            child: {age: 113, sex: femal}
            teeth:
              31: {state: erupted, width: [5,4]}
              32: {width: 0.23}
              42: {width: 0x1F}
              24: {width: *x}
              A: {width: 3}
              LL3: {width: 3}
              31: {width: 5}
            contacts:
              41-42: 2
              31-32: -1
            space: {left: "1.234,5", right: .inf, incisor: 22}
            name: somebody
            mouth:
              plaqueScore: 0.2
              untreatedCaries: Yes
            films:
              models: 3.4.2026
              headFilm: ~
            plan:
              standOff: 0.015 m
              advanceLeft: 25
              intervalWeeks: 28
            waivers:
            - reason: "Agreed with Jane Doe"
              by: clinican
            """;

    @Test
    void everySlipOfAFileIsToldAtOnce() {
        CaseReading r = CaseReader.read(YAML.getBytes(StandardCharsets.UTF_8), "x.yaml", CaseFormat.BY_NAME);
        assertThat(r.value()).isEmpty();
        assertThat(r.problems())
                .extracting(
                        Problem::severity,
                        Problem::pointer,
                        Problem::line,
                        p -> p.slip().orElse(""))
                .containsExactly(
                        tuple(Severity.ERROR, "/child/age", 4, "months in a field in years (9.417 y)"),
                        tuple(Severity.ERROR, "/child/sex", 4, "a slip in writing female"),
                        tuple(Severity.DOUBT, "/teeth/31/width", 6, "a decimal comma within brackets"),
                        tuple(Severity.ERROR, "/teeth/32/width", 7, "inches in a field in mm (5.842 mm)"),
                        tuple(
                                Severity.ERROR,
                                "/teeth/42/width",
                                8,
                                "a number in octal or hexadecimal form, or leading zeros"),
                        tuple(Severity.ERROR, "/teeth/24/width", 9, ""),
                        tuple(Severity.ERROR, "/teeth/A", 10, "a number of the Universal system for 55"),
                        tuple(Severity.ERROR, "/teeth/LL3", 11, "a Palmer or quadrant notation for 33"),
                        tuple(Severity.ERROR, "/teeth/31", 12, "a block that was copied and not changed"),
                        tuple(Severity.ERROR, "/contacts/41-42", 14, "left and right the other way round"),
                        tuple(Severity.ERROR, "/contacts/31-32", 15, "a lost or wrong sign (1 mm)"),
                        tuple(Severity.ERROR, "/space/left", 16, "a separator between thousands"),
                        tuple(Severity.ERROR, "/space/right", 16, "the result of a failed calculation"),
                        tuple(Severity.ERROR, "/space/incisor", 16, "a slip in writing incisors"),
                        tuple(Severity.ERROR, "/name", 17, ""),
                        tuple(Severity.DOUBT, "/mouth/plaqueScore", 19, "a share of 1 in a field in per cent (20 %)"),
                        tuple(Severity.ERROR, "/mouth/untreatedCaries", 20, ""),
                        tuple(
                                Severity.ERROR,
                                "/films/models",
                                22,
                                "day and month in an order that can be read in two ways"),
                        tuple(Severity.ERROR, "/films/headFilm", 23, ""),
                        tuple(Severity.ERROR, "/plan/standOff", 25, "\"m\" may be metres, minutes or months"),
                        tuple(Severity.ERROR, "/plan/advanceLeft", 26, "a lost decimal point (2.5 mm)"),
                        tuple(Severity.ERROR, "/plan/intervalWeeks", 27, "days in a field in weeks (4 weeks)"),
                        tuple(Severity.ERROR, "/waivers/0/reason", 29, ""),
                        tuple(Severity.ERROR, "/waivers/0/by", 30, "a slip in writing clinician"));
        assertThat(r.problems()).allSatisfy(p -> {
            assertThat(p.expected()).isNotBlank();
            assertThat(p.found()).isNotBlank();
            assertThat(p.column()).isPositive();
        });
        assertThat(r.problems().toString()).doesNotContain("Jane").doesNotContain("somebody");
    }

    @Test
    void aJsonFileWithTheSameSlipsGivesTheSameProblems() {
        String json = """
                {"fairlead": 1, "id": "demo-01", "stage": "bench",
                 "child": {"age": 113, "sex": "femal"},
                 "teeth": {"31": {"width": 0.23}, "31": {"width": 5}, "A": {}, "42": {"width": NaN}, "41": {"width": 1e400}},
                 "contacts": {"41-42": 2},
                 "films": {"headFilm": null, "panoramicRead": 1, "models": "2026-02-30"},
                 "plan": {"advanceRight": {"value": 2, "unit": "kg"}, "standOff": {"value": 1, "value": 2}},
                 "visits": [{"activated": 2}, 7]}
                """;
        CaseReading r = CaseReader.read(json.getBytes(StandardCharsets.UTF_8), "x.json", CaseFormat.BY_NAME);
        assertThat(r.value()).isEmpty();
        assertThat(r.problems())
                .extracting(Problem::pointer, Problem::line, Problem::column)
                .containsExactly(
                        tuple("/child/age", 2, 19),
                        tuple("/child/sex", 2, 31),
                        tuple("/teeth/31/width", 3, 28),
                        tuple("/teeth/31", 3, 35),
                        tuple("/teeth/A", 3, 55),
                        tuple("/teeth/42/width", 3, 80),
                        tuple("/teeth/41/width", 3, 102),
                        tuple("/contacts/41-42", 4, 15),
                        tuple("/films/headFilm", 5, 24),
                        tuple("/films/panoramicRead", 5, 47),
                        tuple("/films/models", 5, 60),
                        tuple("/plan/advanceRight/unit", 6, 48),
                        tuple("/plan/standOff/value", 6, 80),
                        tuple("/visits/0/activated", 7, 27),
                        tuple("/visits/1", 7, 31));
    }

    @Test
    void aLongListOfProblemsIsCutAndCounted() {
        String json = "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\"," + "\"x\":1,".repeat(249) + "\"y\":1}";
        List<Problem> problems = CaseReader.read(json.getBytes(StandardCharsets.UTF_8), "x.json", CaseFormat.JSON)
                .problems();
        assertThat(problems).hasSize(Problems.MOST + 1);
        assertThat(problems.get(Problems.MOST).found()).startsWith("150 more problems");
    }
}
