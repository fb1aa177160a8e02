package dev.fairlead.check.whatif;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Case;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Something that the plan is free to set, in the steps that are practical.
 *
 * @param settings other settings than the present one, the fewest steps first
 */
record Variable(List<Setting> settings) {
    /** Nobody plans further away than that in one go. */
    static final int MOST_STEPS = 12;

    private static final double ROUNDED = 1e6;

    Variable {
        settings = settings.stream()
                .sorted(Comparator.comparingInt(Setting::steps))
                .toList();
    }

    /**
     * Numbers that move together by equal steps in the unit of their fields; no setting at all when one is not known.
     */
    static Variable stepped(Case c, double step, String... pointers) {
        List<Setting> settings = new ArrayList<>();
        for (int direction : new int[] {-1, 1}) {
            for (int k = 1; k <= MOST_STEPS; k++) {
                List<Change> changes = new ArrayList<>();
                boolean moved = true;
                for (String p : pointers) {
                    double now = value(c, p);
                    double then = within(p, Math.rint((now + direction * k * step) * ROUNDED) / ROUNDED);
                    // the last step before the end of a range may be a short one; beyond it nothing moves
                    moved &= Math.abs(then - now) > (k - 1) * step + 1 / ROUNDED;
                    changes.add(moved ? Change.of(c, p, then) : null);
                }
                if (moved) {
                    settings.add(new Setting(k, changes));
                }
            }
        }
        return new Variable(settings);
    }

    /** The value of a field; not a number when it is not known. */
    static double value(Case c, String pointer) {
        return Edit.get(c, pointer) instanceof Measured m && m.known() ? m.value() : Double.NaN;
    }

    private static double within(String pointer, double value) {
        Field about = CasePaths.field(pointer).orElseThrow().about();
        return Math.max(about.low(), Math.min(about.high(), value));
    }

    /** One field with a list of other values, the nearest first: each is one step further. */
    static Variable listed(Case c, String pointer, List<?> values) {
        List<Setting> settings = new ArrayList<>();
        for (Object v : values) {
            settings.add(new Setting(settings.size() + 1, List.of(Change.of(c, pointer, v))));
        }
        return new Variable(settings);
    }
}
