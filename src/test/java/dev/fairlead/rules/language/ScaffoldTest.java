package dev.fairlead.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.fairlead.rules.catalogue.RulebaseException;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The files of a new criterion: where they stand, what they are called, and that nothing is written over. */
class ScaffoldTest {
    @TempDir
    private Path rules;

    @Test
    void theFilesNameTheirStageAndCriterion() throws IOException {
        List<Path> written = Scaffold.write(rules, "bench/wire-is-clean");
        Path home = rules.resolve("bench/wire-is-clean");
        assertThat(written)
                .containsExactly(
                        home.resolve("criterion.drl"), home.resolve("criterion.json"), home.resolve("examples.json"));
        assertThat(Files.readString(written.get(0)))
                .contains("package dev.fairlead.rulebase.bench", "rule \"wire-is-clean: ")
                .doesNotContain("@ID@", "@STAGE@");
        for (Path file : written) {
            assertThat(file).isNotEmptyFile();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"bench", "/wire-is-clean", "recess/wire", "bench/Wire", "bench/a/b", "bench/wire-", "bench/", ""
            })
    void aNameThatIsNoCriterionIsRefused(String folder) {
        assertThatThrownBy(() -> Scaffold.write(rules, folder))
                .isInstanceOf(RulebaseException.class)
                .hasMessage(folder + ": a criterion is called stage/id, such as bench/wire-is-clean:"
                        + " a stage of care, and small letters with hyphens");
        assertThat(rules).isEmptyDirectory();
    }

    @Test
    void whatIsThereStays() throws IOException {
        Scaffold.write(rules, "holding/arch-is-in");
        Path mine = Files.writeString(rules.resolve("holding/arch-is-in/criterion.drl"), "mine");
        assertThatThrownBy(() -> Scaffold.write(rules, "holding/arch-is-in"))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(mine).hasContent("mine");
    }
}
