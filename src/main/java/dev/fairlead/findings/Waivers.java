package dev.fairlead.findings;

import dev.fairlead.findings.WaiverNote.Kind;
import dev.fairlead.model.Choices.Role;
import dev.fairlead.model.Waiver;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Lays the case's waivers over how its criteria end; a waiver that does not hold is noted, never passed over in
 * silence.
 */
final class Waivers {
    /** A reason shorter than this says nothing that a second reader could weigh; common practice, no source. */
    private static final int SUBSTANCE = 20;
    /** A longer one is a letter, not a reason. */
    private static final int MOST = 1_000;
    /** A stop asks for a licensed clinician to look before the next step. */
    private static final Set<Role> ANSWERS_FOR_STOPS = EnumSet.of(Role.CLINICIAN, Role.SUPERVISOR, Role.DIRECTOR);

    private final Catalogue catalogue;
    private final Optional<LocalDate> day;
    private final Map<String, Ending> endings;
    private final Map<String, AppliedWaiver> holding = new HashMap<>();
    private final List<WaiverNote> notes = new ArrayList<>();

    /** {@code endings} are those of the criteria that were judged. */
    Waivers(Catalogue catalogue, Map<String, Ending> endings, Optional<LocalDate> day) {
        this.catalogue = catalogue;
        this.day = day;
        this.endings = endings;
    }

    void apply(List<Waiver> waivers) {
        for (int i = 0; i < waivers.size(); i++) {
            apply("/waivers/" + i, waivers.get(i));
        }
    }

    /** The waivers that hold, by criterion. */
    Map<String, AppliedWaiver> holding() {
        return holding;
    }

    List<WaiverNote> notes() {
        return List.copyOf(notes);
    }

    private void apply(String pointer, Waiver w) {
        String id = w.criterion().value().orElse("");
        Criterion criterion = catalogue.criterion(id);
        Ending ending = endings.get(id);
        if (!(w.criterion().known()
                && w.reason().known()
                && w.by().known()
                && w.date().known()
                && w.expires().known())) {
            note(pointer, id, Kind.INCOMPLETE, "a waiver needs criterion, reason, role, date and expiry");
        } else if (criterion == null) {
            note(pointer, id, Kind.UNKNOWN_CRITERION, "no criterion is called " + id);
        } else if (ending == null) {
            note(
                    pointer,
                    id,
                    Kind.NOT_JUDGED,
                    "not weighed: stage " + criterion.stage().word() + " was not judged in this check");
        } else if (day.isEmpty()) {
            note(
                    pointer,
                    id,
                    Kind.UNDATED,
                    "whether it holds cannot be told: neither the case nor the call names the day of the check");
        } else if (w.date().get().isAfter(day.get())) {
            note(pointer, id, Kind.NOT_YET, "the waiver is dated " + w.date().get() + ", after the day of this check");
        } else if (w.expires().get().isBefore(day.get())) {
            note(
                    pointer,
                    id,
                    Kind.EXPIRED,
                    "the waiver expired on " + w.expires().get());
        } else if (ending == Ending.PASS || ending == Ending.DOES_NOT_APPLY) {
            note(pointer, id, Kind.NOTHING_TO_WAIVE, "there is nothing left to waive: take the waiver out");
        } else if (holding.containsKey(id)) {
            note(pointer, id, Kind.TWICE, "an earlier waiver already answers for it");
        } else if (!substance(w.reason().get(), criterion)) {
            note(
                    pointer,
                    id,
                    Kind.NO_SUBSTANCE,
                    "a finding is waived for a reason of " + SUBSTANCE + " to " + MOST
                            + " characters that does not merely repeat the criterion");
        } else if (ending == Ending.STOP && !ANSWERS_FOR_STOPS.contains(w.by().get())) {
            note(
                    pointer,
                    id,
                    Kind.WRONG_ROLE,
                    "a stop is answered for by a clinician, supervisor or director, not by the role "
                            + w.by().get().word());
        } else {
            holding.put(
                    id,
                    new AppliedWaiver(
                            pointer,
                            w.reason().get().strip(),
                            w.by().get(),
                            w.date().get(),
                            w.expires().get()));
        }
    }

    private boolean substance(String reason, Criterion c) {
        Template template = new Template(c, catalogue);
        String letters = bare(reason);
        return reason.strip().length() >= SUBSTANCE
                && reason.strip().length() <= MOST
                && letters.chars().distinct().count() >= 5
                && !letters.equals(bare(c.title()))
                && !letters.equals(bare(template.general(c.asks())))
                && !letters.equals(bare(c.id()));
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private void note(String pointer, String criterion, Kind kind, String text) {
        notes.add(new WaiverNote(pointer, criterion, kind, text));
    }
}
