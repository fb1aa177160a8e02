package dev.fairlead.findings;

import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Status;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one criterion ends for a case, in words and numbers.
 *
 * @param id the criterion
 * @param title of a warning the fault that weighs most, else a short statement that is true on a pass
 * @param asks what the criterion demands, with the thresholds in force
 * @param places what is found place by place
 * @param seen what this case shows, in one text over all places
 * @param todo of a warning what to do about each reason; empty on a pass
 * @param sources what the criterion and its thresholds rest on
 * @param dispute where the literature disagrees; empty when it does not
 * @param close the error of a number reaches across its limit
 * @param flip probability that the outcome would be another within the errors of measurement; empty until it is worked
 *     out
 * @param missing what is missing; also set beside a warning when another place could not be assessed
 * @param waiver who answers for it, when a waiver holds
 * @param traces where it comes from
 * @param under the criterion whose warning has the same cause and weighs more, under which this one is told; empty when
 *     it is told on its own
 * @param failed it could not be judged because of an error of our own
 */
public record Finding(
        String id,
        Stage stage,
        Status outcome,
        Weight weight,
        String title,
        String asks,
        List<PlaceFinding> places,
        String seen,
        String why,
        String todo,
        List<Source> sources,
        String dispute,
        boolean close,
        OptionalDouble flip,
        List<Missing> missing,
        Optional<AppliedWaiver> waiver,
        Traces traces,
        String under,
        boolean failed) {
    private static final double HALF = 0.5;

    public Finding {
        places = List.copyOf(places);
        sources = List.copyOf(sources);
        missing = List.copyOf(missing);
    }

    /** Stable mark of criterion, outcome and places, to compare findings between runs. */
    public String fingerprint() {
        return traces.fingerprint();
    }

    /** JSON Pointers of the measurements that the numbers rest on, and of what is missing. */
    public List<String> usedFields() {
        return traces.usedFields();
    }

    public boolean warns() {
        return outcome == Status.WARN;
    }

    /** True for a warning that no waiver answers for. */
    public boolean open() {
        return warns() && waiver.isEmpty();
    }

    /** A pass that more likely fails than not once errors of measurement are counted: no pass to rely on. */
    public boolean onTheLimit() {
        return outcome == Status.PASS && flip.orElse(0) > HALF;
    }

    Finding waivedBy(AppliedWaiver by) {
        return new Finding(
                id,
                stage,
                outcome,
                weight,
                title,
                asks,
                places,
                seen,
                why,
                todo,
                sources,
                dispute,
                close,
                flip,
                missing,
                Optional.of(by),
                traces,
                under,
                failed);
    }

    /**
     * The same warning as a lighter one of a cause whose heaviest is {@code head}, which tells why and what is
     * disputed.
     */
    Finding toldUnder(Finding head, String cause) {
        return new Finding(
                id,
                stage,
                outcome,
                weight,
                title,
                asks,
                places,
                seen,
                "It has one cause with “" + head.title() + "” (" + head.id() + "): " + cause
                        + ". Why it matters and what is disputed is told there.",
                todo,
                sources,
                "",
                close,
                flip,
                missing,
                waiver,
                traces,
                head.id(),
                failed);
    }

    /** The same finding with the probability that its outcome would be another. */
    public Finding withFlip(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability lies between 0 and 1");
        }
        return new Finding(
                id,
                stage,
                outcome,
                weight,
                title,
                asks,
                places,
                seen,
                why,
                todo,
                sources,
                dispute,
                close,
                OptionalDouble.of(probability),
                missing,
                waiver,
                traces,
                under,
                failed);
    }
}
