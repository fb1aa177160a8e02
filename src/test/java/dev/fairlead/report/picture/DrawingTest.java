package dev.fairlead.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.findings.Missing;
import dev.fairlead.model.Measured;
import dev.fairlead.report.Demo;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class DrawingTest {
    @Test
    void whatIsThereAndCannotBeUsedIsNotCalledMissing() throws IOException {
        Drawing plain = Drawing.without("a picture", Measured.unknown("/films/secondMolarAngleLeft"));
        assertThat(Missing.heading(plain.missing())).isEqualTo("Missing");
        Drawing told = plain.in(Demo.checked("heron-07").subject());
        assertThat(Missing.heading(told.missing())).isEqualTo(Missing.WAITS);
        assertThat(told.missing()).allMatch(m -> m.words().endsWith("(contradicts other facts)"));
    }
}
