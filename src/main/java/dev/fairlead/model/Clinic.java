package dev.fairlead.model;

import java.util.ArrayList;
import java.util.List;

/**
 * How teeth answer to what is planned: as published, or as a clinic's own cases have shown, drawn towards it.
 *
 * @param tipping change of the incisors' inclination over the predicted one
 * @param rate share of the stand-off that is run down between two visits
 * @param gain growth of a side's space for the planned advance, over the predicted one
 * @param cases how many cases of its own the clinic has put in; 0 as published
 */
public record Clinic(Spread tipping, Spread rate, Spread gain, int cases) {
    /** Fewer cases of its own say too little about a clinic. */
    public static final int FEWEST = 15;

    /** Mean over cases, and standard deviation between cases. */
    public record Spread(double mean, double sd) {}

    /**
     * As published. Tipping: 2.5 to 3.6 degrees for each mm about 2.9, taken as two standard deviations to either side
     * of the prediction. Rate: common practice, no source. Gain: 1.21 to 2.07 mm of perimeter for each mm (Mutinelli
     * and others 2000) taken as four standard deviations, over 1.73.
     */
    public static final Clinic PUBLISHED =
            new Clinic(new Spread(1, 0.3 / 2.9), new Spread(0.65, 0.20), new Spread(1, 0.124), 0);

    /** True where a clinic's own cases stand behind it. */
    public boolean own() {
        return cases > 0;
    }

    /** What cannot be so, in words; empty when all can. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        fault("tipping", tipping, 0.3, 3, 1, faults);
        fault("rate", rate, 0.05, 1, 0.5, faults);
        fault("gain", gain, 0.3, 3, 1, faults);
        if (cases < FEWEST) {
            faults.add("cases: " + cases + " are too few to say anything of a clinic; " + FEWEST + " are needed");
        }
        return faults;
    }

    private static void fault(String name, Spread s, double low, double high, double most, List<String> faults) {
        if (!(s.mean() >= low && s.mean() <= high && s.sd() >= 0 && s.sd() <= most)) {
            faults.add(name + ": mean from " + low + " to " + high + " and sd from 0 to " + most + " are expected, not "
                    + s.mean() + " and " + s.sd());
        }
    }
}
