package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Criteria are made and tried from the command line, and a rule that is altered alters what {@code check} says. */
class RulesCommandTest {
    private static final String CASE = "cases/heron-07-clean.yaml";
    private static final String OVERJET = "indication/overjet-after/criterion.drl";

    @TempDir
    Path folder;

    @Test
    void aNewCriterionPassesItsExamplesAsItIsMade() throws IOException {
        CasesTest.Run made = CasesTest.run("rules", "new", "bench/wire-is-clean", "--rules", folder.toString());
        assertThat(made.code()).as(made.err()).isZero();
        assertThat(folder.resolve("bench/wire-is-clean/examples.json")).exists();

        CasesTest.Run tried = CasesTest.run("rules", "test", "wire-is-clean", "--rules", folder.toString());
        assertThat(tried.out()).isEqualTo("7 examples run, 0 differ.\n");
        assertThat(tried.code()).isZero();

        CasesTest.Run again = CasesTest.run("rules", "new", "bench/wire-is-clean", "--rules", folder.toString());
        assertThat(again.code()).isEqualTo(ExitCode.USAGE);
        assertThat(again.err()).contains("is there already");
    }

    @Test
    void whatDiffersAndWhatIsNoRuleIsTold() throws IOException {
        CasesTest.run("rules", "new", "bench/wire-is-clean", "--rules", folder.toString());
        Path texts = folder.resolve("bench/wire-is-clean/criterion.json");
        Files.writeString(texts, Files.readString(texts).replace("\"value\": 6,", "\"value\": 5,"));
        CasesTest.Run differs = CasesTest.run("rules", "test", "--rules", folder.toString());
        assertThat(differs.code()).isEqualTo(ExitCode.FINDINGS);
        assertThat(differs.out())
                .contains("bench/wire-is-clean: at-limit-at", "wire-is-clean: expected pass, found caution:more");

        Path drl = folder.resolve("bench/wire-is-clean/criterion.drl");
        Files.writeString(drl, Files.readString(drl).replace("overjet.atMost", "!overjet.above"));
        CasesTest.Run refused = CasesTest.run("rules", "test", "--rules", folder.toString());
        assertThat(refused.code()).isEqualTo(ExitCode.UNREADABLE);
        assertThat(refused.out()).contains("criterion.drl:12: a condition must be positive and plain");
    }

    @Test
    void aStageThatIsNoneIsRefused() {
        CasesTest.Run run = CasesTest.run("rules", "new", "someday/x", "--rules", folder.toString());
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("stage/id");
    }

    /** A copy of the program with its rules beside it, as after a build, in which one rule is edited. */
    @Test
    void aRuleEditedBesideTheProgramAltersWhatCheckSays() throws IOException, InterruptedException {
        Path classes = Path.of("target/classes").toAbsolutePath();
        copy(classes, folder.resolve("target/classes"));
        copy(Path.of("rules"), folder.resolve("rules"));

        String before = check();
        assertThat(before).contains("overjet-after");
        assertThat(before).contains("org.drools.core", "dev.fairlead.rulebase.indication.Rules");
        assertThat(findings(before)).noneMatch(line -> line.matches("(CAUTION|STOP) .*overjet-after.*"));

        Path drl = folder.resolve("rules").resolve(OVERJET);
        String text = Files.readString(drl);
        Files.writeString(
                drl,
                text.replace("atLeast(", "SWAP(").replace("below(", "atLeast(").replace("SWAP(", "below("));
        assertThat(findings(check())).anyMatch(line -> line.matches("(CAUTION|STOP) .*overjet-after.*"));
    }

    private static List<String> findings(String told) {
        return told.lines().filter(l -> !l.contains("class,load")).toList();
    }

    private String check() throws IOException, InterruptedException {
        List<String> path = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
            if (!entry.endsWith("classes")) {
                path.add(entry);
            }
        }
        path.add(0, folder.resolve("target/classes").toString());
        ProcessBuilder process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xlog:class+load",
                        "-cp",
                        String.join(java.io.File.pathSeparator, path),
                        "dev.fairlead.cli.Main",
                        "check",
                        Path.of(CASE).toAbsolutePath().toString(),
                        "--all")
                .redirectErrorStream(true);
        process.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
        Process running = process.start();
        String told = new String(running.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        running.waitFor();
        return told;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
    }
}
