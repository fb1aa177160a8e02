package dev.fairlead.measure.archform;

import java.util.ArrayList;
import java.util.List;

/**
 * The smallest change towards the arch that brings a wire within limits: the share of the whole change (0 none, 1 all
 * of it), that part of the change, and the misfit that is left.
 */
public record LeastReshaping(double share, Reshaping change, WireMisfit left) {
    private static final int POINTS = 61;
    private static final int HALVINGS = 10;

    /** Found by trying blends of wire and arch; limits of the RMS and the worst distance in mm. */
    public static LeastReshaping of(
            ArchCurve arch, ArchCurve wire, ArchPlaces places, double rmsLimit, double worstLimit) {
        Lengths.positive(rmsLimit, worstLimit);
        WireMisfit now = WireMisfit.of(arch, wire, places);
        if (now.rms() <= rmsLimit && Math.abs(now.worst().outside()) <= worstLimit) {
            return new LeastReshaping(0, new Reshaping(0, 0, 0), now);
        }
        double enough = 1;
        double tooLittle = 0;
        ArchCurve best = blend(arch, wire, 1);
        for (int i = 0; i < HALVINGS; i++) {
            double share = (enough + tooLittle) / 2;
            ArchCurve tried = blend(arch, wire, share);
            WireMisfit misfit = WireMisfit.of(arch, tried, places);
            if (misfit.rms() <= rmsLimit && Math.abs(misfit.worst().outside()) <= worstLimit) {
                enough = share;
                best = tried;
            } else {
                tooLittle = share;
            }
        }
        Reshaping whole = Reshaping.full(arch, wire, places);
        return new LeastReshaping(
                enough,
                new Reshaping(enough * whole.atCanines(), enough * whole.atMolars(), enough * whole.ofFront()),
                WireMisfit.of(arch, best, places));
    }

    // points of wire and arch at the same arc length from the midline, fronts together, mixed; where the wire is longer
    // the
    // arch is carried on straight
    private static ArchCurve blend(ArchCurve arch, ArchCurve wire, double share) {
        ArcRuler a = arch.ruler();
        ArcRuler w = wire.ruler();
        double start = w.start();
        double end = w.end();
        double forward = arch.at(arch.midline()).y() - wire.at(wire.midline()).y();
        List<Point> mixed = new ArrayList<>(POINTS);
        for (int i = 0; i < POINTS; i++) {
            double s = i == POINTS - 1 ? end : start + (end - start) * i / (POINTS - 1);
            Point onWire = wire.at(w.parameterAt(s)).plus(new Point(0, forward));
            mixed.add(onWire.times(1 - share).plus(carriedOn(arch, a, s).times(share)));
        }
        return new SplineArch(mixed);
    }

    private static Point carriedOn(ArchCurve arch, ArcRuler ruler, double s) {
        double on = Math.min(Math.max(s, ruler.start()), ruler.end());
        double u = ruler.parameterAt(on);
        return s == on ? arch.at(u) : arch.at(u).plus(arch.tangent(u).times(s - on));
    }

    /** The change in words, or that none is needed. */
    public String words() {
        return share == 0 ? "leave as it is" : change.words();
    }
}
