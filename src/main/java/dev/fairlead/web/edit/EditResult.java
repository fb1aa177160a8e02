package dev.fairlead.web.edit;

import dev.fairlead.intake.text.Problem;
import java.util.List;
import java.util.Map;

/**
 * What became of an edit.
 *
 * @param now the case as it stands
 * @param taken pointers whose new value is in the file
 * @param refused pointers whose value was not taken, and why
 * @param clashes values that another window changed meanwhile; nothing was written for them
 * @param others true when another window changed other facts since this one was loaded
 */
public record EditResult(
        Opened now, List<String> taken, Map<String, Refused> refused, List<Clash> clashes, boolean others) {
    /**
     * One value that two windows changed.
     *
     * @param there what stands in the file by now; empty when nothing does
     * @param here what was typed here; empty when it was taken out
     */
    public record Clash(String pointer, String there, String here) {}

    /**
     * What a person typed and the case did not take; it is shown beside the field until it is mended, and is not in the
     * file.
     */
    public record Refused(String typed, Problem problem) {}
}
