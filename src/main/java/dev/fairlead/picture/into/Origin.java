package dev.fairlead.picture.into;

import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.model.Choices.PictureKind;
import java.time.LocalDate;
import java.util.Set;

/**
 * Where readings of one picture come from.
 *
 * @param result with its scale and its errors
 * @param again names of the points that were placed a second time without sight of the first
 */
public record Origin(PictureKind from, LocalDate date, PictureResult result, Set<String> again) {
    public Origin {
        again = Set.copyOf(again);
    }
}
