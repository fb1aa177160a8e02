package dev.fairlead.cli;

/** What the process tells its caller. */
final class ExitCode {
    /** Nothing at or above {@code --fail-on}. */
    static final int CLEAN = 0;
    /** Our own error. */
    static final int OWN_ERROR = 1;
    /** The call's words are off. */
    static final int USAGE = 2;
    /** A case could not be read, or is invalid. */
    static final int UNREADABLE = 3;
    /** Findings at or above {@code --fail-on}. */
    static final int FINDINGS = 4;

    private ExitCode() {}
}
