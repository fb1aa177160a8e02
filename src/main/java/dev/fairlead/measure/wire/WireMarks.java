package dev.fairlead.measure.wire;

import dev.fairlead.measure.arch.PatientArch;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** The marks of one case's wire, worked out once, and only where they are asked for. Of one thread. */
public final class WireMarks {
    private final Case c;
    private final PatientArch arch;
    private final Map<Side, SideMarks> known = new EnumMap<>(Side.class);

    /** {@code arch} is the child's, along which the line of the wire is laid. */
    public WireMarks(Case c, PatientArch arch) {
        this.c = c;
        this.arch = arch;
    }

    public SideMarks of(Side side) {
        if (known.isEmpty()) {
            WireLine line = WireLine.of(c, arch);
            for (Side s : Side.values()) {
                known.put(s, SideMarks.of(c, line, s));
            }
        }
        return Objects.requireNonNull(known.get(side));
    }

    /** Blank length less what arch, folds, tubes and tails take, mm. */
    public Measured spare() {
        return c.wire()
                .blankLength()
                .minus(of(Side.RIGHT).end().plus(of(Side.LEFT).end()));
    }
}
