package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SelfCheckTest {
    @TempDir
    Path folder;

    @Test
    void everythingWorksHere() {
        CasesTest.Run run = CasesTest.run("self-check");
        assertThat(run.out()).doesNotContain("FAILS");
        assertThat(run.out().lines()).hasSize(8).allMatch(l -> l.startsWith("works   "));
        assertThat(run.out()).contains("beam model: a clamped wire bends as the handbook's formula has it");
        assertThat(run.code()).isEqualTo(ExitCode.CLEAN);
    }

    @Test
    void rulesThatCannotBeUsedAreTold() throws Exception {
        Files.writeString(folder.resolve("rulebase.json"), "{}");
        CasesTest.Run run = CasesTest.run("self-check", "--rules", folder.toString());
        assertThat(run.out()).contains("FAILS   rulebase");
        assertThat(run.code()).isEqualTo(ExitCode.OWN_ERROR);
    }
}
