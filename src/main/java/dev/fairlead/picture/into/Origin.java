package dev.fairlead.picture.into;

import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Choices.PictureScale;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where readings of one picture come from.
 *
 * @param scaleError one standard deviation, per cent of a length
 * @param twice whether points were placed a second time without sight of the first
 */
public record Origin(
        PictureKind from, LocalDate date, Optional<PictureScale> scale, double scaleError, boolean twice) {}
