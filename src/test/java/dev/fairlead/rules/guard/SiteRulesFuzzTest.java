package dev.fairlead.rules.guard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.fairlead.rules.catalogue.RuleFiles;
import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.engine.DrlCompiler;
import dev.fairlead.rules.engine.RuleCache;
import dev.fairlead.rules.language.RulebaseCheck;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.testing.Damage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged texts, thresholds and rules of a site: they are refused with problems that name a file, or taken whole; and
 * what the lint lets through is something the rule compiler takes too.
 */
class SiteRulesFuzzTest {
    private static final String OVERJET = "indication/overjet-after/";
    private static final List<String> OVERLAYS = List.of(
            "{\"title\": \"Overjet left after advancing\", \"why\": \"So that the lips close.\"}",
            "{\"reasons\": {\"too-little\": {\"todo\": \"Ask the senior clinician.\", \"title\": \"Too little {value} mm\"}}}",
            "{\"needs\": {\"overjet\": {\"unit\": \"mm\"}}}");
    private static final String LIMITS = "{\"overjet-after.min\": 1.5, \"overjet-after.reversed\": 0.2}";
    private static final String ANSWERS =
            "{\"tipping\": {\"mean\": 1.1, \"sd\": 0.1}, \"rate\": {\"mean\": 0.6, \"sd\": 0.2}, "
                    + "\"gain\": {\"mean\": 1.0, \"sd\": 0.12}, \"cases\": 20}";

    @TempDir
    Path folder;

    private static final List<String> KINDS =
            List.of("criterion.json", "criterion.drl", "overlay", "rulebase.json", "thresholds.json", "clinic.json");

    private int refused;

    @Test
    void whatASiteWritesIsRefusedInWordsOrTakenWhole() throws IOException {
        Map<String, String> whole = new LinkedHashMap<>();
        whole.put(
                "rulebase.json",
                "{\"version\": \"test\", \"causes\": {}, \"order\": {\"indication\": [\"overjet-after\"]}}");
        for (String file : List.of("sources.json", OVERJET + "criterion.drl", OVERJET + "criterion.json")) {
            whole.put(file, Files.readString(Path.of("rules", file)));
        }
        RuleFiles base = new RuleFiles(whole);
        assertThat(RulebaseCheck.check(base).criteria()).hasSize(1);
        Damage damage = new Damage(23);
        int all = Damage.Kind.SITE_RULES.inputs();
        Map<String, String> taken = new LinkedHashMap<>();
        RuleCache cache = new RuleCache(folder.resolve("compiled"));
        for (int i = 0; i < all; i++) {
            Map<String, String> site = new LinkedHashMap<>();
            String what = damage.pick(KINDS);
            try {
                if (what.equals("overlay")) {
                    site.put(OVERJET + "criterion.json", damage.of(damage.pick(OVERLAYS)));
                    RulebaseCheck.check(new RuleFiles(site).over(base));
                } else if (what.equals("thresholds.json") || what.equals("clinic.json")) {
                    site.put(what, damage.of(what.equals("clinic.json") ? ANSWERS : LIMITS));
                    Rulebase.fromFolder(written(whole, site), cache);
                } else {
                    site.putAll(whole);
                    site.computeIfPresent(
                            what.startsWith("criterion") ? OVERJET + what : what, (path, text) -> damage.of(text));
                    RulebaseCheck.check(new RuleFiles(site));
                    String drl = site.get(OVERJET + "criterion.drl");
                    if (what.equals("criterion.drl") && taken.size() < Math.max(12, all / 80)) {
                        taken.put(drl, what);
                    }
                }
            } catch (RulebaseException e) {
                refused++;
                assertThat(e.problems())
                        .isNotEmpty()
                        .allSatisfy(p -> assertThat(p).isNotBlank().doesNotContain("com.fasterxml", "Exception"));
            } catch (RuntimeException | StackOverflowError e) {
                throw new AssertionError("input " + i + " (" + what + "):\n" + site, e);
            }
        }
        System.out.printf(
                "Fuzz: of %d files of a site %d refused; %d damaged rules that were let through are compiled%n",
                all, refused, taken.size());
        assertThat(refused).isGreaterThan(all / 4);
        for (String drl : taken.keySet()) {
            assertThatCode(() -> DrlCompiler.compile(Map.of(OVERJET + "criterion.drl", drl)))
                    .as(drl)
                    .doesNotThrowAnyException();
        }
    }

    private Path written(Map<String, String> whole, Map<String, String> site) throws IOException {
        Path rules = folder.resolve("rules");
        Map<String, String> files = new LinkedHashMap<>(whole);
        files.put("thresholds.json", LIMITS);
        files.put("clinic.json", ANSWERS);
        files.putAll(site);
        for (var file : files.entrySet()) {
            Path path = rules.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
        }
        return rules;
    }
}
