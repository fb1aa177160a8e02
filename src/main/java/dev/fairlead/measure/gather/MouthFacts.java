package dev.fairlead.measure.gather;

import dev.fairlead.facts.Bite;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.Mouth;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Fact;
import java.util.List;

/** Bite, hygiene, tolerance, roots and consent. */
final class MouthFacts {
    private static final Place BITE = new Place("/bite", "");
    private static final Place MOUTH = new Place("/mouth", "");

    private MouthFacts() {}

    static void add(Source s, List<CaseFact> out) {
        Case c = s.c();
        out.add(new Bite(BITE, c.bite().overjet(), s.position().overjet(), s.position().overbite(), s.readings().anb(),
                c.bite().anteriorShift(), c.bite().lowerMidline().abs(), Answers.sided(c.plan())));
        out.add(new Mouth(MOUTH, c.mouth().plaqueScore(), c.mouth().untreatedCaries(), c.mouth().activeGingivitis(),
                c.mouth().nickelSensitivity(), bearsNickel(c.wire().material()), c.films().shortRoots(), c.films().resorption(),
                c.consent().guardian(), c.consent().stabilityExplained()));
    }

    /** Stainless steel, nickel-titanium and cobalt-chromium wires contain nickel; beta-titanium and nickel-free steel do not. */
    private static Answer bearsNickel(Fact<Material> material) {
        return material.known()
                ? Answer.of(!material.is(Material.BETA_TITANIUM) && !material.is(Material.NICKEL_FREE_STEEL))
                : Answers.absent(material);
    }
}
