package dev.fairlead.audit.cohort;

import static dev.fairlead.audit.cohort.Draws.tenth;

import dev.fairlead.model.ArchMeasures;
import dev.fairlead.model.Bench;
import dev.fairlead.model.Bracket;
import dev.fairlead.model.Contacts;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Hardware;
import dev.fairlead.model.InsertedSide;
import dev.fairlead.model.Insertion;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Tube;
import dev.fairlead.model.WirePlan;
import dev.fairlead.model.shape.Draft;
import java.util.HashMap;
import java.util.Map;

/** Brackets, wire, folds and insertion of an invented child in whom nothing went wrong. */
final class BaselineWire {
    /** 0.020 in. */
    private static final double WIRE = 0.508;
    /** 0.022 in. */
    private static final double SLOT = 0.559;
    /**
     * Arch run beyond the perimeter, two folds of 1 mm bends and 3 mm legs, tubes and tails, mm; beam model of the
     * wire.
     */
    private static final double BEYOND_PERIMETER = 36;

    private final InventedChild s;
    private final Draws d;

    BaselineWire(InventedChild sketch, Draws draws) {
        s = sketch;
        d = draws;
    }

    Hardware hardware(Contacts contactsNow) {
        Map<Tooth, Bracket> brackets = new HashMap<>();
        for (Tooth t : Tooth.LOWER_INCISORS) {
            double central = s.teeth().width(t.side(), 1);
            double middle =
                    t.position() == 1 ? central / 2 : central + s.teeth().width(t.side(), 2) / 2;
            brackets.put(
                    t,
                    Draft.of(Bracket.class, "/hardware/brackets/" + t)
                            .set("slot", SLOT)
                            .set("bonded", true)
                            .set("loose", false)
                            .set("fromMidline", tenth(middle))
                            .make());
        }
        return Draft.of(Hardware.class, "/hardware")
                .set("brackets", brackets)
                .set("left", tube("/hardware/left"))
                .set("right", tube("/hardware/right"))
                .set("flexibleWireFirst", true)
                .set("contactsNow", contactsNow)
                .set("modelOverBands", true)
                .set("buccalSegmentsFree", true)
                .make();
    }

    private Tube tube(String pointer) {
        return Draft.of(Tube.class, pointer)
                .set("height", SLOT)
                .set("length", 3)
                .set("cemented", true)
                .set("loose", false)
                .set("marginsSeated", true)
                .set("hook", true)
                .set("aboveBrackets", d.tenth(0, 0.5))
                .make();
    }

    WirePlan wire(ArchMeasures arch) {
        double perimeter = perimeter(arch);
        return Draft.of(WirePlan.class, "/wire")
                .set("material", "stainless-steel")
                .set("section", "round")
                .set("plannedSize", WIRE)
                .set("size", WIRE)
                .set("modulus", d.whole(175, 185))
                .set("proofStrength", 50 * d.whole(29, 33))
                .set("temper", "hard")
                .set("formClass", "ovoid")
                .set("formMolarWidth", tenth(arch.molarWidth().value() + d.uniform(-0.2, 0.4)))
                .set("formCanineWidth", tenth(arch.canineWidth().value() + d.uniform(-0.2, 0.3)))
                .set("formDepth", tenth(arch.molarDepth().value() + d.uniform(-0.2, 0.3)))
                .set("reshaped", true)
                .set("beakRadius", 0.75)
                .set("blankLength", Math.rint(perimeter + BEYOND_PERIMETER + d.uniform(13, 17)))
                .make();
    }

    /** Beta function about 44 by 24 mm (Braun et al. 1998), to first order. */
    private static double perimeter(ArchMeasures arch) {
        return 69.29
                + 1.585 * (arch.molarDepth().value() - 24)
                + 0.69 * (arch.molarWidth().value() - 44);
    }

    Bench bench(ArchMeasures arch) {
        double mark = perimeter(arch) / 2 + 6.5;
        double rms = d.tenth(0.2, 0.6);
        return Draft.of(Bench.class, "/bench")
                .set("midlineMarked", true)
                .set("left", fold("/bench/left", mark))
                .set("right", fold("/bench/right", mark))
                .set("otherSideMarkedSeated", true)
                .set("misfitRms", rms)
                .set("misfitWorst", tenth(rms * 2.1))
                .set("misfitRmsAfter", tenth(rms + 0.1))
                .set("misfitWorstAfter", tenth(rms * 2.1 + 0.2))
                .set("passiveGap", d.tenth(0, 0.3))
                .set("rebends", d.whole(0, 1))
                .make();
    }

    private Fold fold(String pointer, double mark) {
        return Draft.of(Fold.class, pointer)
                .set("firstMark", tenth(mark + d.uniform(-0.2, 0.2)))
                .set("firstBendOffset", d.tenth(2.1, 2.5))
                .set("length", d.tenth(2.9, 3.2))
                .set("height", 4)
                .set("bendRadius", d.one(0.7, 0.75, 0.8))
                .set("outOfSquare", d.whole(0, 3))
                .set("legsOutOfParallel", d.whole(0, 3))
                .set("clearGingiva", d.tenth(1.4, 2))
                .set("clearCheek", d.tenth(3.2, 4))
                .set("buccalTip", d.whole(17, 23))
                .make();
    }

    Insertion insertion() {
        return Draft.of(Insertion.class, "/insertion")
                .set("left", end(Side.LEFT))
                .set("right", end(Side.RIGHT))
                .set("gingivalClearance", d.tenth(0.9, 1.5))
                .set("blanching", false)
                .set("passiveGap", d.tenth(0, 0.3))
                .set("bracketsTied", 4)
                .set("eyeProtection", true)
                .set("airwayGuard", true)
                .set("instructionsGiven", true)
                .set("date", s.start())
                .set("answeredBy", d.one("resident", "clinician", "supervisor"))
                .set("initials", Fact.notApplicable())
                .set("time", Fact.notApplicable())
                .make();
    }

    private InsertedSide end(Side side) {
        return Draft.of(InsertedSide.class, "/insertion/" + side.word())
                .set("endProud", d.tenth(0, 0.3))
                .set("cutEndCaught", true)
                .set("bentBehind", false)
                .set("stopGap", d.tenth(0, 0.15))
                .set("underHook", true)
                .set("cheekSore", false)
                .make();
    }
}
