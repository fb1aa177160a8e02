package dev.fairlead.model;

import java.util.List;

/**
 * A tooth by its two-digit number of ISO 3950: quadrant (1-4 permanent, 5-8 primary), then position from the midline.
 */
public record Tooth(int number) implements Comparable<Tooth> {
    /** 42, 41, 31, 32: the four lower permanent incisors from the patient's right to left. */
    public static final List<Tooth> LOWER_INCISORS =
            List.of(new Tooth(42), new Tooth(41), new Tooth(31), new Tooth(32));
    /** 43 to 33, from the patient's right to left. */
    public static final List<Tooth> LOWER_ANTERIORS =
            List.of(new Tooth(43), new Tooth(42), new Tooth(41), new Tooth(31), new Tooth(32), new Tooth(33));
    /** 13 to 23, from the patient's right to left. */
    public static final List<Tooth> UPPER_ANTERIORS =
            List.of(new Tooth(13), new Tooth(12), new Tooth(11), new Tooth(21), new Tooth(22), new Tooth(23));

    public Tooth {
        if (!exists(number)) {
            throw new IllegalArgumentException(number + " is no tooth number of ISO 3950");
        }
    }

    /** True for 11-18, 21-28, 31-38, 41-48 (permanent) and 51-55, 61-65, 71-75, 81-85 (primary). */
    public static boolean exists(int number) {
        int quadrant = number / 10;
        int position = number % 10;
        return quadrant >= 1 && quadrant <= 8 && position >= 1 && position <= (quadrant <= 4 ? 8 : 5);
    }

    // written out: what Java makes of a record at the first call takes a start longer than reading all teeth of a case
    @Override
    public boolean equals(Object o) {
        return o instanceof Tooth t && number == t.number;
    }

    @Override
    public int hashCode() {
        return number;
    }

    public static Tooth of(int number) {
        return new Tooth(number);
    }

    public int quadrant() {
        return number / 10;
    }

    /** 1 central incisor to 8 third molar; in primary teeth 1 central incisor to 5 second molar. */
    public int position() {
        return number % 10;
    }

    public boolean primary() {
        return quadrant() >= 5;
    }

    public boolean lower() {
        int q = (quadrant() - 1) % 4;
        return q >= 2;
    }

    public Side side() {
        int q = (quadrant() - 1) % 4;
        return q == 0 || q == 3 ? Side.RIGHT : Side.LEFT;
    }

    /** The same tooth on the other side of the same arch. */
    public Tooth antimere() {
        int q = quadrant();
        return of((q % 2 == 1 ? q + 1 : q - 1) * 10 + position());
    }

    @Override
    public int compareTo(Tooth other) {
        return Integer.compare(number, other.number);
    }

    @Override
    public String toString() {
        return Integer.toString(number);
    }
}
