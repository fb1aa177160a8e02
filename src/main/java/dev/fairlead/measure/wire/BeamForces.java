package dev.fairlead.measure.wire;

import dev.fairlead.measure.working.LatestAnswers;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Unit;
import dev.fairlead.model.Visit;
import java.util.List;

/**
 * Forces and stress at a visit by the beam model of the whole wire.
 *
 * <p>The two ends of the force are those of the model: tail hinging in the tube or held by it, three ways of tying, and
 * the range of the modulus where none is declared. Their standard error is that of what was measured; that of the model
 * is not in it.
 */
public final class BeamForces implements ForceModel {
    private static final int REMEMBERED = 512;
    private static final LatestAnswers<BeamCase, BeamAnswer> ANSWERS = new LatestAnswers<>(REMEMBERED, BeamAnswer::of);
    private static final LatestAnswers<BeamCase, BeamAnswer> AT_HEIGHT =
            new LatestAnswers<>(REMEMBERED, BeamAnswer::ofFourTied);
    private static final String LIMITS =
            WireForces.LIMITS.get(0) + " " + WireForces.LIMITS.get(1) + " " + WireForces.LIMITS.get(4);

    @Override
    public Forces at(Case c, int index, Workbook book) {
        Visit v = c.visits().get(index);
        BeamInputs inputs = new BeamInputs(c, v.right().standOff(), v.left().standOff());
        List<String> gauge = List.of("/visits/" + index + "/gauge");
        List<String> heights = Pointers.union(
                c.hardware().left().aboveBrackets().missing(),
                c.hardware().right().aboveBrackets().missing());
        List<String> missing = inputs.missing();
        if (!missing.isEmpty()) {
            Measured force = Measured.unknown(Pointers.union(gauge, missing));
            return noted(
                    book,
                    c,
                    index,
                    new Forces(
                            force,
                            force,
                            Measured.unknown(missing),
                            Measured.unknown(Pointers.union(heights, missing))),
                    "");
        }
        BeamCase ask =
                inputs.ask(v.right().standOff().value(), v.left().standOff().value());
        BeamAnswer answer = ANSWERS.of(ask);
        if (!answer.found()) {
            List<String> none = unsolved(index);
            Measured force = Measured.unknown(Pointers.union(gauge, none));
            return noted(
                    book,
                    c,
                    index,
                    new Forces(force, force, Measured.unknown(none), Measured.unknown(Pointers.union(heights, none))),
                    answer.failure());
        }
        Elastic e = Elastic.of(c.wire()).orElseThrow();
        Forces exact = new Forces(
                gf(answer.low() * e.low() / BeamCase.E),
                gf(answer.high() * e.high() / BeamCase.E),
                Measured.exact(answer.stress() * e.high() / BeamCase.E, Unit.MPA),
                intrusive(c, index, ask, e, heights));
        return noted(book, c, index, ForceLaw.of(c, index, inputs.arch()).withErrors(exact), "");
    }

    /** From the last visit, for who asks begins with the first. */
    @Override
    public void ahead(Case c) {
        Case asked = c.visits().isEmpty() ? ForceModel.withPlannedVisit(c) : c;
        for (int i = asked.visits().size() - 1; i >= 0; i--) {
            at(asked, i, Workbook.none());
        }
    }

    /**
     * The larger of both tube conditions, mean of the four incisors; only where the heights of both tubes are measured.
     */
    private static Measured intrusive(Case c, int index, BeamCase ask, Elastic e, List<String> heights) {
        Measured left = c.hardware().left().aboveBrackets();
        Measured right = c.hardware().right().aboveBrackets();
        if (!left.known() || !right.known()) {
            return heights.isEmpty() ? Measured.notApplicable() : Measured.unknown(heights);
        }
        BeamAnswer answer = AT_HEIGHT.of(ask.withTubesAbove((left.value() + right.value()) / 2));
        if (!answer.found()) {
            return Measured.unknown(unsolved(index));
        }
        double down = Math.max(
                -answer.upHinged() * (answer.upHinged() < 0 ? e.high() : e.low()),
                -answer.upHeld() * (answer.upHeld() < 0 ? e.high() : e.low()));
        return gf(down / BeamCase.E / 4);
    }

    /**
     * Where the model finds no equilibrium no measurement is missing, but its answer: the name of that says so wherever
     * it is shown.
     */
    private static List<String> unsolved(int index) {
        return List.of("/visits/" + index + "/equilibriumOfTheWireInTheBeamModel");
    }

    private static Measured gf(double newton) {
        return Measured.exact(Unit.NEWTON.to(Unit.GF, newton), Unit.GF);
    }

    private static Forces noted(Workbook book, Case c, int index, Forces f, String failure) {
        if (!book.wanted()) {
            return f;
        }
        String visit = "visit " + (index + 1);
        String id = "wire.force." + (index + 1);
        String from = "stand-off " + Say.num(c.visits().get(index).right().standOff()) + " right, "
                + Say.num(c.visits().get(index).left().standOff()) + " left; wire "
                + Say.num(c.wire().size()) + " mm, E " + modulus(c);
        String why = failure.isEmpty() ? "" : "Not assessed: " + failure + ". ";
        book.add(() -> Working.of(
                id + ".low",
                "Wire",
                "total labial force, low end, " + visit,
                f.low(),
                "beam model of the whole wire, large rotations; least over tail hinging or held in the tube and three ways of tying",
                from,
                why + mean(f.low()) + LIMITS,
                "mechanics-model",
                "goldberg-1977"));
        book.add(() -> Working.of(
                id + ".high",
                "Wire",
                "total labial force, high end, " + visit,
                f.high(),
                "most over the same",
                from,
                why + mean(f.high()),
                "mechanics-model",
                "brantley-eliades-2001"));
        book.add(() -> Working.of(
                id + ".stress",
                "Wire",
                "peak bending stress, " + visit,
                f.peakStress(),
                "32 M / (pi d³), on the inner side of a bend by Wahl's factor (about 1.2) more, where it is highest; tail held, four tied, highest modulus",
                from,
                why,
                "mechanics-model"));
        book.add(() -> Working.of(
                id + ".intrusive",
                "Wire",
                "intrusive force per incisor, mean, " + visit,
                f.intrusivePerIncisor(),
                "a quarter of the vertical force, the larger of both tube conditions; only with measured heights",
                from,
                why
                        + "Negative: it extrudes. Without measured heights of tubes and brackets not even the sign is known.",
                "mechanics-model"));
        return f;
    }

    private static String mean(Measured total) {
        return total.known()
                ? "A quarter of it, the mean per incisor, is " + Say.num(Math.rint(total.value() / 4)) + " gf. "
                : "";
    }

    private static String modulus(Case c) {
        return Elastic.of(c.wire())
                .map(e -> e.declared()
                        ? Say.num(e.low() / 1000) + " GPa as declared"
                        : Say.num(e.low() / 1000) + " to " + Say.num(e.high() / 1000) + " GPa, none being declared")
                .orElse("unknown");
    }
}
