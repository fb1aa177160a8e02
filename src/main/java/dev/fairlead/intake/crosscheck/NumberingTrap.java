package dev.fairlead.intake.crosscheck;

import dev.fairlead.intake.bind.Numbering;
import dev.fairlead.model.Case;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothRecord;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Finds Universal numbers that are valid ISO 3950 numbers of other teeth: the Universal 23-26 are the lower incisors,
 * and the ISO 23-26 an upper canine, two premolars and a molar.
 */
final class NumberingTrap {
    private static final List<Tooth> UNIVERSAL_INCISORS =
            List.of(Tooth.of(23), Tooth.of(24), Tooth.of(25), Tooth.of(26));
    /** No permanent upper first molar is so narrow: the mean is 10 mm and more in every published table. */
    private static final double NARROWEST_UPPER_MOLAR = 8;
    /** Lower incisors are narrower; of the upper canine and premolars together hardly any. */
    private static final double WIDEST_LOWER_INCISOR = 6.5;

    private NumberingTrap() {}

    static void check(Case c, CrossChecks to) {
        teeth(c, to);
        if (Tooth.LOWER_INCISORS.containsAll(c.hardware().brackets().keySet())) {
            return;
        }
        for (Tooth t : c.hardware().brackets().keySet().stream().sorted().toList()) {
            if (UNIVERSAL_INCISORS.contains(t)) {
                Tooth meant = Numbering.universal(t.toString()).orElseThrow();
                to.error(
                        "/hardware/brackets/" + t,
                        "a lower incisor: 42, 41, 31 or 32",
                        t.toString(),
                        "a number of the Universal system for " + meant,
                        "write " + meant);
            } else if (!Tooth.LOWER_INCISORS.contains(t)) {
                to.doubt(
                        "/hardware/brackets/" + t,
                        "a lower incisor: 42, 41, 31 or 32",
                        t.toString(),
                        "",
                        "only brackets of the lower incisors are judged");
            }
        }
    }

    private static void teeth(Case c, CrossChecks to) {
        for (Tooth t : Tooth.LOWER_INCISORS) {
            if (told(c.tooth(t))) {
                return;
            }
        }
        List<Tooth> given =
                UNIVERSAL_INCISORS.stream().filter(t -> told(c.tooth(t))).toList();
        if (given.size() < 2) {
            return;
        }
        boolean narrowMolar = c.tooth(Tooth.of(26)).width().known()
                && c.tooth(Tooth.of(26)).width().value() < NARROWEST_UPPER_MOLAR;
        boolean gingiva = given.stream()
                .map(c::tooth)
                .anyMatch(r -> r.gingivaThickness().known()
                        || r.keratinised().known()
                        || r.recession().known());
        boolean narrow =
                given.stream().map(c::tooth).filter(r -> r.width().known()).count() > 1
                        && given.stream()
                                .map(c::tooth)
                                .filter(r -> r.width().known())
                                .allMatch(r -> r.width().value() <= WIDEST_LOWER_INCISOR);
        boolean upperElsewhere =
                c.teeth().keySet().stream().anyMatch(t -> !t.lower() && !UNIVERSAL_INCISORS.contains(t));
        String meant = given.stream()
                .map(t -> t + " as " + Numbering.universal(t.toString()).orElseThrow())
                .collect(Collectors.joining(", "));
        String found = "no lower incisor, but "
                + given.stream().map(Tooth::toString).collect(Collectors.joining(", ")) + " of the upper left";
        String pointer = "/teeth/" + given.get(0);
        if (narrowMolar || gingiva || narrow) {
            to.error(
                    pointer,
                    "the lower incisors 42, 41, 31, 32",
                    found
                            + (narrowMolar || narrow
                                    ? " with widths of lower incisors"
                                    : " with labial gingiva recorded"),
                    "numbers of the Universal system",
                    "write " + meant);
        } else if (!upperElsewhere) {
            to.doubt(
                    pointer,
                    "the lower incisors 42, 41, 31, 32",
                    found,
                    "numbers of the Universal system",
                    "if so, write " + meant);
        }
    }

    private static boolean told(ToothRecord r) {
        return r.state().known()
                || r.width().known()
                || r.gingivaThickness().known()
                || r.keratinised().known()
                || r.recession().known();
    }
}
