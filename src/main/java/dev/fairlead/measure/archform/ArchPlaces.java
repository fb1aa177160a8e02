package dev.fairlead.measure.archform;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Where the teeth stand along one arch: arc length of each from the midline, mm, positive to the patient's left. */
public record ArchPlaces(List<Place> places) {
    // widths of central to first molar, Black 1902 (central, lateral and molar from memory), mm
    private static final double[] AVERAGE = {5.4, 5.9, 6.9, 6.9, 7.1, 11.2};

    /** One tooth and its arc length from the midline, mm. */
    public record Place(int tooth, double fromMidline) {}

    public ArchPlaces {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("no teeth along the arch");
        }
    }

    /** Places of measured landmarks along the curve that was laid through them. */
    public static ArchPlaces of(ArchCurve arch, Landmarks landmarks) {
        Projector projector = new Projector(arch);
        ArcRuler ruler = arch.ruler();
        return new ArchPlaces(landmarks.teeth().stream()
                .map(t -> new Place(
                        t.tooth(),
                        ruler.fromMidline(projector.nearest(t.point()).u())))
                .toList());
    }

    /** Places of teeth of average width scaled to an arch that ends at the middle of the first molars. */
    public static ArchPlaces average(ArchCurve arch) {
        ArcRuler ruler = arch.ruler();
        double[] centres = new double[AVERAGE.length];
        double edge = 0;
        for (int i = 0; i < centres.length; i++) {
            centres[i] = edge + AVERAGE[i] / 2;
            edge += AVERAGE[i];
        }
        double last = centres[centres.length - 1];
        return new ArchPlaces(IntStream.rangeClosed(1, 2 * centres.length)
                .mapToObj(i -> {
                    int position = i > centres.length ? i - centres.length : i;
                    double share = centres[position - 1] / last;
                    return i > centres.length
                            ? new Place(30 + position, share * ruler.end())
                            : new Place(40 + position, share * ruler.start());
                })
                .toList());
    }

    /** The tooth nearest to this arc length from the midline. */
    public Place nearest(double fromMidline) {
        return places.stream()
                .min(Comparator.comparingDouble(p -> Math.abs(p.fromMidline() - fromMidline)))
                .orElseThrow();
    }

    /** Mean arc length of left and right tooth of this position from the midline, mm, where both are known. */
    public Optional<Double> position(int position) {
        Optional<Place> left = side(position, true);
        Optional<Place> right = side(position, false);
        return left.flatMap(l -> right.map(r -> (l.fromMidline() - r.fromMidline()) / 2));
    }

    private Optional<Place> side(int position, boolean left) {
        return places.stream()
                .filter(p -> Teeth.position(p.tooth()) == position && Teeth.left(p.tooth()) == left)
                .min(Comparator.comparing(p -> Teeth.primary(p.tooth())));
    }
}
