package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.landmarks.LandmarkCsv;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.testing.Damage;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Damaged files of every sort: reading never throws, and gives either a whole case that can be written and read again,
 * or errors.
 */
class FuzzTest {
    private static final int OF_EACH_CASE = 21;

    private int whole;

    @ParameterizedTest
    @CsvSource({"JSON,1", "JSON,2", "YAML,3", "YAML,4"})
    void damagedTextIsReadWholeOrRefused(CaseFormat format, long seed) throws UnreadableTextException {
        Damage damage = new Damage(seed);
        RandomCases cases = new RandomCases(seed, 0.4);
        int all = Damage.Kind.CASE_TEXT.inputs() / 4;
        String good = "";
        for (int i = 0; i < all; i++) {
            if (i % OF_EACH_CASE == 0) {
                good = CaseTree.of(cases.next()).text(format);
            }
            byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
            bytes = i % 4 == 3 ? damage.of(bytes) : damage.of(good).getBytes(StandardCharsets.UTF_8);
            try {
                check(bytes, format);
            } catch (RuntimeException | StackOverflowError | AssertionError e) {
                throw new AssertionError("input " + i + ":\n" + new String(bytes, StandardCharsets.UTF_8), e);
            }
        }
        System.out.printf("Fuzz: of %d damaged %s texts %d read whole%n", all, format, whole);
        assertThat(whole).isBetween(all / 100, all - all / 100);
    }

    private void check(byte[] bytes, CaseFormat format) {
        CaseReading r = CaseReader.read(bytes, "x", format);
        assertThat(r.value().isPresent()).isEqualTo(r.errors().isEmpty());
        assertThat(r.problems()).allSatisfy(p -> assertThat(p.expected()).isNotBlank());
        r.value().ifPresent(c -> {
            whole++;
            CaseReading again =
                    CaseReader.read(CaseWriter.json(c).getBytes(StandardCharsets.UTF_8), "x", CaseFormat.JSON);
            assertThat(again.value()).contains(c);
        });
        assertThat(LandmarkCsv.read(bytes, "x").problems()).isNotEmpty();
    }
}
