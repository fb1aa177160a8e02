package dev.fairlead.measure.gather;

import dev.fairlead.facts.Place;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;

/** Places in a case, made once. */
final class FactPlaces {
    private static final int MANY_VISITS = 60;
    private static final Place[] TEETH = new Place[100];
    private static final Place[] PAIRS = new Place[100];
    private static final Place[] VISITS = new Place[MANY_VISITS];
    private static final Place[][] VISIT_SIDES = new Place[MANY_VISITS][Side.values().length];

    static {
        for (int n = 0; n < 100; n++) {
            if (Tooth.exists(n)) {
                TEETH[n] = new Place("/teeth/" + n, "tooth " + n);
                PAIRS[n] = new Place(
                        "/teeth/" + n, "teeth " + n + " and " + Tooth.of(n).antimere());
            }
        }
        for (int i = 0; i < MANY_VISITS; i++) {
            VISITS[i] = makeVisit(i);
            for (Side side : Side.values()) {
                VISIT_SIDES[i][side.ordinal()] = makeVisit(i, side);
            }
        }
    }

    private FactPlaces() {}

    static Place tooth(Tooth tooth) {
        return TEETH[tooth.number()];
    }

    /** A tooth and its antimere. */
    static Place pair(Tooth left) {
        return PAIRS[left.number()];
    }

    static Place visit(int index) {
        return index < MANY_VISITS ? VISITS[index] : makeVisit(index);
    }

    static Place visit(int index, Side side) {
        return index < MANY_VISITS ? VISIT_SIDES[index][side.ordinal()] : makeVisit(index, side);
    }

    private static Place makeVisit(int index) {
        return new Place("/visits/" + index, "visit " + (index + 1));
    }

    private static Place makeVisit(int index, Side side) {
        return new Place("/visits/" + index + "/" + side.word(), "visit " + (index + 1) + ", " + side.word());
    }

    /** A section with one part for each side, such as {@code /bench/left}. */
    static Place[] sides(String section) {
        return new Place[] {new Place(section + "/left", "left"), new Place(section + "/right", "right")};
    }

    /** A section that speaks of each side without a part of its own. */
    static Place[] within(String section) {
        return new Place[] {new Place(section, "left"), new Place(section, "right")};
    }
}
