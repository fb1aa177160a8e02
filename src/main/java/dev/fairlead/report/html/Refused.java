package dev.fairlead.report.html;

import java.util.List;

/**
 * A case that could not be read.
 *
 * @param name the file as it was named
 * @param problems why, a sentence each
 */
public record Refused(String name, List<String> problems) {
    public Refused {
        problems = List.copyOf(problems);
    }
}
