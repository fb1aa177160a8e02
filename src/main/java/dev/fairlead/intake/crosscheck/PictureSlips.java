package dev.fairlead.intake.crosscheck;

import dev.fairlead.model.Case;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.SharedScales;

/** Readings by picture whose field is none of this case: the error of their scale would be shared with nothing. */
final class PictureSlips {
    private PictureSlips() {}

    static void check(Case c, CrossChecks to) {
        for (int i = 0; i < c.pictured().size(); i++) {
            Fact<String> field = c.pictured().get(i).field();
            if (field.known()
                    && !field.get().equals(SharedScales.LANDMARKS)
                    && Edit.find(c, field.get())
                            .filter(Measured.class::isInstance)
                            .isEmpty()) {
                to.doubt(
                        "/pictured/" + i + "/field",
                        "the JSON Pointer of a measurement of this case, such as /teeth/42/width",
                        field.get(),
                        "",
                        "write which field was measured, or take this entry out; its scale is shared with no reading so");
            }
        }
    }
}
