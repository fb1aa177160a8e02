package dev.fairlead.measure.schedule;

import dev.fairlead.model.Choices.Pattern;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The visits that one way of activating takes.
 *
 * @param activations activations still to come
 * @param visits visits until both sides have done their advance
 * @param end day of the visit that finds it done; empty while no start is known
 */
public record Route(
        Pattern pattern,
        ExpectedRange<Integer> activations,
        ExpectedRange<Integer> visits,
        Optional<ExpectedRange<LocalDate>> end) {}
