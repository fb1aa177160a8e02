package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.guard.ProjectRules;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Examples go along with the program, apart from what every start reads. */
class ExamplesOfProgramTest {
    @TempDir
    Path folder;

    @Test
    void theBuildPacksAllThatStandInTheFolder() {
        RuleFiles packed = BuiltIn.examples();
        assertThat(packed).isEqualTo(RuleFiles.examples(ProjectRules.FOLDER));
        assertThat(packed.folders())
                .hasSameSizeAs(ProjectRules.rulebase().catalogue().criteria());
        assertThat(Examples.ofProgram(ProjectRules.rulebase().catalogue()).all())
                .containsExactlyInAnyOrderElementsOf(ProjectRules.allExamples());
    }

    @Test
    void noHashAndNothingThatACheckReadsHoldsThem() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        new TestFolder(folder)
                .write(TestFolder.OVERJET + "/" + RuleFiles.EXAMPLES, "[]")
                .write(RuleFiles.BASE, "{}");
        assertThat(new TestFolder(folder).load().hash()).isEqualTo(rulebase.hash());
        assertThat(BuiltIn.onClassPath().files().texts())
                .isEqualTo(RuleFiles.of(ProjectRules.FOLDER).texts());
    }
}
