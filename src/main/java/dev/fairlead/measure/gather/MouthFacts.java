package dev.fairlead.measure.gather;

import dev.fairlead.facts.BiteBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.MouthBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Material;
import dev.fairlead.model.Choices.MolarRelation;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Measured;
import java.util.List;

/** Bite, hygiene, history, habits, tolerance, roots and consent. */
final class MouthFacts {
    private static final Place BITE = new Place("/bite", "");
    private static final Place MOUTH = new Place("/mouth", "");

    private MouthFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        Midline midline = Midline.of(c);
        out.add(BiteBuilder.builder()
                .place(BITE)
                .overjet(c.bite().overjet())
                .overjetAfter(s.position().overjet())
                .overjetSoFar(
                        Bounds.or(s.position().overjet(), s.position().mildest().overjet()))
                .overbiteAfter(Bounds.or(
                        s.position().overbite(), s.position().mildest().overbite()))
                .overbiteLeast(s.position().overbiteLeast())
                .biteOnBrackets(c.bite().biteOnBrackets())
                .overbiteWithoutWord(
                        c.bite().biteOnBrackets().known()
                                ? Measured.notApplicable()
                                : c.bite().overbite())
                .anb(s.readings().anb())
                .anteriorShift(c.bite().anteriorShift())
                .molarsClassThree(Answers.is(c.bite().molarLeft(), MolarRelation.CLASS_III)
                        .and(Answers.is(c.bite().molarRight(), MolarRelation.CLASS_III)))
                .familyClassThree(c.child().familyClassIII())
                .midlineOff(c.bite().lowerMidline().abs())
                .midlineAfter(midline.after().abs())
                .amountsDiffer(midline.amountsDiffer())
                .carriesOff(midline.carriesOff())
                .wordAgrees(midline.wordAgrees())
                .build());
        out.add(MouthBuilder.builder()
                .place(MOUTH)
                .plaqueScore(c.mouth().plaqueScore())
                .untreatedCaries(c.mouth().untreatedCaries())
                .activeGingivitis(c.mouth().activeGingivitis())
                .nickelExposed(
                        c.mouth().nickelSensitivity().and(bearsNickel(c.wire().material())))
                .shortRoots(c.films().shortRoots())
                .resorption(c.films().resorption())
                .guardianConsent(c.consent().guardian())
                .stabilityExplained(c.consent().stabilityExplained())
                .risksExplained(c.consent().risksExplained())
                .historyTaken(c.child().historyTaken())
                .medicalFinding(c.child().medicalFinding())
                .medicalSettled(
                        Answers.settled(c.child().medicalFinding(), c.child().medicalAdvice(), "/child/medicalAdvice"))
                .habitsLookedFor(c.mouth().habitsLookedFor())
                .habit(c.mouth().habit())
                .habitSettled(Answers.settled(c.mouth().habit(), c.plan().habitAddressed(), "/plan/habitAddressed"))
                .build());
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
