package dev.fairlead.measure.gather;

import dev.fairlead.facts.BiteBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.MouthBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.Sides;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import java.util.List;

/** Bite, hygiene, tolerance, roots and consent. */
final class MouthFacts {
    private static final Place BITE = new Place("/bite", "");
    private static final Place MOUTH = new Place("/mouth", "");

    private MouthFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        out.add(BiteBuilder.builder()
                .place(BITE)
                .overjet(c.bite().overjet())
                .overjetAfter(s.position().overjet())
                .overbiteAfter(s.position().overbite())
                .anb(s.readings().anb())
                .anteriorShift(c.bite().anteriorShift())
                .midlineOff(c.bite().lowerMidline().abs())
                .sidedPlan(Answers.sided(c.plan()))
                .carriesBack(carriesBack(c))
                .build());
        out.add(MouthBuilder.builder()
                .place(MOUTH)
                .plaqueScore(c.mouth().plaqueScore())
                .untreatedCaries(c.mouth().untreatedCaries())
                .activeGingivitis(c.mouth().activeGingivitis())
                .nickelSensitivity(c.mouth().nickelSensitivity())
                .wireBearsNickel(bearsNickel(c.wire().material()))
                .shortRoots(c.films().shortRoots())
                .resorption(c.films().resorption())
                .guardianConsent(c.consent().guardian())
                .stabilityExplained(c.consent().stabilityExplained())
                .build());
    }

    /**
     * Opening one fold turns the front away from that side: the side to which the midline is shifted has to advance
     * more. Nothing to carry back where the midline stands in the face or the plan is not sided.
     */
    private static Answer carriesBack(Case c) {
        Fact<Sides> more = c.plan().moreOn();
        Measured midline = c.bite().lowerMidline();
        if (!more.known() || !midline.known()) {
            return more.applies() && midline.applies()
                    ? Answer.unknown(Pointers.union(midline.missing(), more.missing()))
                    : Answer.NOT_APPLICABLE;
        }
        if (!Answers.sided(c.plan()).yes() || midline.value() == 0) {
            return Answer.NOT_APPLICABLE;
        }
        return Answer.of(more.is(midline.value() > 0 ? Sides.LEFT : Sides.RIGHT));
    }

    /**
     * Stainless steel, nickel-titanium and cobalt-chromium wires contain nickel; beta-titanium and nickel-free steel do
     * not.
     */
    private static Answer bearsNickel(Fact<Material> material) {
        return material.known()
                ? Answer.of(!material.is(Material.BETA_TITANIUM) && !material.is(Material.NICKEL_FREE_STEEL))
                : Answers.absent(material);
    }
}
