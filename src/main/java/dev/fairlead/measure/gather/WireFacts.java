package dev.fairlead.measure.gather;

import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Place;
import dev.fairlead.facts.WireBuilder;
import dev.fairlead.measure.arch.FormMisfit;
import dev.fairlead.measure.wire.Stiffness;
import dev.fairlead.measure.wire.WireMeasures;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Bench;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.Section;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.WirePlan;
import java.util.List;

/** The wire in hand against the plan. */
final class WireFacts {
    private static final Place WIRE = new Place("/wire", "");

    private WireFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        WirePlan w = c.wire();
        Bench b = c.bench();
        Measured rms = b.misfitRms();
        Measured worst = b.misfitWorst();
        if (!rms.known() && !worst.known()) {
            // both measured or both computed: half of each would be the misfit of no wire
            FormMisfit computed = FormMisfit.of(c, s.arch());
            rms = computed.rms();
            worst = computed.worst();
        }
        out.add(WireBuilder.builder()
                .place(WIRE)
                .round(Answers.is(w.section(), Section.ROUND))
                .steel(steel(w.material()))
                .offPlan(w.size().minus(w.plannedSize()).abs())
                .stiffnessRatio(Stiffness.ratio(w, s.book()))
                .blankSpare(WireMeasures.blankSpare(c, s.marks(), s.book()))
                .misfitRms(rms)
                .misfitWorst(worst)
                .misfitRmsAfter(b.misfitRmsAfter())
                .misfitWorstAfter(b.misfitWorstAfter())
                .build());
    }

    /** Nickel-free steel is a stainless steel as well: manganese and nitrogen stand in for nickel. */
    private static Answer steel(Fact<Material> material) {
        return material.known()
                ? Answer.of(material.is(Material.STAINLESS_STEEL) || material.is(Material.NICKEL_FREE_STEEL))
                : Answers.absent(material);
    }
}
