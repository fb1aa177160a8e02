package dev.fairlead.model.shape;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A case without its errors is the case that is read without errors. */
class ExactTest {
    @Test
    void withoutItsErrorsACaseIsWhatIsReadWithoutErrors() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of("cases"))) {
            files = all.filter(f -> f.toString().endsWith(".yaml")).toList();
        }
        int read = 0;
        for (Path file : files) {
            byte[] text = Files.readAllBytes(file);
            var whole = CaseReader.read(text, "c", CaseFormat.YAML).value();
            if (whole.isPresent()) {
                var exact =
                        CaseReader.readExact(text, "c", CaseFormat.YAML).value().orElseThrow();
                assertThat(whole.get()).as(file.toString()).isNotEqualTo(exact);
                assertThat(Exact.of(whole.get())).as(file.toString()).isEqualTo(exact);
                read++;
            }
        }
        assertThat(read).isGreaterThan(20);
    }
}
