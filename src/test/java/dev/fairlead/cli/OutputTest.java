package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where reports go, in which form, and what the process says about it. */
class OutputTest {
    private static final Path JSON = Path.of("src/test/resources/expected/json");
    private static final String STOPS = "cases/avocet-03-thin-and-steep.yaml";
    private static final String WAIVED = "cases/lapwing-16-waived.yaml";
    private static final String SLIPS = "cases/gull-13-full-of-slips.yaml";

    @TempDir
    Path folder;

    /** After a change that is meant, run with {@code -Dfairlead.accept=true} and read the difference. */
    @ParameterizedTest
    @ValueSource(strings = {"avocet-03-thin-and-steep", "knot-08-half-missing"})
    void jsonTellsTheSameStory(String name) throws IOException {
        CasesTest.Run run = CasesTest.run("check", "--format", "json", "cases/" + name + ".yaml");
        Path expected = JSON.resolve(name + ".json");
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(expected, run.out());
        }
        assertThat(run.out()).isEqualTo(Files.readString(expected));
    }

    @Test
    void htmlGoesToStandardOutputOrToAFileWithTheSameBytesAndTheSameExitCode() throws IOException {
        Path file = folder.resolve("report.html");
        CasesTest.Run shown = CasesTest.run("check", "--format", "html", STOPS);
        CasesTest.Run written = CasesTest.run("check", "--format", "html", "-o", file.toString(), STOPS);
        assertThat(shown.code()).isEqualTo(4);
        assertThat(written.code()).isEqualTo(4);
        assertThat(written.out()).isEmpty();
        assertThat(Files.readString(file)).isEqualTo(shown.out()).startsWith("<!DOCTYPE html>");
        assertThat(CasesTest.run(
                                "check",
                                "--format",
                                "html",
                                "--fail-on",
                                "never",
                                "--force",
                                "-o",
                                file.toString(),
                                STOPS)
                        .code())
                .isZero();
        assertThat(CasesTest.run("check", "--format", "html", "--force", "-o", file.toString(), WAIVED)
                        .code())
                .isZero();
    }

    @Test
    void severalCasesGoIntoOneFileOrEachIntoAFolder() throws IOException {
        Path file = folder.resolve("all.html");
        CasesTest.Run run = CasesTest.run("check", "--format", "html", "-o", file.toString(), STOPS, SLIPS, WAIVED);
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("refused");
        assertThat(Files.readString(file))
                .contains("Case avocet-03", "Case lapwing-16", "Cases that could not be read", "gull-13");
        assertThat(CasesTest.run("check", "--format", "html", "-o", folder + "/each/", STOPS, WAIVED)
                        .code())
                .isEqualTo(4);
        assertThat(folder.resolve("each/avocet-03.html")).content().doesNotContain("lapwing-16");
        assertThat(folder.resolve("each/lapwing-16.html")).exists();
        assertThat(CasesTest.run("check", "--format", "html", "-o", folder + "/each/", STOPS, STOPS)
                        .code())
                .as("the second would overwrite the first")
                .isEqualTo(2);
    }

    @Test
    void oneFileThatCannotBeReadLeavesTheOthersToBeChecked() {
        CasesTest.Run run = CasesTest.run("check", "gone.yaml", folder.toString(), "none*.yaml", WAIVED);
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err()).contains("gone.yaml: refused", "no such file", "a folder", "a pattern that no file");
        assertThat(run.out()).contains("Case lapwing-16");
    }

    @Test
    void pdfWantsAFile() throws IOException {
        Path file = folder.resolve("report.pdf");
        assertThat(CasesTest.run("check", "--format", "pdf", WAIVED).code()).isEqualTo(2);
        assertThat(CasesTest.run("check", "--format", "pdf", "-o", file.toString(), WAIVED)
                        .code())
                .isZero();
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-")
                .contains("%%EOF");
        assertThat(CasesTest.run("check", "--format", "pdf", "-o", "-", WAIVED).out())
                .startsWith("%PDF-");
    }

    @Test
    void textAndJsonGoToFilesToo() throws IOException {
        Path file = folder.resolve("report.txt");
        assertThat(CasesTest.run("check", "-o", file.toString(), STOPS, WAIVED).out())
                .isEmpty();
        assertThat(Files.readString(file))
                .isEqualTo(CasesTest.run("check", STOPS, WAIVED).out());
    }

    @Test
    void whatCannotBeReadOrWrittenIsSaidAndNothingIsLeftHalf() throws IOException {
        Path file = folder.resolve("none.html");
        assertThat(CasesTest.run("check", "--format", "html", "-o", file.toString(), SLIPS)
                        .code())
                .isEqualTo(3);
        assertThat(file).doesNotExist();
        Files.writeString(folder.resolve("plain"), "");
        CasesTest.Run run = CasesTest.run("check", "--format", "html", "-o", folder + "/plain/report.html", WAIVED);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("the folder plain is not there");
        assertThat(CasesTest.run("check", "--format", "html", "-o", folder + "/plain/", WAIVED)
                        .code())
                .isEqualTo(2);
    }
}
