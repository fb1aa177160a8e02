package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.guard.ProjectRules;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SelfCheckTest {
    @TempDir
    Path folder;

    @Test
    void everythingWorksHere() {
        CasesTest.Run run = CasesTest.run("self-check");
        assertThat(run.out()).doesNotContain("FAILS");
        assertThat(run.out().lines()).hasSize(10).allMatch(l -> l.startsWith("works   "));
        assertThat(run.out()).contains("beam model: a clamped wire bends as the handbook's formula has it");
        assertThat(run.out())
                .contains("rulebase: "
                        + ProjectRules.rulebase().catalogue().version() + " "
                        + ProjectRules.rulebase().hash().substring(0, 8))
                .contains("examples: all " + ProjectRules.allExamples().size() + " end as they say\n")
                .contains(" with DejaVuSans and DejaVuSans-Bold, a drawing of ")
                .containsPattern(
                        "cache of compiled rules: .*rules can be written to, holds \\d+ packages? of rules, \\d+ kB");
        assertThat(run.code()).isEqualTo(ExitCode.CLEAN);
    }

    @Test
    void anExampleThatEndsOtherwiseIsNamed() throws Exception {
        try (Stream<Path> all = Files.walk(ProjectRules.FOLDER)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(ProjectRules.FOLDER.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        Path examples = folder.resolve("indication/overjet-after/examples.json");
        Files.writeString(
                examples,
                Files.readString(examples)
                        .replaceFirst("\"overjet-after\": \"not-assessed\"", "\"overjet-after\": \"pass\""));
        CasesTest.Run run = CasesTest.run("self-check", "--rules", folder.toString());
        assertThat(run.out())
                .contains("FAILS   examples: 1 of " + ProjectRules.allExamples().size()
                        + " differs: indication/overjet-after: missing-overjet-so-far: "
                        + "overjet-after: expected pass, found not-assessed\n");
        assertThat(run.out().lines().filter(l -> l.startsWith("FAILS"))).hasSize(1);
        assertThat(run.code()).isEqualTo(ExitCode.OWN_ERROR);
    }

    @Test
    void aSiteWithoutExamplesLeavesThoseOfTheProgram() throws Exception {
        Files.writeString(folder.resolve("thresholds.json"), "{\"overjet-after.min\": 2.0}");
        CasesTest.Run run = CasesTest.run("self-check", "--rules", folder.toString());
        assertThat(run.out())
                .contains("works   examples: all " + ProjectRules.allExamples().size()
                        + " end as they say by the program's own rules, for " + folder + " holds no example\n");
    }

    @Test
    void rulesThatCannotBeUsedAreTold() throws Exception {
        Files.writeString(folder.resolve("rulebase.json"), "{}");
        CasesTest.Run run = CasesTest.run("self-check", "--rules", folder.toString());
        assertThat(run.out()).contains("FAILS   rulebase");
        assertThat(run.code()).isEqualTo(ExitCode.OWN_ERROR);
    }
}
