package dev.fairlead.measure.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** In a sum of lengths of one picture the error of its scale adds up (JCGM 100:2008, 5.2.2, full correlation). */
class SharedScalesTest {
    private static Case read(int pictureOfTheSecond, String widthOfTheFirst) {
        String text = "{\"fairlead\":1,\"id\":\"a-1\",\"teeth\":{\"42\":{\"width\":" + widthOfTheFirst
                + "},\"41\":{\"width\":{\"value\":5,\"error\":0.2}},\"31\":{\"width\":{\"value\":5,\"error\":0.2}}},"
                + "\"pictured\":[{\"field\":\"/teeth/42/width\",\"picture\":1,\"scaleError\":2},"
                + "{\"field\":\"/teeth/41/width\",\"picture\":" + pictureOfTheSecond + ",\"scaleError\":2}]}";
        return CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "a.json", CaseFormat.JSON)
                .value()
                .orElseThrow();
    }

    private static Measured sum(Case c) {
        Readings r = new Readings(c);
        return r.width(Tooth.of(42)).plus(r.width(Tooth.of(41)));
    }

    @Test
    void oneScaleAddsUpAndTwoDoNot() {
        String plain = "{\"value\":6,\"error\":0.2}";
        Readings r = new Readings(read(1, plain));
        assertThat(r.width(Tooth.of(42)).sd()).as("the whole error stays").isCloseTo(0.2, within(1e-12));
        double own = (0.04 - 0.12 * 0.12) + (0.04 - 0.1 * 0.1);
        assertThat(sum(read(1, plain)).sd()).isCloseTo(Math.sqrt(own + 0.22 * 0.22), within(1e-12));
        assertThat(sum(read(2, plain)).sd()).isCloseTo(Math.sqrt(0.08), within(1e-12));
        assertThat(r.width(Tooth.of(31)).sources()).containsExactly("/teeth/31/width");
    }

    /** Of a mean of a typed reading and one by picture, half of the scale's error is left. */
    @Test
    void besideATypedReadingTheShareIsSmaller() {
        Case c = read(1, "{\"repeats\":[5.8,6.2],\"error\":0.2}");
        Measured width = new Readings(c).width(Tooth.of(42));
        assertThat(width.part("/pictured/0/scaleError")).isCloseTo(6 * 0.02 / 2, within(1e-12));
        assertThat(width.repeats()).containsExactly(5.8, 6.2);
        assertThat(width.sd()).isCloseTo(0.2, within(1e-12));
    }
}
