package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.engine.BuiltIn;
import dev.fairlead.rules.guard.ProjectRules;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Examples go along with the program, apart from what every start reads. */
class ExamplesOfProgramTest {
    @TempDir
    Path folder;

    @Test
    void theBuildPacksAllThatStandInTheFolder() {
        RuleFiles packed = BuiltIn.packed(BuiltIn.TRIES);
        assertThat(packed).isEqualTo(RuleFiles.examples(ProjectRules.FOLDER));
        assertThat(packed.folders())
                .hasSameSizeAs(ProjectRules.rulebase().catalogue().criteria());
        assertThat(Examples.in(null, ProjectRules.rulebase().catalogue().criteria())
                        .all())
                .containsExactlyInAnyOrderElementsOf(ProjectRules.allExamples());
    }

    @Test
    void noHashAndNothingThatACheckReadsHoldsThem() {
        Rulebase rulebase = TestFolder.whole(folder).load();
        new TestFolder(folder)
                .write(TestFolder.OVERJET + "/" + RuleFiles.EXAMPLES, "[]")
                .write(RuleFiles.BASE, "{}");
        assertThat(new TestFolder(folder).load().hash()).isEqualTo(rulebase.hash());
        assertThat(BuiltIn.packed(BuiltIn.FILES).texts())
                .isEqualTo(RuleFiles.of(ProjectRules.FOLDER).texts());
    }

    /** Whoever made a slip in an example is told the file that it stands in. */
    @Test
    void aSlipInAnExampleIsToldWithItsFile() {
        Criterion c = ProjectRules.rulebase().catalogue().criteria().get(0);
        Example slip = new Example(c, "warn-by-a-slip", Map.of("Bite.overget", "1 mm"), Map.of());
        assertThat(slip.differences(ProjectRules.rulebase().judge(), ProjectRules.base()))
                .containsExactly(c.folder() + "/examples.json: Bite has no [overget]");
    }

    /** A folder of a site may hold examples without facts of its own. */
    @Test
    void examplesOfAFolderStartFromItsOwnFactsOrThoseOfTheProgram() {
        new TestFolder(folder)
                .write(
                        TestFolder.OVERJET + "/" + RuleFiles.EXAMPLES,
                        "[{\"name\": \"pass-as-it-is\", \"set\": {}, \"expects\": {}}]");
        List<Criterion> criteria = ProjectRules.rulebase().catalogue().criteria();
        Examples read = Examples.in(folder, criteria);
        assertThat(read.all()).extracting(Example::name).containsExactly("pass-as-it-is");
        assertThat(read.base()).isEqualTo(ProjectRules.base());
        assertThat(read.differing(ProjectRules.rulebase().judge())).isEmpty();
        new TestFolder(folder).write(RuleFiles.BASE, "{}");
        assertThat(Examples.in(folder, criteria).base().all()).isEmpty();
    }

    /** Reasons may stand in any order; what ends otherwise is told with both words. */
    @Test
    void whatEndsOtherwiseThanExpectedIsTold() {
        Criterion c = ProjectRules.rulebase().catalogue().criterion("hygiene-and-caries");
        Map<String, String> set = Map.of("Mouth.untreatedCaries", "yes", "Mouth.activeGingivitis", "yes");
        Judge judge = ProjectRules.rulebase().judge();
        String found =
                Example.found(judge.judge(ProjectRules.base().with(set).all())).get(c.id());
        String[] reasons = found.substring(found.indexOf(':') + 1).split(",");
        assertThat(reasons).hasSize(2);
        String turned = found.substring(0, found.indexOf(':') + 1) + reasons[1] + "," + reasons[0];
        Example right = new Example(c, "warn-in-any-order", set, Map.of(c.id(), turned));
        Example wrong = new Example(c, "warn-of-one", set, Map.of(c.id(), "caution:" + reasons[0]));
        assertThat(right.differences(judge, ProjectRules.base())).isEmpty();
        assertThat(wrong.differences(judge, ProjectRules.base()))
                .containsExactly("hygiene-and-caries: expected caution:" + reasons[0] + ", found " + found);
        assertThat(new Examples(ProjectRules.base(), List.of(right, wrong)).differing(judge))
                .extracting(Examples.Differs::example)
                .containsExactly(wrong);
    }
}
