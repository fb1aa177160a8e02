package dev.fairlead.measure.schedule;

import dev.fairlead.measure.working.Resource;
import dev.fairlead.model.Choices.Sex;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Age at which a lower primary tooth is shed, years, taken as normally distributed among children of one sex.
 *
 * @param source key of the bibliography
 */
public record Exfoliation(PrimaryTooth tooth, Sex sex, double mean, double sd, String source) {
    private static final List<Exfoliation> TABLE = read();

    private static List<Exfoliation> read() {
        return Resource.read(Exfoliation.class, "exfoliation.txt").stream()
                .map(r -> new Exfoliation(
                        PrimaryTooth.valueOf(r.text("tooth")
                                .toUpperCase(java.util.Locale.ROOT)
                                .replace('-', '_')),
                        Sex.valueOf(r.text("sex")),
                        r.number("mean"),
                        r.number("sd"),
                        r.text("source")))
                .toList();
    }

    /** The row of a tooth and a sex. */
    public static Exfoliation of(PrimaryTooth tooth, Sex sex) {
        return TABLE.stream()
                .filter(e -> e.tooth == tooth && e.sex == sex)
                .findFirst()
                .orElseThrow();
    }

    public static List<Exfoliation> table() {
        return TABLE;
    }

    /** Probability that a tooth which still stood at {@code seen} is shed by {@code age}, both in years. */
    public double shedBy(double age, double seen) {
        NormalDistribution d = new NormalDistribution(mean, sd);
        double standing = 1 - d.cumulativeProbability(seen);
        return age <= seen
                ? 0
                : standing > 0 ? (d.cumulativeProbability(age) - d.cumulativeProbability(seen)) / standing : 1;
    }

    /** Age in years by which a tooth that still stood at {@code seen} is shed with this probability. */
    public double age(double probability, double seen) {
        NormalDistribution d = new NormalDistribution(mean, sd);
        double gone = d.cumulativeProbability(seen);
        // a child far beyond the table: the tooth is due any day
        return gone > 0.9999 ? seen : d.inverseCumulativeProbability(gone + probability * (1 - gone));
    }
}
