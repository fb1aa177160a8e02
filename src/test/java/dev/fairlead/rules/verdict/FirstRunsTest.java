package dev.fairlead.rules.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.engine.RuleCache;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ten runs that meet the same new rules at the same moment: all judge by them, and what is kept is kept whole. */
class FirstRunsTest {
    private static final int RUNS = 10;

    @TempDir
    Path folder;

    @Test
    void tenFirstRunsAtOnceFindTheSameRules() throws Exception {
        TestFolder.whole(folder.resolve("site"));
        Path cache = folder.resolve("cache/fairlead/rules");
        ExecutorService runs = Executors.newFixedThreadPool(RUNS);
        try {
            List<Future<Rulebase>> all = new ArrayList<>();
            for (int i = 0; i < RUNS; i++) {
                all.add(runs.submit(() -> Rulebase.fromFolder(folder.resolve("site"), new RuleCache(cache))));
            }
            String hash = all.get(0).get().hash();
            for (Future<Rulebase> run : all) {
                assertThat(run.get().hash()).isEqualTo(hash);
                assertThat(run.get().catalogue().criteria()).hasSize(2);
            }
        } finally {
            runs.shutdownNow();
        }
        try (Stream<Path> kept = Files.list(cache)) {
            assertThat(kept.map(p -> p.getFileName().toString())).hasSize(1).allMatch(n -> n.endsWith(".zip"));
        }
        assertThat(Rulebase.fromFolder(folder.resolve("site"), new RuleCache(cache))
                        .catalogue()
                        .criteria())
                .hasSize(2);
    }
}
