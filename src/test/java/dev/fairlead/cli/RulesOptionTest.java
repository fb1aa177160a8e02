package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site's own thresholds, texts and rules, from the command line to the report. */
class RulesOptionTest {
    private static final String CASE = "cases/heron-07-clean.yaml";
    private static final String DRL = "indication/overjet-after/criterion.drl";

    @TempDir
    Path site;

    private Path write(String path, String text) throws IOException {
        Path file = site.resolve(path);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private CasesTest.Run check() {
        return CasesTest.run("check", "--stage", "indication", "--rules", site.toString(), CASE);
    }

    @Test
    void aThresholdOfTheSiteChangesVerdictTextAndHash() throws IOException {
        CasesTest.Run usual = CasesTest.run("check", "--stage", "indication", CASE);
        assertThat(usual.code()).isZero();
        write("thresholds.json", "{\"overjet-after.min\": 3.0}");
        CasesTest.Run run = check();
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.out())
                .contains("CAUTION  Too little overjet left (indication: overjet-after)", "limit    3.0 mm")
                .doesNotContain(hash(usual.out()));
        assertThat(CasesTest.run("criteria", "--rules", site.toString(), "overjet-after")
                        .out())
                .contains("overjet-after.min = 3.0 mm");
    }

    private static String hash(String out) {
        return out.substring(out.indexOf("rulebase "), out.indexOf('\n', out.indexOf("rulebase ")));
    }

    @Test
    void allThatIsWrongWithThresholdsIsSaidAtOnce() throws IOException {
        write("thresholds.json", "{\"overjet-after.min\": 9.0, \"overjet-aftr.min\": 1}");
        CasesTest.Run run = check();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(
                        "overjet-after.min may be set from 0.0 to 3.0 mm, not to 9.0",
                        "no threshold is called overjet-aftr.min");
    }

    @Test
    void anEditedRuleIsCompiledAndJudges() throws IOException {
        // turned round, so that what passes by the built-in rule is warned of
        String turned = Files.readString(Path.of("rules", DRL))
                .replace("atLeast(", "atMOST(")
                .replace("below(", "atLeast(")
                .replace("atMOST(", "below(");
        write(DRL, turned);
        CasesTest.Run run = check();
        assertThat(run.code()).as(run.err()).isEqualTo(4);
        assertThat(run.out()).contains("STOP     Reverse overjet predicted (indication: overjet-after)");
    }

    @Test
    void aMisspeltFactIsSaidWithFileAndLine() throws IOException {
        write(
                DRL,
                Files.readString(Path.of("rules", DRL)).replaceFirst("overjetSoFar\\.atLeast", "overjetSoFr.atLeast"));
        CasesTest.Run run = check();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains(DRL + ":10:", "overjetSoFr");
    }

    @Test
    void whatARuleSaysReachesNoTerminalWithCharactersThatTurnItRound() throws IOException {
        write(DRL, Files.readString(Path.of("rules", DRL)).replaceFirst("\"reversed\"\\)", "\"rev\u202eersed\")"));
        CasesTest.Run run = check();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .contains("there is no text for \"rev<U+202E>ersed\"")
                .doesNotContain("\u202e");
        CasesTest.Run test = CasesTest.run("rules", "test", "--rules", site.toString());
        assertThat(test.out()).contains("rev<U+202E>ersed").doesNotContain("\u202e");
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        CasesTest.Run run =
                CasesTest.run("check", "--rules", site.resolve("none").toString(), CASE);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("none");
    }
}
