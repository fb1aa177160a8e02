package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Force against movement of the incisors, one tube condition.
 *
 * @param standOff at which the wire is passive, mm of movement
 * @param points by rising movement, from as tied in to passive
 */
public record LoadDeflection(TailSupport tube, double standOff, List<Point> points) {

    public LoadDeflection {
        points = List.copyOf(points);
    }

    /**
     * State after some movement.
     *
     * @param movement of the incisors since tying in, mm; with unequal sides that of the side opened more, the other in
     *     proportion
     * @param forward total labial force, N
     * @param vertical total vertical force, N, occlusal positive
     * @param bending peak bending stress, MPa
     */
    public record Point(double movement, double forward, double vertical, double bending) {}

    /**
     * Total labial force left at a movement that the curve carries as a point or lies beyond the passive wire, N; else
     * empty.
     */
    public OptionalDouble forwardAfter(double movement) {
        if (movement >= standOff) {
            return OptionalDouble.of(0);
        }
        return points.stream()
                .filter(p -> Math.abs(p.movement() - movement) < 1e-9)
                .mapToDouble(Point::forward)
                .findFirst();
    }
}
