package dev.fairlead.report.picture;

import dev.fairlead.check.Checked;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All pictures of a case in the order in which they are looked at; each is a picture, or says what is missing for it.
 */
public final class Pictures {
    private Pictures() {}

    /** The pictures of a case that was checked with its workings; the wire is drawn once it is to be bent. */
    public static List<Drawing> of(Checked checked) {
        List<Drawing> all = new ArrayList<>(List.of(
                ArchPicture.of(checked),
                SpacePicture.of(checked),
                PositionPicture.of(checked),
                ForecastPicture.of(checked),
                RepeatPicture.of(checked.report().repeats())));
        if (checked.report().stages().contains(Stage.BENCH)) {
            List.of(
                            WirePicture.of(checked.subject()),
                            FoldPicture.of(checked.subject()),
                            LoadPicture.of(checked.subject()))
                    .stream()
                    .flatMap(Optional::stream)
                    .forEach(p -> all.add(Drawing.of(p)));
        }
        return all.stream().map(d -> d.in(checked.subject())).toList();
    }
}
