package dev.fairlead.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CaliperTest {
    /** Scores and counts of surfaces are read by eye, at no place that could be drawn. */
    private static final List<String> BY_EYE = List.of("/visits/0/plaque");

    @Test
    void everyMeasurementAtTheBenchAndAtTheChairHasItsDrawing() {
        List<String> all = new ArrayList<>();
        for (String root : List.of("/bench", "/insertion", "/visits/0")) {
            measurements(root, CasePaths.field(root.replace("/0", "")).orElseThrow(), all);
        }
        assertThat(all).hasSizeGreaterThan(30).contains("/bench/left/bendRadius", "/insertion/right/endProud");
        all.removeAll(BY_EYE);
        assertThat(all).allSatisfy(p -> assertThat(Caliper.drawing(p)).as(p).isNotEmpty());
    }

    private static void measurements(String at, FieldShape shape, List<String> all) {
        for (FieldShape f : shape.nested().fields()) {
            if (f.kind() == Kind.QUANTITY) {
                all.add(at + "/" + f.key());
            } else if (f.kind() == Kind.RECORD) {
                measurements(at + "/" + f.key(), f, all);
            }
        }
    }
}
