package dev.fairlead.measure.space;

import dev.fairlead.measure.working.Resource;
import dev.fairlead.model.Choices.Population;
import dev.fairlead.model.Choices.Sex;

/**
 * Regressions of canine and premolar widths on the lower incisors, published for one population and sex each
 * ({@code regressions.txt}).
 */
public final class Regressions {
    private static final Line[][] LINES = new Line[Population.values().length][Sex.values().length];

    static {
        for (Resource.Entry e : Resource.read(Regressions.class, "regressions.txt")) {
            Line line = new Line(
                    Population.valueOf(e.text("population")),
                    Sex.valueOf(e.text("sex")),
                    e.number("intercept"),
                    e.number("slope"),
                    e.text("source"));
            LINES[line.population.ordinal()][line.sex.ordinal()] = line;
        }
    }

    private Regressions() {}

    /**
     * Width per side = intercept + slope x sum of the four lower incisors, mm.
     *
     * @param source key of the bibliography
     */
    public record Line(Population population, Sex sex, double intercept, double slope, String source) {}

    /** The line of a population and sex. */
    public static Line of(Population population, Sex sex) {
        return LINES[population.ordinal()][sex.ordinal()];
    }
}
