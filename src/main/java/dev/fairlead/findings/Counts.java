package dev.fairlead.findings;

/**
 * How many findings of each kind.
 *
 * @param waived findings that a waiver answers for; they are counted under their outcome too
 * @param close findings in which the error of a number reaches across its limit
 */
public record Counts(int stop, int caution, int notAssessed, int pass, int doesNotApply, int waived, int close) {
    public int warn() {
        return stop + caution;
    }

    public int all() {
        return warn() + notAssessed + pass + doesNotApply;
    }
}
