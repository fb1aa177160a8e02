package dev.fairlead.report.picture;

import dev.fairlead.measure.space.SideSpace;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.ToothState;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothRecord;
import java.util.ArrayList;
import java.util.List;

/**
 * The teeth of one side from the midline backwards, each with the stretch of the arch that it needs, mm from the
 * midline.
 */
final class LaidTeeth {
    /**
     * Widths of lower canine and premolars in the mean (Black 1902), mm: how a need that is known in sum is shared
     * between teeth.
     */
    private static final double[] BLACK = {6.9, 6.9, 7.1};
    /** Width of the lower first molar in the mean (Black 1902, from memory), mm: drawn where it was not measured. */
    private static final double MOLAR = 11.2;
    /** From cheek to tongue, central incisor to first molar, mm; only drawn, and of no account. */
    private static final double[] THICK = {5.8, 6.2, 7.4, 7.4, 8, 10.2};

    /** A tooth that stands, or will stand, from and to so far from the midline; {@code standing} when it is through. */
    record Laid(Tooth tooth, double from, double to, double thick, boolean standing) {}

    private final List<Laid> teeth = new ArrayList<>();
    private final double molar;
    private final double end;

    private LaidTeeth(Case c, SideSpace s) {
        int quadrant = s.side() == Side.LEFT ? 30 : 40;
        double at = 0;
        for (int p = 1; p <= 2; p++) {
            Tooth tooth = Tooth.of(quadrant + p);
            at = lay(tooth, at, c.tooth(tooth).width().value(), c.tooth(tooth));
        }
        double[] widths = shared(c, s, quadrant);
        for (int p = 3; p <= 5; p++) {
            Tooth tooth = Tooth.of(quadrant + p);
            at = lay(tooth, at, widths[p - 3], c.tooth(tooth));
        }
        end = at;
        molar = end - s.shortage().value();
        Tooth tooth = Tooth.of(quadrant + 6);
        lay(
                tooth,
                molar,
                c.tooth(tooth).width().known() ? c.tooth(tooth).width().value() : MOLAR,
                c.tooth(tooth));
    }

    /** The teeth of a side; the widths of its incisors, its need and its shortage are known. */
    static LaidTeeth of(Case c, SideSpace s) {
        return new LaidTeeth(c, s);
    }

    private double lay(Tooth tooth, double from, double width, ToothRecord record) {
        teeth.add(new Laid(
                tooth,
                from,
                from + width,
                THICK[tooth.position() - 1],
                record.state().is(ToothState.ERUPTED)));
        return from + width;
    }

    /**
     * What is measured stands as measured as long as it leaves room for the others; the rest is shared out as teeth are
     * in the mean.
     */
    private static double[] shared(Case c, SideSpace s, int quadrant) {
        double[] widths = new double[BLACK.length];
        double rest = s.required().value();
        double parts = 0;
        for (int i = 0; i < widths.length; i++) {
            ToothRecord t = c.tooth(Tooth.of(quadrant + 3 + i));
            widths[i] = t.width().known() ? t.width().value() : 0;
            rest -= widths[i];
            parts += t.width().known() ? 0 : BLACK[i];
        }
        boolean fits = parts > 0 && rest > 0 || parts == 0 && Math.abs(rest) < 0.01;
        double whole = BLACK[0] + BLACK[1] + BLACK[2];
        for (int i = 0; i < widths.length; i++) {
            if (!fits) {
                widths[i] = s.required().value() * BLACK[i] / whole;
            } else if (widths[i] == 0) {
                widths[i] = rest * BLACK[i] / parts;
            }
        }
        return widths;
    }

    List<Laid> teeth() {
        return teeth;
    }

    /** Mesial of the first molar. */
    double molar() {
        return molar;
    }

    /** Where canine and premolars would end. */
    double end() {
        return end;
    }
}
