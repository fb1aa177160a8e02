package dev.fairlead.findings;

import dev.fairlead.findings.WaiverNote.Kind;
import dev.fairlead.model.Choices.Role;
import dev.fairlead.model.Waiver;
import dev.fairlead.rules.Catalogue;
import dev.fairlead.rules.Criterion;
import dev.fairlead.rules.Status;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lays the case's waivers over its findings; a waiver that does not hold is noted, never passed over in silence. */
final class Waivers {
    /** A reason shorter than this says nothing that a second reader could weigh; common practice, no source. */
    private static final int SUBSTANCE = 20;
    /** A stop asks for a licensed clinician to look before the next step. */
    private static final Set<Role> ANSWERS_FOR_STOPS = EnumSet.of(Role.CLINICIAN, Role.SUPERVISOR, Role.DIRECTOR);

    private final Catalogue catalogue;
    private final Optional<LocalDate> day;
    private final Map<String, Finding> findings = new LinkedHashMap<>();
    private final List<WaiverNote> notes = new ArrayList<>();

    Waivers(Catalogue catalogue, List<Finding> findings, Optional<LocalDate> day) {
        this.catalogue = catalogue;
        this.day = day;
        findings.forEach(f -> this.findings.put(f.id(), f));
    }

    void apply(List<Waiver> waivers) {
        for (int i = 0; i < waivers.size(); i++) {
            apply("/waivers/" + i, waivers.get(i));
        }
    }

    List<Finding> findings() {
        return List.copyOf(findings.values());
    }

    List<WaiverNote> notes() {
        return List.copyOf(notes);
    }

    private void apply(String pointer, Waiver w) {
        String id = w.criterion().value().orElse("");
        Criterion criterion = catalogue.criterion(id);
        Finding finding = findings.get(id);
        if (!(w.criterion().known() && w.reason().known() && w.by().known() && w.date().known() && w.expires().known())) {
            note(pointer, id, Kind.INCOMPLETE, "a waiver needs criterion, reason, role, date and expiry");
        } else if (criterion == null) {
            note(pointer, id, Kind.UNKNOWN_CRITERION, "no criterion is called " + id);
        } else if (finding == null) {
            note(pointer, id, Kind.NOT_JUDGED, "not weighed: stage " + criterion.stage().word() + " was not judged in this check");
        } else if (day.isEmpty()) {
            note(pointer, id, Kind.UNDATED, "whether it holds cannot be told: neither the case nor the call names the day of the check");
        } else if (w.date().get().isAfter(day.get())) {
            note(pointer, id, Kind.NOT_YET, "the waiver is dated " + w.date().get() + ", after the day of this check");
        } else if (w.expires().get().isBefore(day.get())) {
            note(pointer, id, Kind.EXPIRED, "the waiver expired on " + w.expires().get());
        } else if (finding.outcome() == Status.PASS || finding.outcome() == Status.DOES_NOT_APPLY) {
            note(pointer, id, Kind.NOTHING_TO_WAIVE, "there is nothing left to waive: take the waiver out");
        } else if (finding.waiver().isPresent()) {
            note(pointer, id, Kind.TWICE, "an earlier waiver already answers for it");
        } else if (finding.weight() == Weight.STOP && !substance(w.reason().get(), criterion)) {
            note(pointer, id, Kind.NO_SUBSTANCE, "a stop is waived for a reason of substance: at least " + SUBSTANCE
                    + " characters that do not merely repeat the criterion");
        } else if (finding.weight() == Weight.STOP && !ANSWERS_FOR_STOPS.contains(w.by().get())) {
            note(pointer, id, Kind.WRONG_ROLE, "a stop is answered for by a clinician, supervisor or director, not by the role "
                    + w.by().get().word());
        } else {
            findings.put(id, finding.waivedBy(new AppliedWaiver(pointer, w.reason().get().strip(), w.by().get(), w.date().get(), w.expires().get())));
        }
    }

    private static boolean substance(String reason, Criterion c) {
        String letters = bare(reason);
        return reason.strip().length() >= SUBSTANCE && letters.chars().distinct().count() >= 5
                && !letters.equals(bare(c.title())) && !letters.equals(bare(c.asks())) && !letters.equals(bare(c.id()));
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private void note(String pointer, String criterion, Kind kind, String text) {
        notes.add(new WaiverNote(pointer, criterion, kind, text));
    }
}
