package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProblemsFileTest {
    @TempDir
    Path folder;

    @Test
    void anEarlierListStaysUntilTheNewOneIsWhole() throws IOException {
        Path file = Files.writeString(folder.resolve("problems.csv"), "of last month");
        try (ProblemsFile broken = new ProblemsFile(file)) {
            broken.empty();
            assertThat(file).hasContent("of last month");
        }
        assertThat(file).as("the audit was broken off").hasContent("of last month");
        try (ProblemsFile whole = new ProblemsFile(file)) {
            whole.empty();
            whole.empty().end(null, null);
        }
        assertThat(file).hasContent("source,kind,problem");
        try (var left = Files.list(folder)) {
            assertThat(left).as("no draft is left").containsExactly(file);
        }
    }

    @Test
    void whatWasNotJudgedIsListed() throws IOException {
        Path file = folder.resolve("problems.csv");
        CasesTest.run(
                "audit",
                "--without-forces",
                "cases/heron-07-clean.yaml",
                "cases/gull-13-full-of-slips.yaml",
                "--problems",
                file.toString());
        assertThat(Files.readString(file)).contains("gull-13-full-of-slips").doesNotContain("heron-07");
    }
}
