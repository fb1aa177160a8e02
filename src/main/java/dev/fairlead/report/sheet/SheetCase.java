package dev.fairlead.report.sheet;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.measure.wire.FoldOpening;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.report.picture.ArchDrawing;
import dev.fairlead.report.picture.FoldDrawing;
import dev.fairlead.report.picture.StepDrawing;
import dev.fairlead.report.picture.StripDrawing;
import java.util.Arrays;
import java.util.List;

/** One checked case with what its sheet shows worked out once. */
final class SheetCase {
    final Checked checked;
    final Case subject;
    final WireGeometry geometry;
    final WireForces forces;

    SheetCase(Checked checked) {
        this.checked = checked;
        this.subject = checked.subject();
        this.geometry = WireGeometry.of(subject);
        this.forces = WireForces.planned(subject);
    }

    boolean archKnown() {
        return geometry.arch().known();
    }

    boolean marksKnown() {
        return StripDrawing.possible(geometry);
    }

    boolean foldsKnown() {
        return FoldDrawing.possible(geometry.plannedRight()) && FoldDrawing.possible(geometry.plannedLeft());
    }

    ArchDrawing arch() {
        return new ArchDrawing(subject, geometry);
    }

    StripDrawing strip() {
        return new StripDrawing(geometry, subject.wire().size());
    }

    FoldDrawing fold(Side side) {
        return FoldDrawing.of(subject, geometry.planned(side));
    }

    StepDrawing step() {
        return new StepDrawing(
                geometry.planned(Side.RIGHT),
                geometry.right(),
                subject.hardware().right().length().value(),
                subject.wire().size().value(),
                subject.wire().beakRadius().value());
    }

    /** What the drawings and tables of the sheet lack. */
    List<Missing> missing() {
        List<String> all = List.of();
        for (Measured m : Arrays.asList(geometry.arch().inputs())) {
            all = Pointers.union(all, m.known() ? List.of() : m.missing());
        }
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            FoldOpening f = geometry.planned(side);
            for (Measured m : List.of(geometry.marks(side).end(), f.leg(), f.radius(), f.gap(), f.standOff())) {
                all = Pointers.union(all, m.missing());
            }
        }
        return all.stream().map(Missing.in(subject)).toList();
    }
}
