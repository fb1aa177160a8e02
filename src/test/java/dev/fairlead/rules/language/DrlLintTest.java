package dev.fairlead.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.CatalogueReader;
import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.engine.DrlCompiler;
import dev.fairlead.rules.verdict.TestFolder;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What no rule may say: each slip is refused with file and line before anything is compiled. */
class DrlLintTest {
    private static final String OK = "overjetAfter.atLeast(limits.of(\"overjet-after.min\"))";

    private static final String ONLY =
            "only package dev.fairlead.rulebase.indication, import dev.fairlead.facts.Bite, the globals limits"
                    + " and verdicts, and rules are allowed, not: ";

    @TempDir
    Path folder;

    /** Texts and needs of the project's own criteria; nothing is compiled. */
    private static final Catalogue CATALOGUE = CatalogueReader.read(RuleFiles.of(Path.of("rules")));

    private static List<String> lint(String drl) {
        return DrlLint.problems(CATALOGUE.criterion("overjet-after"), drl, CATALOGUE);
    }

    private static List<String> problems(String when, String then) {
        return lint(file(when, then));
    }

    private static String file(String when, String then) {
        return """
                package dev.fairlead.rulebase.indication;
                import dev.fairlead.facts.Bite;
                global dev.fairlead.rules.catalogue.Limits limits;
                global dev.fairlead.rules.language.Verdicts verdicts;
                rule "overjet-after: pass"
                when
                    %s
                then
                    %s
                end
                rule "overjet-after: warn"
                when
                    $f : Bite( overjetAfter.below(limits.of("overjet-after.min")) )
                then
                    verdicts.caution("overjet-after", $f, "too-little").seen("overjet-after.min", $f.overjetAfter());
                end
                """.formatted(when, then);
    }

    private static final String PASS =
            "verdicts.pass(\"overjet-after\", $f).seen(\"overjet-after.min\", $f.overjetAfter());";

    @Test
    void aPlainRuleIsFine() {
        assertThat(problems("$f : Bite( " + OK + ", overjetAfter.known() || overjetAfter.doesNotApply() )", PASS))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            $f : Bite( !(overjetAfter.below(limits.of("overjet-after.min"))) )      | must be positive
            not Bite( overjetAfter.below(limits.of("overjet-after.min")) )          | must be positive
            $f : Bite( overjetAfter != null )                                       | must be positive
            $f : Bite( overjetAfter.value() >= 1.0 )                                | a number in a condition
            $f : Bite( eval(true) )                                                 | must be positive
            $f : Bite() from $c.bite                                                | must be positive
            $f : Bite( overjetAfter.atLeast(limits.of("overjet-after.least")) )     | no threshold is called overjet-after.least
            $f : Bite( overjetAfter.yes() )                                         | overjetAfter is a Measured: it has no yes
            $f : Bite( anteriorShift.atLeast(limits.of("overjet-after.min")) )          | anteriorShift is a Answer: it has no atLeast
            $f : Bite( anteriorShift.no() )                                             | anteriorShift does not stand among the needs
            $f : Bite( overjetAfter.atLeast(limits.of("hygiene-and-caries.plaque")) ) | belongs to another criterion
            $f : Bite( overjetAfter.atLeast() )                                     | below with a threshold by name, not: overjetAfter.atLeast()
            $f : Bite( overjetAfter.known(limits.of("overjet-after.min")) )         | a condition is a component and one of known
            $f : Bite( overbiteAfter.known() )                                      | overbiteAfter does not stand among the needs
            overjetAfter.known()                                                    | a condition looks at one fact, written $f : Bite( ... )
            $f : Bite( overjetLater.known() )                                       | Bite has no overjetLater
            $f : Bite( overjetAfter.equals(overjet) )                               | a condition is a component and one of
            $f : Bite( overjetAfter.missing() )                                     | one of known, yes, no, doesNotApply, or of atMost, above, atLeast, below
            $f : Mouth( untreatedCaries.no() )                                      | the criterion is about Bite
            $f : Bite( anteriorShift.no() ) $m : Mouth( untreatedCaries.no() )          | a condition is a component and one of
            """)
    void aConditionIsHeldToThePlainLanguage(String when, String problem) {
        assertThat(problems(when, PASS)).anySatisfy(p -> assertThat(p).contains("criterion.drl:7: ", problem));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            insert(new Object());                                                        | a consequence is one verdict
            System.exit(1); verdicts.pass("overjet-after", $f);                          | a consequence is one verdict
            verdicts.pass("hygiene-and-caries", $f).seen("overjet-after.min", $f.anb()); | the verdict is on overjet-after
            verdicts.pass("overjet-after", $f).seen("overjet-after.max", $f.anb());      | no threshold is called overjet-after.max
            verdicts.caution("overjet-after", $f, "other");                              | there is no text for "other"
            verdicts.pass("overjet-after", $f);                                          | the text speaks of a value
            verdicts.caution("overjet-after", $f, "too-little");                         | the text speaks of a value
            verdicts.caution("overjet-after", $f);                                       | the reason is missing
            verdicts.pass("overjet-after", $f, "too-little");                            | pass: there is no text for "too-little"
            verdicts.doesNotApply("overjet-after", $f, "too-little");                    | doesNotApply: there is no text for "too-little"
            verdicts.stop("overjet-after", $f, "too-little");                            | stop: the texts give "too-little" another weight
            verdicts.caution("overjet-after", $f, "reversed");                           | caution: the texts give "reversed" another weight
            verdicts.pass("overjet-after", $f).seen("overjet-after.min", $f.anb());      | anb does not stand among the needs
            verdicts.pass("overjet-after", $f).seen("hygiene-and-caries.plaque", $f.overjetAfter()); | hygiene-and-caries.plaque belongs to another criterion
            """)
    void aConsequenceIsOneVerdict(String then, String problem) {
        assertThat(problems("$f : Bite( " + OK + " )", then))
                .anySatisfy(p -> assertThat(p).contains("criterion.drl:9: ", problem));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            import dev.fairlead.facts.Bite; | import java.io.File;                                      | import dev.fairlead.facts.Bite, the globals limits and verdicts, and rules are allowed, not: import java.io.File;
            import dev.fairlead.facts.Bite; | import dev.fairlead.facts.Brlead.indication;                   | not: import dev.fairlead.facts.Brlead.indication;
            import dev.fairlead.facts.Bite; | import dev.fairlead.facts.Bite; import dev.fairlead.facts.End; | not: import dev.fairlead.facts.End;
            import dev.fairlead.facts.Bite; | import dev.fairlead.facts.Bite; function int f() { return 1; } | and rules are allowed, not: function int f()
            import dev.fairlead.facts.Bite; | import dev.fairlead.facts.Bite.Inner;                     | and rules are allowed, not: import dev.fairlead.facts.Bite.Inner;
            import dev.fairlead.facts.Bite; | import dev.fairlead.facts.Bite as;                        | and rules are allowed, not: as;
            rule "overjet-after: pass"      | rule "overjet-after: pass" salience 10                    | a rule has no attributes
            rule "overjet-after: pass"      | rule "pass"                                               | the name of a rule begins
            rule "overjet-after: pass"      | query "q" end rule "overjet-after: pass"                  | and rules are allowed, not: query "q" end
            rulebase.indication;            | rulebase.bench;                                           | only package dev.fairlead.rulebase.indication, import dev.fairlead.facts.Bite, the globals
            .Limits limits                  | .Limits other                                             | and rules are allowed, not: global dev.fairlead.rules.catalogue.Limits other;
            """)
    void nothingElseStandsInTheFile(String old, String by, String problem) {
        Assertions.assertThatThrownBy(() -> TestFolder.whole(folder)
                        .replace(TestFolder.OVERJET + "/criterion.drl", old, by)
                        .load())
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining(problem)
                .hasMessageContaining("overjet-after/criterion.drl:");
    }

    /**
     * Java takes some of them for white space that the engine does not know, or makes others of a backslash, wherever
     * it stands; what turns the direction of reading hides what is there.
     */
    @ParameterizedTest
    @ValueSource(chars = {0x0b, 0x0c, 0x0d, 0x1d, 0x5c, 0xa0, 0x202e, 0x2028})
    void whatNoRuleIsWrittenWithIsNamed(char odd) {
        for (String by : List.of(
                "   " + odd + "$f : Bite", "    // " + odd + " \n    $f : Bite", "    /*" + odd + "*/ $f : Bite")) {
            Assertions.assertThatThrownBy(() -> TestFolder.whole(folder)
                            .replace(TestFolder.OVERJET + "/criterion.drl", "    $f : Bite", by)
                            .load())
                    .isInstanceOf(RulebaseException.class)
                    .hasMessageContaining(
                            "a character that no rule is written with: U+" + String.format("%04X", (int) odd))
                    .hasMessageContaining("overjet-after/criterion.drl:10: ");
        }
    }

    /** To the engine a comment cannot begin within a text: what stands up to its end is a rule like any other. */
    @Test
    void aNameHidesNoRule() {
        String hidden = "rule \"overjet-after: a /*\" when $f : Bite( overjetAfter.known() ) then System.exit(3); end"
                + " rule \"overjet-after: b */\"";
        Assertions.assertThatThrownBy(() -> TestFolder.whole(folder)
                        .replace(TestFolder.OVERJET + "/criterion.drl", "rule \"overjet-after: pass\"", hidden)
                        .load())
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("overjet-after/criterion.drl:8: a rule has no attributes")
                .hasMessageContaining("System.exit");
    }

    @Test
    void eachSlipIsNamedOnItsOwnLineWhateverStandsBeforeIt() {
        String when = """
                /* a reason
                   of two lines */
                    $f : Bite( overjetAfter.known(),
                        overjetAfter.yes(),
                        overjetAfter.atLeast(limits.of("overjet-after.least")) )""";
        String then = """
                verdicts.pass("overjet-after", $f)
                        .seen("overjet-after.min", $f.overjetAfter())
                        .seen("overjet-after.max",
                            $f.anb());""";
        String drl = file(when, then)
                .replace(
                        "rule \"overjet-after: warn\"",
                        "package dev.fairlead.rulebase.bench;\nimport java.io.File;\nglobal java.util.List list;\nrule \"overjet-after: warn\"");
        assertThat(lint(drl + "\n\n  query \"q\" end\n  query \"r\" end\n"))
                .containsExactlyInAnyOrder(
                        "indication/overjet-after/criterion.drl:10: overjetAfter is a Measured: it has no yes",
                        "indication/overjet-after/criterion.drl:11: no threshold is called overjet-after.least",
                        "indication/overjet-after/criterion.drl:15: no threshold is called overjet-after.max",
                        "indication/overjet-after/criterion.drl:16: anb does not stand among the needs of the criterion",
                        "indication/overjet-after/criterion.drl:18: " + ONLY + "package dev.fairlead.rulebase.bench;",
                        "indication/overjet-after/criterion.drl:19: " + ONLY + "import java.io.File;",
                        "indication/overjet-after/criterion.drl:20: " + ONLY + "global java.util.List list;",
                        "indication/overjet-after/criterion.drl:29: " + ONLY + "query \"q\" end");
    }

    @Test
    void someRulePassesAndSomeWarns() {
        String needs = "indication/overjet-after/criterion.drl: needs at least one rule that passes and one that warns";
        String warning =
                "verdicts.caution(\"overjet-after\", $f, \"too-little\").seen(\"overjet-after.min\", $f.overjetAfter());";
        assertThat(problems("$f : Bite( " + OK + " )", warning)).containsExactly(needs);
        String stops = file("$f : Bite( " + OK + " )", PASS)
                .replace("caution(\"overjet-after\", $f, \"too-little\")", "stop(\"overjet-after\", $f, \"reversed\")");
        assertThat(lint(stops)).isEmpty();
        assertThat(lint(file("$f : Bite( " + OK + " )", PASS).replace(warning, PASS)))
                .containsExactly(needs);
    }

    @Test
    void whatTheEngineRefusesIsNamedByFileAndLine() {
        String drl =
                "package p.q;\nimport dev.fairlead.facts.Bite;\nrule \"x\"\nwhen\n    $f : Bite( overjetLater.known() )\nthen\nend\n";
        Assertions.assertThatThrownBy(() -> DrlCompiler.compile(Map.of("indication/x/criterion.drl", drl)))
                .isInstanceOf(RulebaseException.class)
                .hasMessageContaining("indication/x/criterion.drl:")
                .hasMessageContaining("overjetLater");
    }

    @Test
    void whatStandsOnNoLineIsToldOfTheFileAlone() {
        String drl = "package p.q;\nrule \"x\"\nwhen\nthen\n ";
        Assertions.assertThatThrownBy(() -> DrlCompiler.compile(Map.of("indication/x/criterion.drl", drl)))
                .isInstanceOfSatisfying(
                        RulebaseException.class,
                        e -> assertThat(e.problems())
                                .anyMatch(p -> p.startsWith("indication/x/criterion.drl:5: "))
                                .contains("indication/x/criterion.drl: Parser returned a null Package"));
    }

    @Test
    void aFileWithoutAPackageIsNamed() {
        Assertions.assertThatThrownBy(
                        () -> DrlCompiler.compile(Map.of("a/b/criterion.drl", "rule", "c.drl", "package p;")))
                .isInstanceOfSatisfying(
                        RulebaseException.class,
                        e -> assertThat(e.problems()).containsExactly("a/b/criterion.drl:1: a package is missing"));
    }
}
