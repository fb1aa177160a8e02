package dev.fairlead.audit.run;

import dev.fairlead.audit.outcome.Attained;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Ending;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
 * @param details what else of the case an audit tells
 * @param superseded the same audit has a later state of the same pseudonym, which counts instead
 */
public record CaseRow(
        String source,
        Kind kind,
        String reason,
        String id,
        String hash,
        @Nullable Stage stage,
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
        Details details,
        boolean superseded) {
    /**
     * What else of a case an audit tells.
     *
     * @param site code of the clinic or site; empty when none is named
     * @param waivers the waivers that hold
     * @param attained what came of the plan; empty before holding
     * @param values numbers behind the findings; kept for tables alone
     */
    public record Details(String site, List<Answered> waivers, List<Attained> attained, List<Value> values) {
        public static final Details NONE = new Details("", List.of(), List.of(), List.of());
    }

    /**
     * The number of a finding that came closest to its limit, or went farthest beyond.
     *
     * @param place JSON Pointer
     * @param reasons keys of the reasons of a warning
     * @param value NaN, as the other numbers, where a finding rests on none
     * @param error one standard deviation
     * @param margin distance to the limit, positive on the side that passes
     */
    public record Value(
            String criterion,
            String place,
            String reasons,
            double value,
            double error,
            String unit,
            double limit,
            double margin) {
        static Value reason(String criterion, String place, String reasons) {
            double none = Double.NaN;
            return new Value(criterion, place, reasons, none, none, "", none, none);
        }

        /** Margin in standard deviations of the error; NaN where the value is exact. */
        public double closeness() {
            return error > 0 ? margin / error : Double.NaN;
        }
    }

    /** A waiver that holds: criterion, role of who answers for it, its day and last day, and the reason. */
    public record Answered(String criterion, String by, String date, String expires, String reason) {}

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
                Details.NONE,
                false);
    }

    public boolean judged() {
        return kind == Kind.JUDGED;
    }

    /** The stage that a judged case was judged up to. */
    public Stage reached() {
        return Objects.requireNonNull(stage, "a case that was not judged");
    }

    /** The same under another name than the resident's, for comparisons of other groups. */
    public CaseRow under(String group) {
        return new CaseRow(
                source,
                kind,
                reason,
                id,
                hash,
                stage,
                group,
                day,
                endings,
                waived,
                missing,
                notes,
                errors,
                doubts,
                lost,
                recorded,
                course,
                details,
                superseded);
    }

    /** The same as an earlier state of a case of which there is a later one. */
    CaseRow earlier() {
        return new CaseRow(
                source, kind, reason, id, hash, stage, resident, day, endings, waived, missing, notes, errors, doubts,
                lost, recorded, course, details, true);
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
    public @Nullable Ending ending(int criterion) {
        return endings[criterion] < 0 ? null : ENDINGS[endings[criterion]];
    }

    private static final Ending[] ENDINGS = Ending.values();
}
