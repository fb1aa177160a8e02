package dev.fairlead.report.wire;

import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.mechanics.answer.ForceBand;
import dev.fairlead.measure.mechanics.answer.Solution;
import dev.fairlead.measure.wire.DrawnForces;
import dev.fairlead.measure.wire.MolarMoment;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** What the beam model says of a tied-in wire, as tables. */
final class ForceSections {
    static final String MODEL = "mechanics-model";
    private static final List<String> FORCE = List.of("gf", "N");
    private static final String[] WITH_MODULUS = {MODEL, "goldberg-1977", "brantley-eliades-2001"};

    private final WireForces f;
    private final Case c;
    private final OptionalInt visit;

    ForceSections(WireForces forces, Case c, OptionalInt visit) {
        this.f = forces;
        this.c = c;
        this.visit = visit;
    }

    List<Section> all() {
        if (f.band().isEmpty()) {
            return List.of(nothing());
        }
        List<Section> all = new ArrayList<>(List.of(
                force(f.band().get()), molars(f.band().get()), stress(f.band().get())));
        all.add(vertical());
        return all;
    }

    private Section nothing() {
        Section.Draft t = new Section.Draft("force", "Force", FORCE);
        t.line(
                "total",
                "total labial force",
                List.of(new Cell("not assessed", Measured.unknown(f.missing()), Optional.empty())),
                MODEL);
        if (f.missing().isEmpty()) {
            Section.Draft none = new Section.Draft("force", "Force: not assessed", FORCE);
            f.failures().forEach(why -> none.note("Not assessed: " + why + "."));
            gauge(none);
            return none.done();
        }
        gauge(t);
        return t.done();
    }

    private void gauge(Section.Draft t) {
        if (visit.isPresent()) {
            Measured read = c.visits().get(visit.getAsInt()).gauge();
            if (read.known()) {
                t.line("gauge", "read on a gauge at tie-in", both(read.value(), read.value()));
                t.note("The gauge reading stands; it overrides the model's total.");
            }
            return;
        }
        List<String> readings = new ArrayList<>();
        for (int i = 0; i < c.visits().size(); i++) {
            if (c.visits().get(i).gauge().known()) {
                readings.add(Numbers.text(c.visits().get(i).gauge()) + " at visit " + (i + 1));
            }
        }
        if (!readings.isEmpty()) {
            t.note("Read on a gauge: " + String.join(", ", readings)
                    + ". Where it was read that stands, and overrides the model.");
        }
    }

    private Section force(ForceBand b) {
        Section.Draft t = new Section.Draft("force", "Total labial force as tied in", FORCE)
                .line("band", "least to most: modulus, ties, folds", ends(b), WITH_MODULUS)
                .line("drawn", "  5 to 95 % by draws of what was measured", drawn(), MODEL)
                .line(
                        "hingedToHeld",
                        "tail hinging in the tube, to held by it",
                        newtons(b.hinged().forward(), b.held().forward()),
                        MODEL)
                .line("quarter", "a quarter of least to most, mean", newtons(b.low() / 4, b.high() / 4), MODEL);
        gauge(t);
        after(t, b, b.heldCurve().points().get(1).movement());
        after(t, b, b.heldCurve().points().get(2).movement());
        b.rightOnly().ifPresent(o -> oneSide(t, "right", o));
        b.leftOnly().ifPresent(o -> oneSide(t, "left", o));
        t.note((f.foldsMeasured()
                        ? "Folds as measured. "
                        : "What was not measured of the folds is as planned; least and most allow for 0.25 mm in the radius and 1 mm in"
                                + " the length. ")
                + modulus() + " " + b.variants() + " variants were solved.");
        return t.done();
    }

    private String modulus() {
        String from = Numbers.plain(f.modulus().orElseThrow().low() / 1000, 0);
        return f.modulus().get().declared()
                ? "Modulus " + from + " GPa, as declared."
                : "Modulus " + from + " to " + Numbers.plain(f.modulus().get().high() / 1000, 0)
                        + " GPa, none being declared.";
    }

    /** Both ends with the errors of what was measured, to first order, as a check has them. */
    private List<Cell> ends(ForceBand b) {
        Measured low = f.end(c, false);
        Measured high = f.end(c, true);
        double newton = Unit.GF.to(Unit.NEWTON, 1);
        return List.of(
                Cell.between(low, high),
                Cell.between(low.chain(b.low(), newton, Unit.NEWTON), high.chain(b.high(), newton, Unit.NEWTON)));
    }

    private List<Cell> drawn() {
        DrawnForces d = f.drawn(c).orElseThrow();
        return both(d.low().p5(), d.high().p95());
    }

    private static void after(Section.Draft t, ForceBand b, double movement) {
        OptionalDouble hinged = b.hingedCurve().forwardAfter(movement);
        OptionalDouble held = b.heldCurve().forwardAfter(movement);
        if (movement < b.heldCurve().standOff() && hinged.isPresent() && held.isPresent()) {
            t.line(
                    "after" + Numbers.plain(movement * 100, 0),
                    "after " + Numbers.plain(movement, 2) + " mm of movement, hinging to held",
                    newtons(hinged.getAsDouble(), held.getAsDouble()),
                    MODEL);
        }
    }

    private static void oneSide(Section.Draft t, String side, ForceBand.OneSide o) {
        t.line(
                side + "Only",
                side + " fold alone (" + percent(o.shareHinged(), o.shareHeld()) + " % of both)",
                newtons(o.hinged(), o.held()),
                MODEL);
    }

    private static String percent(double a, double b) {
        String low = Numbers.plain(100 * Math.min(a, b), 0);
        String high = Numbers.plain(100 * Math.max(a, b), 0);
        return low.equals(high) ? low : low + " to " + high;
    }

    private static List<Cell> newtons(double a, double b) {
        return both(Unit.NEWTON.to(Unit.GF, a), Unit.NEWTON.to(Unit.GF, b));
    }

    private static List<Cell> both(double a, double b) {
        return List.of(
                Cell.range(a, b, Unit.GF),
                Cell.range(Unit.GF.to(Unit.NEWTON, a), Unit.GF.to(Unit.NEWTON, b), Unit.NEWTON));
    }

    private Section molars(ForceBand b) {
        return new Section.Draft("molars", "What the molars and the cheek get, tail hinging to held", Section.SIDES)
                .line(
                        "distal",
                        "force on the molar, distally",
                        ends(b, Unit.NEWTON, s -> -s.force().y()),
                        MODEL)
                .line("buccal", "force on the molar, towards the cheek", buccal(b), MODEL)
                .line(
                        "moment",
                        "couple at the tube, N mm; + tips distally",
                        ends(b, Unit.RATIO, MolarMoment::couple),
                        MODEL)
                .line("tipping", "moment about its resistance, N mm", tipping(b), MODEL, "from-memory")
                .line(
                        "foldSwing",
                        "fold swings towards the cheek by",
                        ends(b, Unit.MM, Solution.Side::foldSwing),
                        MODEL)
                .line("runSwing", "run in front of it swings by", ends(b, Unit.MM, Solution.Side::runSwing), MODEL)
                .note(
                        "The couple is that of the wire in the tube; minus tips the crown mesially. What tips the molar is this and the distal force times its height over the centre of resistance, taken "
                                + Numbers.text(MolarMoment.depth())
                                + " below the tube (from memory). The vertical force is left out.")
                .note("Together the molars get as much distally as the incisors get labially, always.")
                .done();
    }

    private static List<Cell> ends(ForceBand b, Unit unit, ToDoubleFunction<Solution.Side> what) {
        return List.of(
                Cell.range(
                        what.applyAsDouble(b.hinged().right()),
                        what.applyAsDouble(b.held().right()),
                        unit),
                Cell.range(
                        what.applyAsDouble(b.hinged().left()),
                        what.applyAsDouble(b.held().left()),
                        unit));
    }

    private static List<Cell> tipping(ForceBand b) {
        return List.of(
                Cell.between(
                        MolarMoment.tipping(b.hinged().right()),
                        MolarMoment.tipping(b.held().right())),
                Cell.between(
                        MolarMoment.tipping(b.hinged().left()),
                        MolarMoment.tipping(b.held().left())));
    }

    private static List<Cell> buccal(ForceBand b) {
        return List.of(
                Cell.range(
                        -b.hinged().right().force().x(),
                        -b.held().right().force().x(),
                        Unit.NEWTON),
                Cell.range(
                        b.hinged().left().force().x(), b.held().left().force().x(), Unit.NEWTON));
    }

    private Section stress(ForceBand b) {
        double most = f.judgedStress();
        DrawnForces.Spread drawn = f.drawn(c).orElseThrow().stress();
        Section.Draft t = new Section.Draft("stress", "Stress", List.of("tail hinging", "tail held"))
                .line(
                        "peak",
                        "peak bending stress, usual modulus",
                        List.of(
                                Cell.of(b.hinged().peak().inner(), Unit.MPA),
                                Cell.of(b.held().peak().inner(), Unit.MPA)),
                        MODEL)
                .line("peakMost", "  held, highest modulus: judged by this", List.of(Cell.of(most, Unit.MPA)), MODEL)
                .line(
                        "peakDrawn",
                        "    5 to 95 % by draws",
                        List.of(Cell.range(drawn.p5(), drawn.p95(), Unit.MPA)),
                        MODEL)
                .line(
                        "proof",
                        "0.2 % proof strength",
                        List.of(Cell.of(f.proof())),
                        f.proof().known() ? new String[] {"from-memory"} : new String[0]);
        if (f.proof().known()) {
            t.note(
                    "The peak is " + Numbers.text(Math.abs(f.proof().value() - most), Unit.MPA)
                            + (most <= f.proof().value() ? " below" : " over") + " the proof strength"
                            + (most <= f.proof().value()
                                    ? "."
                                    : ": the wire takes a set. Its forces are then lower than those above, which are for a wire that does not yield."));
        }
        for (ForceBand.StressReach r : b.stress()) {
            t.line(
                    "reach" + Numbers.plain(r.limit(), 0),
                    Numbers.text(r.limit(), Unit.MPA) + " is reached at a stand-off of",
                    List.of(reach(r.hinged(), r.searchedTo()), reach(r.earliest(), r.searchedTo())),
                    MODEL);
        }
        return t.note(
                        "Held: with the highest modulus, so the earliest. Stress in a bend is that of its inner side, about 1.2 times the nominal one.")
                .done();
    }

    private static Cell reach(OptionalDouble at, double searchedTo) {
        return at.isPresent()
                ? Cell.of(at.getAsDouble(), Unit.MM)
                : Cell.words("over " + Numbers.text(searchedTo, Unit.MM));
    }

    private Section vertical() {
        Section.Draft t = new Section.Draft("vertical", "Vertical force", FORCE);
        if (f.vertical().isEmpty()) {
            return t.note(
                            "Not shown: only with the heights of both tubes above the brackets measured is even its sign known.")
                    .done();
        }
        double least = f.vertical().get().least();
        double most = f.vertical().get().most();
        return t.line("vertical", "total on the incisors; minus intrudes", newtons(least, most), MODEL)
                .note(
                        most <= 0
                                ? "It intrudes in both conditions of the tube."
                                : least >= 0
                                        ? "It extrudes in both conditions of the tube."
                                        : "It may intrude or extrude: the tube decides.")
                .done();
    }
}
