package dev.fairlead.audit.outcome;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.Measures;
import dev.fairlead.measure.Worked;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.schedule.SideGain;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.model.Case;
import dev.fairlead.model.Clinic;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Finished cases of an invented clinic whose truth is known: how far incisors tip, space grows and wires run down. */
record SimulatedClinic(Clinic.Spread tipping, Clinic.Spread rate, Clinic.Spread gain) {
    /** {@code n} cases at holding, with errors of reading of the size that the program assumes. */
    List<Case> cases(int n, long seed) {
        Random r = new Random(seed);
        List<Case> all = new ArrayList<>();
        for (long i = 0; all.size() < n; i++) {
            Case c = Cohort.clean(seed, i);
            if (c.stage().is(Stage.HOLDING)) {
                all.add(finished(c, r));
            }
        }
        return all;
    }

    private Case finished(Case c, Random r) {
        double tips = tipping.mean() + tipping.sd() * r.nextGaussian();
        double runs = Math.max(0.05, rate.mean() + rate.sd() * r.nextGaussian());
        double grows = gain.mean() + gain.sd() * r.nextGaussian();
        Worked w = worked(c, Clinic.PUBLISHED);
        CaseTree tree = CaseTree.of(c);
        // the truth is the case as written; what is read of it before is off by the errors of film and segments
        double before = c.headFilm().incisorMandibular().value();
        double angle = ErrorKind.FILM_ANGLE.defaultSd();
        double change = w.position().inclination().value() - before;
        tree.set("/headFilm/incisorMandibular", before + angle * r.nextGaussian());
        tree.set("/holding/incisorMandibular", before + tips * change + angle * r.nextGaussian());
        tree.set("/space/incisors", c.space().incisors().value() + ErrorKind.SEGMENT.defaultSd() * r.nextGaussian());
        for (Side side : Side.values()) {
            double start = w.space()
                    .side(side)
                    .required()
                    .minus(w.space().side(side).shortage())
                    .value();
            double segment = ErrorKind.SEGMENT.defaultSd();
            double grown = grows * SideGain.PER_ADVANCE * c.plan().advance(side).value();
            tree.set(
                    "/holding/space" + (side == Side.LEFT ? "Left" : "Right"),
                    start + grown + segment * r.nextGaussian());
            tree.set("/space/" + side.word(), c.space().side(side).value() + segment * r.nextGaussian());
            double at = start;
            for (int v = 0; v < c.visits().size(); v++) {
                double share = Math.max(0.02, runs + 0.15 * r.nextGaussian());
                String visit = "/visits/" + v + "/" + side.word();
                double stood = c.visits().get(v).side(side).standOff().value();
                tree.set(visit + "/space", at + segment * r.nextGaussian());
                tree.set(
                        visit + "/standOff",
                        Math.max(0.1, stood + ErrorKind.MOUTH_RULER.defaultSd() * r.nextGaussian()));
                at += share * stood * SideGain.PER_ADVANCE;
            }
        }
        return read(tree);
    }

    private static Case read(CaseTree tree) {
        return CaseReader.read(
                        tree.text(CaseFormat.JSON).getBytes(StandardCharsets.UTF_8), "simulated", CaseFormat.JSON)
                .value()
                .orElseThrow();
    }

    static Worked worked(Case c, Clinic clinic) {
        return Measures.of(
                c, Optional.empty(), Workbook.none(), Calculations.plain().of(clinic));
    }

    static List<Attained> attained(Case c, Clinic clinic) {
        return Outcomes.of(c, worked(c, clinic), clinic);
    }

    static Outturn outturn(List<Case> cases, Clinic clinic) {
        Outturn.Counter counter = new Outturn.Counter();
        cases.forEach(c -> counter.add(c.resident().value().orElse(""), attained(c, clinic)));
        return counter.outturn();
    }
}
