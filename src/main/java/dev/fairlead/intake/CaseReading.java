package dev.fairlead.intake;

import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Case;
import java.util.List;
import java.util.Optional;

/**
 * What reading a file gave: the case, unless there was an error, and every problem in the order of the file.
 *
 * @param name the file's name, as it was given
 */
public record CaseReading(String name, Optional<Case> value, List<Problem> problems) {
    public CaseReading {
        problems = List.copyOf(problems);
    }

    /** True when the case was read, with doubts or without. */
    public boolean read() {
        return value.isPresent();
    }

    public List<Problem> errors() {
        return problems.stream().filter(Problem::error).toList();
    }

    public List<Problem> doubts() {
        return problems.stream().filter(p -> !p.error()).toList();
    }
}
