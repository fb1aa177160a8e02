package dev.fairlead.rules.guard;

import dev.fairlead.rules.catalogue.RulebaseException;
import dev.fairlead.rules.verdict.Rulebase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Runs the examples of the criteria named by their folders, or of all, and prints what differs: for whoever writes a
 * criterion.
 */
public final class ExampleRunner {
    private static final Path RULES = Path.of("rules");

    private ExampleRunner() {}

    public static void main(String[] folders) throws IOException {
        Rulebase rulebase;
        try {
            rulebase = Rulebase.fromFolder(RULES);
        } catch (RulebaseException e) {
            e.problems().forEach(System.out::println);
            System.out.println(e.problems().size() + " problem(s) in the rulebase");
            System.exit(1);
            return;
        }
        Facts base = Facts.base(RULES);
        int failed = 0;
        int run = 0;
        for (Path folder :
                folders.length == 0 ? all() : Stream.of(folders).map(Path::of).toList()) {
            for (Example example : Example.in(folder)) {
                run++;
                List<String> differences = differences(rulebase, base, example);
                if (!differences.isEmpty()) {
                    failed++;
                    System.out.println(folder + ": " + example.name());
                    differences.forEach(d -> System.out.println("    " + d));
                }
            }
        }
        System.out.println(
                rulebase.catalogue().criteria().size() + " criteria, " + run + " examples run, " + failed + " differ");
        System.exit(failed == 0 && run > 0 ? 0 : 1);
    }

    private static List<String> differences(Rulebase rulebase, Facts base, Example example) {
        try {
            return example.differences(rulebase.judge(), base);
        } catch (IllegalArgumentException e) {
            return List.of(e.getMessage());
        }
    }

    private static List<Path> all() throws IOException {
        try (Stream<Path> walk = Files.walk(RULES, 3)) {
            return walk.filter(p -> p.endsWith("examples.json"))
                    .map(Path::getParent)
                    .sorted()
                    .toList();
        }
    }
}
