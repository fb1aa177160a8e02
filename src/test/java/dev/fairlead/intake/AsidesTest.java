package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.write.BlankCase;
import dev.fairlead.model.Stage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Names in comments, file names and codes: sure ones are refused, others are doubted until somebody answers for them.
 */
class AsidesTest {
    private static final String HEAD = "fairlead: 1\nid: %s\nstage: records\n";

    private static CaseReading read(String text, String name) {
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), name, CaseFormat.BY_NAME);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Anna Müller, seen with her mother",
                "born in May",
                "MRN 12345678",
                "write to a.b@c.example",
                "Mrs. Smith agreed"
            })
    void aCommentThatTellsWhoItIsIsRefusedWithItsPlace(String comment) {
        CaseReading r = read(HEAD.formatted("a-1") + "child: {age: 9.4}  # " + comment + "\n", "a.yaml");
        assertThat(r.errors()).hasSize(1);
        Problem p = r.errors().get(0);
        assertThat(p.line()).isEqualTo(4);
        assertThat(p.column()).isEqualTo(20);
        assertThat(p.expected()).contains("comment");
        assertThat(p.toString()).doesNotContain(comment);
    }

    @Test
    void aSignWithinQuotationMarksBeginsNoComment() {
        assertThat(read(HEAD.formatted("\"a#Anna Müller\""), "a.yaml").errors())
                .extracting(Problem::pointer)
                .containsExactly("/id");
    }

    @ParameterizedTest
    @CsvSource({
        "Anna Müller.yaml, refused",
        ".Anna Müller, refused",
        "folder/anna_mueller (2).yaml, refused",
        "Tormod Vexley.yaml, doubted",
        "heron-07-clean.yaml, plain",
        "case 3 copy.yaml, plain",
        "Anna Müller/a-1.yaml, plain"
    })
    void fileNamesAreLookedAt(String name, String outcome) {
        CaseReading r = read(HEAD.formatted("a-1"), name);
        assertThat(r.read()).isEqualTo(!outcome.equals("refused"));
        assertThat(r.problems().isEmpty()).isEqualTo(outcome.equals("plain"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"anna-07", "johnsmith", "smith-anna", "07-Anna"})
    void aCodeWithAGivenNameIsDoubtedUntilSomebodyAnswers(String id) {
        String text = HEAD.formatted(id);
        assertThat(read(text, "a.yaml").problems()).extracting(Problem::pointer).containsExactly("/id");
        assertThat(read(text, "a.yaml").read()).isTrue();
        assertThat(read(text + "notPersons: [{words: " + id + ", by: kl}]\n", "a.yaml")
                        .problems())
                .isEmpty();
        assertThat(read(text + "notPersons: [{words: " + id + "}]\n", "a.yaml").problems())
                .as("nobody answers for it")
                .isNotEmpty();
    }

    @Test
    void aSureNameIsAnsweredByNobody() {
        String answer = "notPersons: [{words: mother, by: kl}]\n";
        assertThat(read(HEAD.formatted("a-1") + answer + "# Anna Müller\n", "a.yaml")
                        .read())
                .isFalse();
        assertThat(read(HEAD.formatted("a-1") + "notPersons: [{words: Anna Müller, by: kl}]\n", "a.yaml")
                        .read())
                .isFalse();
    }

    @Test
    void ourOwnFilesAreInnocent() throws IOException {
        assertThat(read(BlankCase.text(Stage.HOLDING), "blank.yaml").problems()).isEmpty();
        assertThat(read(BlankCase.minimal(), "minimal.yaml").problems()).isEmpty();
        try (Stream<Path> cases = Files.list(Path.of("cases"))) {
            for (Path file : cases.toList()) {
                List<Problem> persons = CaseReader.read(file).problems().stream()
                        .filter(p -> p.expected()
                                .matches("(a comment|a file name|a text) that does not tell who the patient is"))
                        .toList();
                assertThat(persons).as(file.toString()).isEmpty();
            }
        }
    }

    /** A comment begins behind a blank or a tab, outside quotation marks that are closed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            site: "b-1" # Anna Müller           | 4:13
            site: 'b-1' # Anna Müller           | 4:13
            site: b-1 ># Anna Müller            | 4:12
            # Anna Müller                       | 4:1
            child: {age: 9.4} #Anna Müller      | 4:19
            site: ["b # Anna Müller"]           |
            site: b-1#Anna                      |
            """)
    void aCommentIsFoundWhereItBegins(String line, String place) {
        List<Problem> comments =
                read(HEAD.formatted("a-1") + line.replace('>', '\t') + "\n", "a.yaml").errors().stream()
                        .filter(p -> p.expected().startsWith("a comment"))
                        .toList();
        assertThat(comments)
                .extracting(p -> p.line() + ":" + p.column())
                .isEqualTo(place == null ? List.of() : List.of(place));
    }

    private static List<Problem> comments(String text) {
        return read(text, "a.yaml").problems().stream()
                .filter(p -> p.expected().startsWith("a comment"))
                .toList();
    }

    @Test
    void whatIsBesideACaseThatCannotBeReadIsToldToo() {
        assertThat(comments("fairlead: 1\nid: [\n# Anna"))
                .as("it may name somebody")
                .hasSize(1);
        assertThat(comments(HEAD.formatted("a-1") + "# Anna\n")).hasSize(1);
        assertThat(comments("# Anna\n" + HEAD.formatted("a-1"))).hasSize(1);
        assertThat(comments(HEAD.formatted("a-1") + "notPersons: [{words: Anna, by: kl}]\n# Anna\n"))
                .isEmpty();
        String json = "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\"}";
        assertThat(read(json, "Anna Müller.json").read()).isFalse();
        assertThat(read(json, "Tormod Vexley.json").doubts()).hasSize(1);
        assertThat(read(json, "heron.json").problems()).isEmpty();
        assertThat(CaseReader.read(json.getBytes(StandardCharsets.UTF_8), "Anna Müller.json", CaseFormat.JSON)
                        .problems())
                .as("the name is that of a message, and not of a file")
                .isEmpty();
    }
}
