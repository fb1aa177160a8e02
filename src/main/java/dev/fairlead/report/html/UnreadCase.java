package dev.fairlead.report.html;

import java.util.List;

/**
 * A case that could not be read.
 *
 * @param name the file as it was named
 * @param problems why, a sentence each
 */
public record UnreadCase(String name, List<String> problems) {
    public UnreadCase {
        problems = List.copyOf(problems);
    }
}
