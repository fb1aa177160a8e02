package dev.fairlead.intake.text;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.tree.CaseTree;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a file stops being JSON or YAML, what stands there, and what it probably is; | stands for a line break. */
class SyntaxTest {
    private static final String FURTHER_IN =
            "an indent that is off: this line stands further in than the one above it, which already has a value";
    private static final String COLON =
            "a colon in a text without quotation marks, a colon without a blank behind it just above, or an indent that is off";
    private static final String INDENT =
            "an indent that is off by a blank or more here or just above, or a bracket that is not closed";

    private static Problem only(String lines, CaseFormat format) {
        byte[] text = lines.replace('|', '\n').replace('>', '\t').getBytes(StandardCharsets.UTF_8);
        List<Problem> faults = CaseReader.read(text, "x", format).errors().stream()
                .filter(p -> p.pointer().isEmpty() && !p.expected().startsWith("a case"))
                .toList();
        assertThat(faults).hasSize(1);
        return faults.get(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            {"a": 1,5}                  ; 1:9  ; the name of a field without quotation marks      ; a decimal comma: write a point, or put the value in quotation marks
            {"a": -1,5,|"b":1}          ; 1:10 ; the name of a field without quotation marks      ; a decimal comma: write a point, or put the value in quotation marks
            {"a": 012}                  ; 1:8  ; a number with zeros in front                     ;
            {"b": 1,|"a": 012}          ; 2:7  ; a number with zeros in front                     ;
            {"a": “x”}                  ; 1:7  ; a character that cannot stand there              ; quotation marks that are not "
            {'a': 1}                    ; 1:2  ; the name of a field without quotation marks      ; quotation marks that are not "
            {"a": "it's" 5}             ; 1:14 ; two values without a comma between them          ;
            // note|{}                  ; 1:1  ; a character that cannot stand there              ; a comment, which JSON does not have
            {|  # note|  "a": 1}        ; 2:3  ; the name of a field without quotation marks      ; a comment, which JSON does not have
            {"a": 1,|}                  ; 2:1  ; the name of a field without quotation marks      ; a comma behind the last entry
            {"a": [1, ]}                ; 1:11 ; a character that cannot stand there              ; a comma behind the last entry
            {"a": [1|]                  ; 2:2  ; the end of the file in the middle of the case    ;
            ]                           ; 1:1  ; text that cannot be read on                      ;
            {"fairlead": 1|"id": 2}     ; 2:1  ; two values without a comma between them          ; a missing comma at the end of the line before
            {"a": 5 5}                  ; 1:9  ; two values without a comma between them          ;
            {"a": tru}                  ; 1:7  ; a word without quotation marks                   ;
            {"a" 1}                     ; 1:6  ; a field without a colon behind its name          ;
            {"a": "\\q"}                ; 1:9  ; a backslash before a character that needs none   ;
            """)
    void jsonIsToldWhereItEnds(String text, String place, String found, String slip) {
        told(only(text, CaseFormat.JSON), "JSON", place, found, slip);
    }

    /** A tab is written as >. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            a: {b: 1|c: 2               ; 2:2 ; a bracket { or [ that is not closed, or a comma that is missing in it ;
            a: [1, 2                    ; 1:9 ; a bracket { or [ that is not closed, or a comma that is missing in it ;
            a: "open                    ; 1:2 ; a text whose closing quotation mark is missing    ;
            a: 1| b: 2                  ; 2:3 ; a colon where none can stand                      ; in
            a: 1||    b: c: 2           ; 3:6 ; a colon where none can stand                      ; in
            a:|b: 1: 2                  ; 2:5 ; a colon where none can stand                      ; colon
            x: 1|a: 1: 2                ; 2:5 ; a colon where none can stand                      ; colon
            a: b: c                     ; 1:5 ; a colon where none can stand                      ; colon
            a:|   b: 1|  c: 2           ; 3:3 ; a line that stands further in or out than those around it ; indent
            a: 1|b|c: 2                 ; 1:5 ; a line without a colon behind the name of its field ;
            a: &                        ; 1:2 ; an & or a * without a name behind it              ;
            ? [a]|: b                   ; 1:4 ; a list or an object where the name of a field belongs ;
            a: @b                       ; 1:2 ; a value that begins with @                        ;
            c: 1||||a: &||>b: 1         ; 5:2 ; an & or a * without a name behind it              ;
            """)
    void yamlIsToldWhereItEnds(String text, String place, String found, String slip) {
        String words = slip == null
                ? null
                : slip.replaceAll("^in$", FURTHER_IN)
                        .replaceAll("^colon$", COLON)
                        .replaceAll("^indent$", INDENT);
        told(only(text, CaseFormat.YAML), "YAML", place, found, words);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            a: 1|b:|>c: 1       ; 3:1
            >a: 1               ; 1:1
            a: 1|  >b: 2|c: 3   ; 2:3
            """)
    void aTabIsToldWhereItStands(String text, String place) {
        told(only(text, CaseFormat.YAML), "blanks in front of a field", place, "a tab", null);
    }

    /** Aliases, anchors and tags would be read as something that nobody wrote. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            bite: !x {overjet: 3}    ; a tag
            visits: !x []            ; a tag
            bite: {overjet: !x 3}    ; a tag
            bite: &a {overjet: 3}    ; an anchor
            bite: *a                 ; an alias
            """)
    void whatIsNoPlainYamlIsRefused(String text, String found) {
        assertThat(CaseReader.read(
                                ("fairlead: 1\nid: a\n" + text + "\n").getBytes(StandardCharsets.UTF_8),
                                "x",
                                CaseFormat.YAML)
                        .errors())
                .filteredOn(p -> p.expected().equals("plain YAML"))
                .extracting(Problem::found)
                .containsExactly(found);
    }

    /** A case has 2 000 000 characters at most, 100 000 a line, and objects and lists 50 deep. */
    @Test
    void sizesAreBounded() {
        assertThat(found("# a\n".repeat(500_001))).isEqualTo("a file of more than 2 000 000 characters");
        assertThat(found("fairlead: 1\nid: a\n#" + "a".repeat(99_999) + "\n")).isEmpty();
        assertThat(found("fairlead: 1\n#" + "a".repeat(100_000))).isEqualTo("a line of more than 100 000 characters");
        assertThat(found("a: " + "[".repeat(60))).isEqualTo("objects or lists within each other deeper than any case");
        assertThat(found("a: " + "{b: ".repeat(60)))
                .isEqualTo("objects or lists within each other deeper than any case");
    }

    private static String found(String yaml) {
        try {
            CaseTree.parse(yaml, CaseFormat.YAML);
            return "";
        } catch (UnreadableTextException e) {
            return e.problem().found();
        }
    }

    @Test
    void aProblemIsOneLine() {
        Problem whole = new Problem(Severity.ERROR, "", 0, 0, "a case", "none", Optional.empty(), "");
        assertThat(whole).hasToString("(whole case): expected a case, found none");
        Problem at = new Problem(Severity.DOUBT, "/id", 1, 5, "a code", "x", Optional.of("a slip"), "write y");
        assertThat(at).hasToString("1:5 /id: expected a code, found x; likely a slip; write y");
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '`', textBlock = """
            a.yaml, {}, YAML
            a.YML, {}, YAML
            a.json, a: 1, JSON
            a, ` {}`, JSON
            a, a: 1, YAML
            """)
    void theNameTellsTheFormatElseTheFirstCharacter(String name, String text, CaseFormat format) {
        assertThat(CaseFormat.BY_NAME.resolve(name, text)).isEqualTo(format);
        assertThat(CaseFormat.JSON.resolve(name, text)).isEqualTo(CaseFormat.JSON);
    }

    private static void told(Problem p, String expected, String place, String found, String slip) {
        assertThat(p.expected()).isEqualTo(expected);
        assertThat(p.line() + ":" + p.column()).isEqualTo(place);
        assertThat(p.found()).isEqualTo(found);
        assertThat(p.slip().orElse(null)).isEqualTo(slip);
    }
}
