package dev.fairlead.report.wire;

import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.findings.Report;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.model.Case;
import dev.fairlead.model.Visit;
import dev.fairlead.report.picture.CustomaryForce;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * All numbers of one case's wire.
 *
 * @param id of the case
 * @param basis which stand-off the forces are for, and which wire, in words
 * @param cannot what the beam model cannot know
 * @param sources bibliography of the keys used, in order of their first use
 * @param caution the usual one
 * @param told what is missing at a pointer, told apart from what is there and contradicts other facts
 */
public record WireReport(
        String id,
        String basis,
        List<Section> sections,
        List<String> cannot,
        Map<String, Source> sources,
        String caution,
        Function<String, Missing> told) {
    /** The threshold whose stress is marked beside the proof strength. */
    private static final String STRESS = "no-permanent-set.stress";

    /**
     * The wire of a case.
     *
     * @param visit index of the visit whose stand-offs are taken; empty for the planned stand-off
     * @param sizes diameters to compare, mm; may be empty
     */
    public static WireReport of(Case c, Catalogue catalogue, OptionalInt visit, List<Double> sizes) {
        double[] limits = catalogue.thresholds().containsKey(STRESS)
                ? new double[] {catalogue.thresholds().get(STRESS).value()}
                : new double[0];
        WireForces forces =
                visit.isPresent() ? WireForces.atVisit(c, visit.getAsInt(), limits) : WireForces.planned(c, limits);
        List<Section> sections = new ArrayList<>(new GeometrySections(c).all());
        sections.addAll(new ForceSections(forces, c, visit).all());
        if (!sizes.isEmpty()) {
            CustomaryForce.of(catalogue)
                    .ifPresent(k -> sections.add(
                            new SizeSection(c, forces.standOffRight(), forces.standOffLeft(), k).of(sizes)));
        }
        return new WireReport(
                c.id(),
                basis(c, forces, visit),
                List.copyOf(sections),
                WireForces.LIMITS,
                cited(sections, catalogue.sources()),
                Report.CAUTION,
                Missing.in(c));
    }

    /** What the lines of a section wait for. */
    public List<Missing> waits(Section section) {
        return section.missing().stream().map(told).toList();
    }

    private static String basis(Case c, WireForces f, OptionalInt visit) {
        String when = "planned stand-off";
        if (visit.isPresent()) {
            Visit v = c.visits().get(visit.getAsInt());
            when = "stand-off measured at visit " + (visit.getAsInt() + 1)
                    + v.date().value().map(d -> " (" + d + ")").orElse("");
        }
        String wire = c.wire().size().known() ? SizeSection.size(c.wire().size().value()) : "wire of unknown size";
        String material =
                c.wire().material().value().map(m -> m.word().replace('-', ' ')).orElse("unknown material");
        return wire + ", " + material + "; " + when + ": right " + Numbers.text(f.standOffRight()) + ", left "
                + Numbers.text(f.standOffLeft());
    }

    private static Map<String, Source> cited(List<Section> sections, Map<String, Source> all) {
        Map<String, Source> used = new LinkedHashMap<>();
        sections.forEach(s ->
                s.lines().forEach(l -> l.sources().forEach(k -> used.put(k, Objects.requireNonNull(all.get(k), k)))));
        return used;
    }
}
