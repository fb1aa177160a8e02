package dev.fairlead.audit.outcome;

import dev.fairlead.audit.statistics.Shrunk;
import dev.fairlead.model.Clinic;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A clinic's own figures from its own cases, drawn towards what is published by how few they are.
 *
 * @param clinic what is to be reckoned with
 * @param drawn how each came about; a figure with fewer than {@link Clinic#FEWEST} cases stays as published
 */
public record ClinicFigures(Clinic clinic, Map<Attained.Kind, Drawn> drawn) {
    private static final double Z = 1.959963984540054;

    /** One figure: what is published, what the cases show, and what comes of both. */
    public record Drawn(Clinic.Spread published, Outturn.Parameter own, Optional<Shrunk> shrunk) {
        /** What intervals are made of: the spread of a next case, so that 95 % of them lie within 1.96 of it. */
        public Clinic.Spread inForce() {
            return shrunk.map(s -> new Clinic.Spread(s.mean(), s.nextReach() / Z))
                    .orElse(published);
        }
    }

    /** Empty where no figure has cases enough. */
    public static Optional<ClinicFigures> of(Outturn outturn) {
        Clinic p = Clinic.PUBLISHED;
        Map<Attained.Kind, Drawn> drawn = new EnumMap<>(Attained.Kind.class);
        drawn.put(Attained.Kind.TIPPING, drawn(p.tipping(), outturn.own().get(Attained.Kind.TIPPING)));
        drawn.put(Attained.Kind.RATE, drawn(p.rate(), outturn.own().get(Attained.Kind.RATE)));
        drawn.put(Attained.Kind.GAIN, drawn(p.gain(), outturn.own().get(Attained.Kind.GAIN)));
        int cases = drawn.values().stream()
                .filter(d -> d.shrunk().isPresent())
                .mapToInt(d -> d.own().n())
                .max()
                .orElse(0);
        return cases == 0
                ? Optional.empty()
                : Optional.of(new ClinicFigures(
                        new Clinic(
                                drawn.get(Attained.Kind.TIPPING).inForce(),
                                drawn.get(Attained.Kind.RATE).inForce(),
                                drawn.get(Attained.Kind.GAIN).inForce(),
                                cases),
                        drawn));
    }

    private static Drawn drawn(Clinic.Spread published, Outturn.@Nullable Parameter own) {
        Outturn.Parameter found = own == null ? new Outturn.Parameter(0, Double.NaN, Double.NaN, 0) : own;
        return new Drawn(
                published,
                found,
                found.n() < Clinic.FEWEST
                        ? Optional.empty()
                        : Optional.of(Shrunk.of(
                                new Shrunk.Published(
                                        published.mean(),
                                        published.sd(),
                                        Shrunk.Published.USUAL,
                                        Shrunk.Published.USUAL),
                                found.n(),
                                found.mean(),
                                found.sd(),
                                found.worth())));
    }
}
