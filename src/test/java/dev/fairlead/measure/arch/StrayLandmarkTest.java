package dev.fairlead.measure.arch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Case;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip in one coordinate makes no arch that nobody has, and is told. */
class StrayLandmarkTest {
    private static final String SECOND = "{tooth: 85, x: -19.3, y: 5.2}";

    private static CaseReading tern(String instead) throws IOException {
        String text = Files.readString(Path.of("cases/tern-12-leeway-would-do.yaml"));
        assertThat(text).contains(SECOND);
        return CaseReader.read(
                text.replace(SECOND, instead).getBytes(StandardCharsets.UTF_8), "tern-12", CaseFormat.YAML);
    }

    @Test
    void landmarksAsTheyWereMeasuredAreUsedWithoutADoubt() throws IOException {
        CaseReading read = tern(SECOND);
        assertThat(read.problems()).isEmpty();
        assertThat(PatientArch.of(read.value().orElseThrow()).basis()).isEqualTo(Basis.LANDMARKS);
    }

    /** A number in the wrong column, a slipped decimal point, a sign: the curve through them ran on for a metre. */
    @ParameterizedTest
    @CsvSource({"-19.3, 85", "-193, 5.4", "-19.3, -54", "19.3, 5.4"})
    void aPointFarFromItsNeighboursIsDoubtedAndTheArchIsTakenFromTheWidths(double x, double y) throws IOException {
        CaseReading read = tern("{tooth: 85, x: " + x + ", y: " + y + "}");
        assertThat(read.problems()).extracting(Problem::pointer).containsExactly("/landmarks/1");
        Case c = read.value().orElseThrow();
        PatientArch arch = PatientArch.of(c);
        assertThat(arch.basis()).isEqualTo(Basis.WIDTHS_AND_CANINES);
        assertThat(arch.remark()).contains("(85)").contains("not used");
        assertThat(arch.curve().perimeter()).isBetween(60.0, 80.0);
    }
}
