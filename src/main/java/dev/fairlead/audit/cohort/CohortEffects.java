package dev.fairlead.audit.cohort;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.Case;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Known differences between the residents of an invented cohort, so that an audit can be held to the truth: eight
 * residents, of whom one often goes without consent, one leaves films and mouth out, and one gets better with time; and
 * some cases come in two states.
 */
public final class CohortEffects {
    /** The residents. */
    public static final int RESIDENTS = 8;
    /** Consent is not recorded in this share of the cases of {@link #NO_CONSENT}. */
    public static final double SHARE_WITHOUT_CONSENT = 0.5;

    public static final String NO_CONSENT = "r03";
    public static final String GAPS = "r06";
    public static final String LEARNS = "r08";
    /** In the finished cases of this one the incisors end so many degrees farther back than in those of others. */
    public static final String TIPS_LESS = "r05";

    public static final double DEGREES_LESS = 3;
    /** One case in so many has an earlier state before it. */
    public static final int STATES = 7;

    private static final List<String> LEFT_OUT = List.of("/films", "/mouth");
    private static final List<String> LATER =
            List.of("/holding", "/visits", "/insertion", "/bench", "/hardware", "/waivers");
    /** Of these a resident who learns has many at first and few at last. */
    private static final List<String> LEARNT =
            List.of("overjet-after", "first-bend-offset", "passive-on-model", "legs-parallel", "hygiene-and-caries");

    private CohortEffects() {}

    /** The effects in words, one a line, as they are written beside the cases. */
    public static String told() {
        return NO_CONSENT + ": consent or explanation not recorded in " + Math.round(100 * SHARE_WITHOUT_CONSENT)
                + " % of the cases without gaps that have come so far\n"
                + GAPS + ": films and mouth left out of every case\n"
                + LEARNS + ": faults of five criteria in 60 % of the first cases and 0 % of the last\n"
                + TIPS_LESS + ": incisors end " + Math.round(DEGREES_LESS)
                + " degrees farther back than in cases of others that reached holding\n"
                + "one case in " + STATES + " has an earlier state before it\n";
    }

    /** Case {@code index} of a seed with the effects of its resident. */
    public static PlantedCase one(long seed, long index) {
        PlantedCase c = Cohort.one(seed, index);
        Draws d = Draws.of(seed ^ 0x5eed, index);
        String resident = String.format("r%02d", 1 + index % RESIDENTS);
        Case made = changed(c.made(), "/resident", resident);
        List<Planted> planted = new ArrayList<>(c.planted());
        if (resident.equals(NO_CONSENT)) {
            made = plant("consent-recorded", SHARE_WITHOUT_CONSENT, made, planted, d);
        }
        if (resident.equals(LEARNS)) {
            double late = made.date()
                    .value()
                    .map(day -> (day.toEpochDay() - InventedChild.FIRST_DAY.toEpochDay()) / 900.0)
                    .orElse(0.5);
            for (String criterion : LEARNT) {
                made = plant(criterion, 0.6 * Math.max(0, 1 - late), made, planted, d);
            }
        }
        if (resident.equals(GAPS)) {
            CaseTree tree = CaseTree.of(made);
            LEFT_OUT.forEach(tree::remove);
            made = read(tree);
        }
        if (resident.equals(TIPS_LESS) && made.holding().incisorMandibular().known()) {
            CaseTree tree = CaseTree.of(made);
            tree.set(
                    "/holding/incisorMandibular",
                    made.holding().incisorMandibular().value() - DEGREES_LESS);
            made = read(tree);
        }
        return new PlantedCase(made, planted);
    }

    private static Case plant(String criterion, double chance, Case c, List<Planted> planted, Draws d) {
        if (planted.stream().anyMatch(p -> p.kind() == Planted.Kind.NOT_ASSESSED)) {
            // a case with gaps has no faults, as in every cohort: its facts would not carry them
            return c;
        }
        for (Fault f : Cohort.faults()) {
            boolean free = planted.stream().noneMatch(p -> p.criterion().equals(criterion));
            if (f.criterion().equals(criterion) && free && f.fits(c) && d.chance(chance)) {
                planted.add(f.planted(c));
                return f.in(c, d);
            }
        }
        return c;
    }

    /** The case as it stood before anything was made of the plan, or nothing where it has one state only. */
    public static Optional<Case> earlier(PlantedCase c, long index) {
        if (index % STATES != 0) {
            return Optional.empty();
        }
        CaseTree tree = CaseTree.of(c.made());
        LATER.forEach(tree::remove);
        tree.set("/stage", "records");
        LocalDate day = c.made().date().value().orElse(InventedChild.FIRST_DAY).minusDays(200);
        tree.set("/date", day.toString());
        return Optional.of(read(tree));
    }

    private static Case changed(Case c, String pointer, String value) {
        CaseTree tree = CaseTree.of(c);
        tree.set(pointer, value);
        return read(tree);
    }

    private static Case read(CaseTree tree) {
        return dev.fairlead.intake.CaseReader.read(
                        tree.text(CaseFormat.JSON).getBytes(StandardCharsets.UTF_8), "invented", CaseFormat.JSON)
                .value()
                .orElseThrow();
    }
}
