package dev.fairlead.rules.guard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Threshold;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every criterion says all that it must say, in a length that people read. */
class TextsTest {
    private final List<String> faults = new ArrayList<>();

    @Test
    void everyFieldIsThereAndOfSaneLength() {
        for (Criterion c : ProjectRules.rulebase().catalogue().criteria()) {
            length(c, "title", c.title(), 10, 90);
            length(c, "asks", c.asks(), 15, 420);
            length(c, "why", c.why(), 40, 600);
            length(c, "passes", c.passes(), 5, 250);
            length(c, "dispute", c.dispute(), 0, 600);
            c.reasons().forEach((key, r) -> {
                length(c, "reasons." + key + ".title", r.title(), 8, 90);
                length(c, "reasons." + key + ".says", r.says(), 10, 300);
                length(c, "reasons." + key + ".todo", r.todo(), 20, 500);
            });
            c.exemptions().forEach((key, text) -> length(c, "exemptions." + key, text, 10, 300));
            c.thresholds().forEach((key, t) -> length(c, "thresholds." + key + ".says", t.says(), 8, 150));
            if (c.reasons().isEmpty()) {
                faults.add(c.id() + ": no reason to warn");
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void noTextCallsAnythingSafe() {
        for (Criterion c : ProjectRules.rulebase().catalogue().criteria()) {
            List<String> all = new ArrayList<>(List.of(c.title(), c.asks(), c.why(), c.passes(), c.dispute()));
            c.reasons().values().forEach(r -> all.addAll(List.of(r.title(), r.says(), r.todo())));
            all.addAll(c.exemptions().values());
            all.stream()
                    .filter(t -> t.matches("(?is).*\\b(safe|safely|harmless|guarantee[sd]?)\\b.*"))
                    .forEach(t -> faults.add(c.id() + ": " + t));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void everyReasonStatesItsOwnFaultAndItsOwnAdvice() {
        for (Criterion c : ProjectRules.rulebase().catalogue().criteria()) {
            Set<String> titles = new HashSet<>(Set.of(bare(c.title())));
            Set<String> advice = new HashSet<>();
            c.reasons().forEach((key, r) -> {
                if (!titles.add(bare(r.title()))) {
                    faults.add(c.id() + ": reasons." + key + ": another text has this title: " + r.title());
                }
                if (!advice.add(bare(r.todo()))) {
                    faults.add(c.id() + ": reasons." + key + ": another reason has this advice: " + r.todo());
                }
            });
        }
        assertThat(faults).isEmpty();
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    @Test
    void thresholdsLieInTheirRangeOnTheirGrid() {
        for (Threshold t : ProjectRules.rulebase().catalogue().thresholds().values()) {
            if (!(t.low() < t.high() && t.step() <= (t.high() - t.low()) / 2)) {
                faults.add(t.name() + ": a range of " + t.low() + " to " + t.high() + " in steps of " + t.step());
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void foldersAndTheOrderOfTheRulebaseAgree() throws IOException {
        List<String> ordered = new ArrayList<>();
        JsonNode order = JsonMapper.builder()
                .build()
                .readTree(ProjectRules.FOLDER.resolve("rulebase.json").toFile())
                .required("order");
        order.properties()
                .forEach(stage -> stage.getValue().forEach(id -> ordered.add(stage.getKey() + "/" + id.asText())));
        try (Stream<Path> walk = Files.walk(ProjectRules.FOLDER, 2)) {
            List<String> folders = walk.filter(Files::isDirectory)
                    .map(p -> ProjectRules.FOLDER.relativize(p).toString().replace('\\', '/'))
                    .filter(p -> p.contains("/"))
                    .toList();
            // a criterion that the order leaves out stands at the end of its stage
            assertThat(folders).containsAll(ordered).doesNotHaveDuplicates();
        }
        assertThat(ProjectRules.rulebase().catalogue().criteria())
                .extracting(Criterion::folder)
                .containsSubsequence(ordered);
    }

    @Test
    void everyFolderHoldsTheThreeFilesAndNothingElse() throws IOException {
        try (Stream<Path> walk = Files.walk(ProjectRules.FOLDER, 4)) {
            walk.filter(Files::isRegularFile)
                    .map(p -> ProjectRules.FOLDER.relativize(p).toString().replace('\\', '/'))
                    .filter(
                            p -> !p.matches(
                                    "(rulebase|sources|base-facts)\\.json|[a-z]+/[a-z0-9-]+/(criterion\\.(drl|json)|examples\\.json)"))
                    .forEach(faults::add);
        }
        assertThat(faults).isEmpty();
    }

    private void length(Criterion c, String field, String text, int least, int most) {
        if (text.length() < least || text.length() > most) {
            faults.add(c.id() + ": " + field + " has " + text.length() + " characters, not " + least + " to " + most);
        }
    }
}
