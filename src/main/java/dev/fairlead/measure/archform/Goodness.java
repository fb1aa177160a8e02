package dev.fairlead.measure.archform;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.stat.correlation.PearsonsCorrelation;

/**
 * How well a curve stands for landmarks: distances at right angles to the curve, mm, positive where the tooth stands
 * outside; r is the correlation of the teeth's anterior coordinate with that of the nearest points of the curve.
 */
public record Goodness(double rms, Residual worst, double r, List<Residual> residuals) {

    /** Distance of one tooth from the curve, mm, positive outside. */
    public record Residual(int tooth, double outside) {}

    public Goodness {
        residuals = List.copyOf(residuals);
    }

    /** How well the curve stands for these landmarks. */
    public static Goodness of(ArchCurve curve, Landmarks landmarks) {
        Projector projector = new Projector(curve);
        List<Projector.Foot> feet =
                landmarks.points().stream().map(projector::nearest).toList();
        double[] measured = landmarks.points().stream().mapToDouble(Point::y).toArray();
        double[] drawn = feet.stream().mapToDouble(f -> f.point().y()).toArray();
        double squares = 0;
        Residual[] all = new Residual[feet.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = new Residual(landmarks.teeth().get(i).tooth(), feet.get(i).outside());
            squares += all[i].outside() * all[i].outside();
        }
        Residual worst = Collections.max(List.of(all), Comparator.comparingDouble(r -> Math.abs(r.outside())));
        return new Goodness(
                Math.sqrt(squares / all.length),
                worst,
                new PearsonsCorrelation().correlation(measured, drawn),
                List.of(all));
    }
}
