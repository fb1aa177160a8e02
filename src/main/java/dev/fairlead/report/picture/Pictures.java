package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import java.util.List;

/** All pictures of a case in the order in which they are looked at; each is a picture, or says what is missing for it. */
public final class Pictures {
    private Pictures() {}

    /** The pictures of a case that was checked with its workings. */
    public static List<Drawing> of(Checked checked) {
        return List.of(ArchPicture.of(checked), SpacePicture.of(checked), PositionPicture.of(checked), ForecastPicture.of(checked));
    }
}
