package dev.fairlead;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A name that stands in two packages sends its reader to the wrong one: each simple name means one type. */
class OneNameTest {
    private static final Path SOURCES = Path.of("src/main/java");

    @Test
    void noTwoTypesShareASimpleName() throws IOException {
        Map<String, List<Path>> byName;
        try (Stream<Path> all = Files.walk(SOURCES)) {
            byName = all.filter(p -> p.toString().endsWith(".java"))
                    .filter(p -> !p.endsWith("package-info.java"))
                    .collect(Collectors.groupingBy(p -> p.getFileName().toString(), TreeMap::new, Collectors.toList()));
        }
        assertThat(byName).hasSizeGreaterThan(500);
        assertThat(byName.values()).allSatisfy(files -> assertThat(files).hasSize(1));
    }
}
