package dev.fairlead.intake.text;

/** Text that is neither JSON nor YAML as cases use them, so that no single value of it can be changed. */
public final class UnreadableTextException extends Exception {
    private final transient Problem problem;

    public UnreadableTextException(Problem problem) {
        super(problem.toString());
        this.problem = problem;
    }

    /** Where and why the text could not be read. */
    public Problem problem() {
        return problem;
    }
}
