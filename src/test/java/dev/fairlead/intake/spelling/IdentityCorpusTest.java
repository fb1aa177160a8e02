package dev.fairlead.intake.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Two lists written for this: 200 texts that tell who somebody is, and 200 that tell of nobody. The rates are printed;
 * nobody who writes another text can count on the same ones.
 */
class IdentityCorpusTest {
    private static List<String> lines(String name) throws IOException {
        List<String> all = Files.readAllLines(Path.of("src/test/resources/identity", name)).stream()
                .filter(l -> !l.startsWith("#") && !l.isBlank())
                .toList();
        assertThat(all).hasSizeGreaterThanOrEqualTo(200).doesNotHaveDuplicates();
        return all;
    }

    @Test
    void mostOfWhatIdentifiesIsRefusedAndHardlyAnythingElse() throws IOException {
        List<String> identifying = lines("identifying.txt");
        List<String> innocent = lines("innocent.txt");
        List<String> passed =
                identifying.stream().filter(t -> Privacy.text(t) == null).toList();
        long refused = identifying.stream()
                .filter(t -> Privacy.text(t) != null && Privacy.text(t).sure())
                .count();
        List<String> alarms =
                innocent.stream().filter(t -> Privacy.text(t) != null).toList();
        List<String> refusedWrongly =
                alarms.stream().filter(t -> Privacy.text(t).sure()).toList();
        System.out.printf(
                "Identity: of %d texts that identify %d are refused, %d doubted, %d pass %s%n"
                        + "Identity: of %d innocent texts %d are refused %s, %d doubted %s%n",
                identifying.size(),
                refused,
                identifying.size() - refused - passed.size(),
                passed.size(),
                passed,
                innocent.size(),
                refusedWrongly.size(),
                refusedWrongly,
                alarms.size() - refusedWrongly.size(),
                alarms);
        assertThat(refused).as("refused").isGreaterThanOrEqualTo(identifying.size() * 90 / 100);
        assertThat(passed.size()).as("passed %s", passed).isLessThanOrEqualTo(identifying.size() * 5 / 100);
        assertThat(refusedWrongly.size())
                .as("refused wrongly %s", refusedWrongly)
                .isLessThanOrEqualTo(innocent.size() / 100);
        assertThat(alarms.size()).as("false alarms %s", alarms).isLessThanOrEqualTo(innocent.size() * 5 / 100);
    }
}
