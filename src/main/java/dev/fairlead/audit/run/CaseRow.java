package dev.fairlead.audit.run;

import dev.fairlead.model.Stage;
import dev.fairlead.rules.verdict.Ending;
import java.util.List;
import java.util.Map;

/**
 * How one case of an audit ended, without words.
 *
 * @param source where the case stands
 * @param kind whether it was judged
 * @param reason why it was not; empty when it was
 * @param id pseudonym of the case; empty when it was not read
 * @param hash SHA-256 of its text
 * @param stage as of which it was judged; null when it was not
 * @param resident code of the resident; empty when none is named
 * @param day for which it was judged; empty when none is named
 * @param endings ending of each criterion in catalogue order by {@link Ending#ordinal()}; -1 for stages not reached
 * @param waived criteria whose finding a waiver answers for
 * @param missing for each criterion not assessed, what it waits for
 * @param notes waivers that do not hold
 * @param errors failures of our own
 * @param doubts what reading the case left open
 * @param lost facts of a table row that could not be read, with reasons
 * @param recorded last day of which the case tells; empty when it names none
 * @param course how far treatment is
 * @param superseded the same audit has a later state of the same pseudonym, which counts instead
 */
public record CaseRow(
        String source,
        Kind kind,
        String reason,
        String id,
        String hash,
        Stage stage,
        String resident,
        String day,
        byte[] endings,
        List<String> waived,
        Map<String, List<String>> missing,
        List<Note> notes,
        List<String> errors,
        int doubts,
        List<String> lost,
        String recorded,
        Course course,
        boolean superseded) {
    /** Whether a case was judged. */
    public enum Kind {
        JUDGED,
        UNREADABLE,
        TOO_LONG,
        FAILED
    }

    /** How far treatment is, by what is recorded. */
    public enum Course {
        BEFORE_WIRE,
        WIRE_IN,
        HOLDING,
        /** Brackets and wire are off. */
        CLOSED
    }

    /** A waiver that does not hold: the criterion that it names, the kind of fault, and a sentence. */
    public record Note(String criterion, String kind, String text) {}

    /** A case that could not be judged. */
    public static CaseRow not(Kind kind, String source, String hash, String reason) {
        return new CaseRow(
                source,
                kind,
                reason,
                "",
                hash,
                null,
                "",
                "",
                new byte[0],
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                0,
                List.of(),
                "",
                Course.BEFORE_WIRE,
                false);
    }

    public boolean judged() {
        return kind == Kind.JUDGED;
    }

    /** The same as an earlier state of a case of which there is a later one. */
    CaseRow earlier() {
        return new CaseRow(
                source, kind, reason, id, hash, stage, resident, day, endings, waived, missing, notes, errors, doubts,
                lost, recorded, course, true);
    }

    /** How many criteria ended so. */
    public int count(Ending ending) {
        int n = 0;
        for (byte e : endings) {
            n += e == ending.ordinal() ? 1 : 0;
        }
        return n;
    }

    /** The ending of the criterion at that index, or null when its stage is not reached. */
    public Ending ending(int criterion) {
        return endings[criterion] < 0 ? null : ENDINGS[endings[criterion]];
    }

    private static final Ending[] ENDINGS = Ending.values();
}
