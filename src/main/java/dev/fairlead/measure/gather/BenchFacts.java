package dev.fairlead.measure.gather;

import dev.fairlead.facts.BenchWorkBuilder;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.facts.FoldMadeBuilder;
import dev.fairlead.facts.Place;
import dev.fairlead.measure.wire.WireMeasures;
import dev.fairlead.model.Bench;
import dev.fairlead.model.Case;
import dev.fairlead.model.Fold;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.List;

/** The wire as it was made. */
final class BenchFacts {
    private static final Place[] FOLDS = FactPlaces.sides("/bench");
    private static final Place BENCH = new Place("/bench", "");

    private BenchFacts() {}

    static void add(Gathered s, List<CaseFact> out) {
        Case c = s.c();
        Bench b = c.bench();
        Measured planned = WireMeasures.plannedHeight(c, s.book());
        for (Side side : Side.values()) {
            Fold f = b.fold(side);
            Measured cheek = f.clearCheek().minus(WireMeasures.swing(c, side, s.book()));
            out.add(FoldMadeBuilder.builder()
                    .place(FOLDS[side.ordinal()])
                    .side(side)
                    .firstBendOff(f.firstBendOffset().minus(s.marks().of(side).offset()))
                    .lengthOff(
                            f.length().minus(c.hardware().tube(side).length()).abs())
                    .heightOver(f.height().minus(planned))
                    .bendRadius(f.bendRadius())
                    .outOfSquare(f.outOfSquare())
                    .legsOutOfParallel(f.legsOutOfParallel())
                    .clearGingiva(f.clearGingiva())
                    .clearCheek(cheek)
                    .clearCheekSoFar(Bounds.or(cheek, f.clearCheek()))
                    .build());
        }
        Fold l = b.left();
        Fold r = b.right();
        Measured differ = l.firstMark()
                .minus(r.firstMark())
                .abs()
                .max(l.length().minus(r.length()).abs())
                .max(l.height().minus(r.height()).abs());
        out.add(BenchWorkBuilder.builder()
                .place(BENCH)
                .midlineMarked(b.midlineMarked())
                .otherSideMarkedSeated(b.otherSideMarkedSeated())
                .sidesDiffer(differ)
                .sidedPlan(Answers.sided(c.plan()))
                .passiveGap(b.passiveGap())
                .rebends(b.rebends())
                .build());
    }
}
