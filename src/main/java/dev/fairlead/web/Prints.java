package dev.fairlead.web;

import dev.fairlead.check.Checked;
import dev.fairlead.report.picture.Picture;
import java.util.List;

/** How reports and sheets of a checked case are made. */
public interface Prints {
    /** The whole report as one HTML file that needs nothing else. */
    String html(Checked checked);

    /** The same as PDF. */
    byte[] pdf(Checked checked);

    /** The bench sheet at 1:1 as PDF. */
    byte[] sheet(Checked checked);

    /** Drawings of the case with the words and numbers that say the same; none where nothing can be drawn. */
    default List<Picture> pictures(Checked checked) {
        return List.of();
    }
}
