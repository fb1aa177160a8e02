package dev.fairlead.intake.bind;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.Edit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of the wrong kind, form or size: each is refused at its own place, and the words say what belongs there. */
class RefusalsTest {
    private static CaseReading yaml(String part) {
        return CaseReader.read(
                ("fairlead: 1\nid: a\n" + part + "\n").getBytes(StandardCharsets.UTF_8), "x", CaseFormat.YAML);
    }

    private static CaseReading json(String part) {
        return CaseReader.read(
                ("{\"fairlead\":1,\"id\":\"a\"," + part + "}").getBytes(StandardCharsets.UTF_8), "x", CaseFormat.JSON);
    }

    /** An overjet lies between -10 and 20 mm, a wire size between 0.3 and 0.8, brackets are counted from 0 to 4. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            bite: {overjet: null}                               | /bite/overjet          | nothing          | a number from -10 to 20 mm  | write unknown, or leave the field out
            bite: {overjet: true}                               | /bite/overjet          | true             | a number from -10 to 20 mm  |
            bite: {overjet: [1, true]}                          | /bite/overjet/1        | true             | a number from -10 to 20 mm  |
            bite: {overjet: []}                                 | /bite/overjet          | an empty list    | a number from -10 to 20 mm  | write unknown, or leave the field out
            bite: {overjet: [1, unknown]}                       | /bite/overjet/1        | "unknown"        | a number from -10 to 20 mm  | a list or object holds readings only; write unknown in its place
            bite: {overjet: {value: does-not-apply}}            | /bite/overjet/value    | "does-not-apply" | a number from -10 to 20 mm  | a list or object holds readings only; write does-not-apply in its place
            bite: {overjet: {value: 1, repeats: [1, 2]}}        | /bite/overjet          | both             | an object with value or repeats | give one of the two
            bite: {overjet: {unit: mm}}                         | /bite/overjet          | neither          | an object with value or repeats | give one of the two
            bite: {overjet: {repeats: 3}}                       | /bite/overjet/repeats  | the number 3     | a list of readings          |
            bite: {overjet: {repeats: [1], repeats: [2]}}       | /bite/overjet/repeats  | "repeats" again  | each field once             | keep one of the two
            bite: {overjet: {repeats: [1, {}]}}                 | /bite/overjet/repeats/1 | an object       | a number from -10 to 20 mm  |
            bite: {overjet: {value: [1]}}                       | /bite/overjet/value    | a list           | a number from -10 to 20 mm  |
            bite: {overjet: {value: 1, error: x}}               | /bite/overjet/error    | "x"              | one standard deviation: a number of zero or more |
            bite: {overjet: {value: 1, error: -0.5}}            | /bite/overjet/error    | the number -0.5  | one standard deviation: a number from 0 to 30    |
            bite: {overjet: {value: 1, error: 31}}              | /bite/overjet/error    | the number 31    | one standard deviation: a number from 0 to 30    |
            bite: {overjet: {value: 1, error: 1e-400}}          | /bite/overjet/error    | the number 1e-400 | one standard deviation: a number from 0 to 30   |
            bite: {overjet: {value: 1, unit: 3}}                | /bite/overjet/unit     | the number 3     | a unit: mm, cm or in        |
            bite: {overjet: {value: 1, unit: kg}}               | /bite/overjet/unit     | "kg"             | a unit: mm, cm or in        |
            bite: {overjet: {value: 1, unit: °}}                | /bite/overjet/unit     | "°"              | a unit: mm, cm or in        |
            bite: {overjet: {value: 1 mm, unit: mm}}            | /bite/overjet/value    | "1 mm"           | a number from -10 to 20 mm  | the unit is given apart: leave one of the two out
            bite: {overjet: 20.1}                               | /bite/overjet          | the number 20.1  | a number from -10 to 20 mm  | write the value with its unit
            bite: {overjet: 99999}                              | /bite/overjet          | the number 99999 | a number from -10 to 20 mm  | measure or copy it again
            bite: {overjet: 9 in}                               | /bite/overjet          | "9 in", which is 228.6 mm | a number from -10 to 20 mm | write the value with its unit
            bite: {overjet: '990'}                              | /bite/overjet          | "990"            | a number from -10 to 20 mm  | write the value with its unit
            bite: {overjet: Jane Doe}                           | /bite/overjet          | a text that looks like a name (not repeated here) | a number from -10 to 20 mm | use a pseudonym or a role; within a sentence write words without a capital
            insertion: {bracketsTied: 3.5}                      | /insertion/bracketsTied | the number 3.5  | a whole number from 0 to 4  | count again
            insertion: {bracketsTied: '3.5'}                    | /insertion/bracketsTied | "3.5"           | a whole number from 0 to 4  | count again
            insertion: {bracketsTied: [4, 3]}                   | /insertion/bracketsTied | a list          | a whole number from 0 to 4  | a count is not measured several times
            insertion: {bracketsTied: {value: 4, error: 1}}     | /insertion/bracketsTied/error | the number 1 | no error, since this is a count |
            bite: 7                                             | /bite                  | the number 7     | an object with fields such as overjet |
            visits: 3                                           | /visits                | the number 3     | a list                      |
            teeth: [1]                                          | /teeth                 | a list           | an object with tooth numbers for keys |
            teeth: {name: {}}                                   | /teeth/name            | a field that may tell who the patient is | a case that does not tell who the patient is | take the field out; a case carries a pseudonym and measurements only
            contacts: {xx: 1}                                   | /contacts/xx           | "xx"             | a known field               | known here: 43-42, 42-41, 41-31, 31-32, 32-33
            contacts: {4142: 1}                                 | /contacts/4142         | "4142"           | a contact point, named from the patient's right to left | write "42-41"
            contacts: {42/41: 1}                                | /contacts/42~141       | "42/41"          | a contact point, named from the patient's right to left | write "42-41"
            date: 2026-13-01                                    | /date                  | "2026-13-01"     | a date as year-month-day, such as 2026-03-09 | write four digits for the year, two for the month, two for the day, with dashes
            date: 1999-12-31                                    | /date                  | "1999-12-31"     | a date from 2000 to 2099    | write four digits for the year, two for the month, two for the day, with dashes
            date: '2100-01-01'                                  | /date                  | "2100-01-01"     | a date from 2000 to 2099    | write four digits for the year, two for the month, two for the day, with dashes
            date: 2026-3-9                                      | /date                  | "2026-3-9"       | a date as year-month-day, such as 2026-03-09 | write two digits for month and day
            date: 5                                             | /date                  | the number 5     | a date as year-month-day, such as 2026-03-09 |
            films: {models: does-not-apply}                     | /films/models          | does-not-apply   | a value or unknown          | this always applies: write unknown when it is not known
            consent: {guardian: does-not-apply}                 | /consent/guardian      | does-not-apply   | a value or unknown          | this always applies: write unknown when it is not known
            consent: {guardian: 5}                              | /consent/guardian      | the number 5     | yes, no or unknown          |
            resident: {a: 1}                                    | /resident              | an object        | a text                      |
            resident: ''                                        | /resident              | nothing          | a code for the resident who plans the case, for audits; never a name |
            waivers: [{reason: ' '}]                            | /waivers/0/reason      | " "              | a text of 1 to 1000 characters |
            waivers: [{criterion: A B}]                         | /waivers/0/criterion   | "A B"            | identifier of the criterion |
            plan: {pattern: 5}                                  | /plan/pattern          | the number 5     | one of both-sides, alternating |
            images: [{tooth: true}]                             | /images/0/tooth        | true             |                             |
            images: [{tooth: 99}]                               | /images/0/tooth        | "99"             |                             | write the two-digit number
            """)
    void aValueThatDoesNotFitIsRefused(String part, String pointer, String found, String expected, String mend) {
        List<Problem> errors = yaml(part).errors();
        assertThat(errors).extracting(Problem::pointer).containsExactly(pointer);
        Problem p = errors.get(0);
        assertThat(p.found()).isEqualTo(found);
        if (expected != null) {
            assertThat(p.expected()).isEqualTo(expected);
            assertThat(p.mend()).isEqualTo(mend == null ? "" : mend);
        }
        assertThat(p.line()).isEqualTo(3);
        assertThat(yaml(part).value()).isEmpty();
    }

    /** Doubted: an error of more than a sixth of the range, readings eight errors apart, shares for per cent. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            bite: {overjet: {value: 1, error: 5}}     ;
            bite: {overjet: {value: 1, error: 5.01}}  ; /bite/overjet/error
            bite: {overjet: {value: 1, error: 30}}    ; /bite/overjet/error
            bite: {overjet: {value: 1, error: 0}}     ;
            insertion: {bracketsTied: {value: 4, error: 0}} ;
            teeth: {31: {width: [5.0, 5.8]}}          ;
            teeth: {31: {width: [5.81, 5.0]}}         ; /teeth/31/width
            teeth: {31: {width: {repeats: [5.0, 5.81]}}} ; /teeth/31/width/repeats
            mouth: {plaqueScore: 1}                   ; /mouth/plaqueScore
            mouth: {plaqueScore: '1'}                 ; /mouth/plaqueScore
            mouth: {plaqueScore: 1.1}                 ;
            mouth: {plaqueScore: 0}                   ;
            mouth: {plaqueScore: 1 %}                 ;
            visits: [{gauge: 9.9}]                    ; /visits/0/gauge
            visits: [{gauge: 10}]                     ;
            visits: [{gauge: 0}]                      ;
            bite: {overjet: [5,4]}                    ; /bite/overjet
            bite: {overjet: [5, 4]}                   ;
            bite: {overjet: ["5","4"]}                ;
            bite: {overjet: [5.0,4]}                  ;
            bite: {overjet: 20}                       ;
            bite: {overjet: -10}                      ;
            date: 2000-01-01                          ;
            date: 2099-12-31                          ;
            """)
    void whatHardlyMeansWhatItSaysIsDoubted(String part, String pointer) {
        CaseReading r = yaml(part);
        assertThat(r.read()).isTrue();
        assertThat(r.problems()).extracting(Problem::pointer).isEqualTo(pointer == null ? List.of() : List.of(pointer));
    }

    /**
     * One inch is 25.4 mm (international yard and pound agreement of 1959); an overjet alone is taken to be off by
     * 0.25.
     */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            {"value":0.1,"unit":"in","error":0.01}     ; 2.54 ; 0.254
            {"unit":"cm","value":"0.5","error":0.1}    ; 5    ; 1
            {"value":"3,5","error":0.4}                ; 3.5  ; 0.4
            {"repeats":[0.1,0.3],"unit":"in","error":0}; 5.08 ; 0
            {"repeats":["3 mm",4],"error":0.2}         ; 3.5  ; 0.2
            -0.0                                       ; 0    ; 0.25
            {"value":-0.0,"error":-0.0}                ; 0    ; 0
            [3]                                        ; 3    ; 0.25
            """)
    void aQuantityIsReadInItsUnit(String overjet, double value, double error) {
        CaseReading r = json("\"bite\":{\"overjet\":" + overjet + "}");
        assertThat(r.errors()).isEmpty();
        Measured m = r.value().orElseThrow().bite().overjet();
        assertThat(m.value()).isEqualTo(value);
        assertThat(m.sd()).isEqualTo(error);
    }

    /** The quick reading of JSON gives up at the first of these, and the second one tells it. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            "bite":{"overjet":[1,null]}              ; /bite/overjet/1
            "bite":{"overjet":[]}                    ; /bite/overjet
            "bite":{"overjet":[1,99999]}             ; /bite/overjet/1
            "insertion":{"bracketsTied":[4]}         ; /insertion/bracketsTied
            "insertion":{"bracketsTied":3.5}         ; /insertion/bracketsTied
            "bite":{"overjet":20.1}                  ; /bite/overjet
            "bite":{"overjet":-10.1}                 ; /bite/overjet
            "mouth":{"plaqueScore":0.5}              ; /mouth/plaqueScore
            """)
    void jsonIsHeldToTheSame(String part, String pointer) {
        assertThat(json(part).problems()).extracting(Problem::pointer).containsExactly(pointer);
    }

    @Test
    void atMostTwentyReadingsAndFiveHundredEntriesAreTaken() {
        String twenty = IntStream.range(0, 20).mapToObj(i -> "3").collect(Collectors.joining(","));
        assertThat(json("\"bite\":{\"overjet\":[" + twenty + "]}")
                        .value()
                        .orElseThrow()
                        .bite()
                        .overjet()
                        .repeatCount())
                .isEqualTo(20);
        assertThat(json("\"bite\":{\"overjet\":[" + twenty + ",3,3]}").errors())
                .extracting(Problem::pointer)
                .containsExactly("/bite/overjet/20");
        String most = IntStream.range(0, 500).mapToObj(i -> "{\"gauge\":50}").collect(Collectors.joining(","));
        Case c = json("\"visits\":[" + most + "]").value().orElseThrow();
        assertThat(c.visits()).hasSize(500);
        assertThat(c.visits().get(499).incisorAdvance().missing()).containsExactly("/visits/499/incisorAdvance");
        assertThat(c.visits().get(63).incisorAdvance().missing()).containsExactly("/visits/63/incisorAdvance");
        CaseReading more = json("\"visits\":[" + most + ",{},[1]],\"bite\":7");
        assertThat(more.errors()).extracting(Problem::pointer).containsExactly("/visits/500", "/bite");
    }

    @Test
    void whatMustBeThereIsAskedForAndNothingElse() {
        assertThat(CaseReader.read("{}".getBytes(StandardCharsets.UTF_8), "x", CaseFormat.JSON)
                        .errors())
                .extracting(Problem::pointer)
                .containsExactly("/fairlead", "/id");
        assertThat(yaml("fairlead: 1").errors()).extracting(Problem::pointer).containsExactly("/fairlead");
        assertThat(CaseReader.read("fairlead: 2\nid: a\n".getBytes(StandardCharsets.UTF_8), "x", CaseFormat.YAML)
                        .errors())
                .extracting(Problem::found)
                .containsExactly("the number 2");
    }

    @Test
    void aFactThatMayNotApplySaysSo() {
        Case c = yaml("bench: {misfitRms: does-not-apply}\ninsertion: {left: {underHook: does-not-apply}}\n"
                        + "holding: {debonded: does-not-apply}\nimages: [{tooth: '31'}]")
                .value()
                .orElseThrow();
        assertThat(((CaseValue) Edit.get(c, "/bench/misfitRms")).applies()).isFalse();
        assertThat(Edit.get(c, "/insertion/left/underHook")).isEqualTo(Answer.NOT_APPLICABLE);
        assertThat(c.holding().debonded().applies()).isFalse();
        assertThat(c.images().get(0).tooth().get()).isEqualTo(Tooth.of(31));
    }

    @Test
    void whatIsQuotedIsCutAfterFortyCharacters() {
        assertThat(yaml("wire: {size: " + "a".repeat(40) + "}").errors())
                .extracting(Problem::found)
                .containsExactly("\"" + "a".repeat(40) + "\"");
        assertThat(yaml("wire: {size: " + "a".repeat(41) + "}").errors())
                .extracting(Problem::found)
                .containsExactly("\"" + "a".repeat(40) + "…\"");
        assertThat(yaml("x".repeat(80) + ": 1").errors().get(0).pointer()).isEqualTo("/" + "x".repeat(80));
        assertThat(yaml("x".repeat(81) + ": 1").errors().get(0).pointer()).isEqualTo("/" + "x".repeat(80) + "…");
    }

    @Test
    void aTextHasAThousandCharactersAtMost() {
        String words = "seen again and again ".repeat(50).substring(0, 1000);
        assertThat(yaml("waivers: [{reason: '" + words.substring(0, 999) + "n'}]")
                        .read())
                .isTrue();
        assertThat(yaml("waivers: [{reason: '" + words + "n'}]").read()).isFalse();
    }
}
