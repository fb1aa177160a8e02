package dev.fairlead.measure.archform;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Invented arches for tests, from seeded generators. */
final class Arches {
    private static final int[] TEETH = {46, 45, 44, 43, 42, 41, 31, 32, 33, 34, 35, 36};

    private Arches() {}

    static double between(RandomGenerator random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    /** Twelve teeth at equal shares of the curve, ends included, each moved by Gaussian noise of this SD, mm. */
    static List<DigitisedPoint> on(ArchCurve curve, double noise, RandomGenerator random) {
        List<Point> points = curve.points(TEETH.length);
        List<DigitisedPoint> landmarks = new ArrayList<>();
        for (int i = 0; i < TEETH.length; i++) {
            Point p = points.get(i);
            landmarks.add(DigitisedPoint.flat(
                    TEETH[i], p.x() + noise * random.nextGaussian(), p.y() + noise * random.nextGaussian()));
        }
        return landmarks;
    }

    /** Teeth of an arch like a child's, with irregular incisors. */
    static List<DigitisedPoint> crowded(RandomGenerator random) {
        return on(new BetaArch(between(random, 40, 50), between(random, 21, 29)), 0.5, random);
    }

    static List<DigitisedPoint> mirrored(List<DigitisedPoint> given) {
        return given.stream()
                .map(l -> DigitisedPoint.flat(Teeth.antimere(l.tooth()), -l.x(), l.y()))
                .toList();
    }
}
