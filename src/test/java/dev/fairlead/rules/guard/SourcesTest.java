package dev.fairlead.rules.guard;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Source;
import dev.fairlead.rules.catalogue.Threshold;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the rulebase says of its sources is what is known of them, and no more. */
class SourcesTest {
    private static final Catalogue CATALOGUE = ProjectRules.rulebase().catalogue();
    private static final Collection<Source> SOURCES = CATALOGUE.sources().values();

    @Test
    void whatWasNotReadItselfIsMarkedSo() {
        assertThat(SOURCES.stream()
                        .filter(s -> s.citation().matches(".*(secondary text|as cited in).*"))
                        .map(Source::kind))
                .isNotEmpty()
                .allMatch(k -> k == Source.Kind.PUBLISHED_SECOND_HAND || k == Source.Kind.FROM_MEMORY);
        assertThat(SOURCES.stream()
                        .filter(s -> s.citation().contains("recalled from memory"))
                        .map(Source::kind))
                .isNotEmpty()
                .noneMatch(k -> k == Source.Kind.PUBLISHED);
    }

    @Test
    void eachHasANameForALine() {
        assertThat(SOURCES).allMatch(s -> s.named().length() >= 5 && s.named().length() <= 50, "a name for a line");
        assertThat(SOURCES.stream().filter(s -> s.kind() == Source.Kind.FROM_MEMORY))
                .allMatch(s -> s.named().contains("memory") || s.citation().contains("from memory"));
    }

    /** Limits that no author names are not credited to one. */
    @ParameterizedTest
    @CsvSource({
        "tooth-widths-plausible.sd",
        "second-molars-watched.most",
    })
    void aLimitChosenHereIsCalledSo(String name) {
        Threshold t = CATALOGUE.thresholds().get(name);
        assertThat(t.sources().stream().map(k -> CATALOGUE.sources().get(k).kind()))
                .containsExactly(Source.Kind.OWN_CHOICE);
    }

    private static Criterion criterion(String id) {
        return CATALOGUE.criterion(id);
    }

    /** Rubin, Baccetti & McNamara 2012 (abstract): significant for the protocols with the plate alone. */
    @Test
    void secondMolarsAreToldAsTheStudiesHaveThem() {
        for (String id : List.of("second-molars-watched", "holding-arch-not-too-long")) {
            assertThat(criterion(id).dispute()).as(id).contains("significant").doesNotContain("Both saw more");
            assertThat(criterion(id).sources()).as(id).contains("holding-review-2021a", "holding-review-2021b");
        }
        // Angle Orthod 2021, doi 10.2319/091720-799.1, and BMC Oral Health 2021, s12903-021-01755-1 (abstracts)
        assertThat(citation("holding-review-2021a")).contains("7.57", "3.72 to 15.41", "24°", "two years");
        assertThat(citation("holding-review-2021b")).contains("3.14", "1.10 to 8.92", "very low certainty");
    }

    /** Meling, Ødegaard & Segner 1998 (abstract): ten labial brackets of 0.018 in, 0.476 ± 0.003 mm. */
    @Test
    void slotsOfLabialBracketsRestOnLabialBrackets() {
        assertThat(citation("slot-sizes")).contains("labial", "Meling", "0.476").doesNotContain("lingual");
        assertThat(citation("lingual-slot-sizes")).contains("lingual", "0.459 to 0.467");
        assertThat(criterion("slot-takes-wire").dispute()).contains("Ten labial", "lingual ones");
    }

    @Test
    void figuresFromElsewhereSayWhereTheyComeFrom() {
        assertThat(citation("programmed-movement")).contains("removable trays", "upper");
        assertThat(criterion("total-force-band").sources()).doesNotContain("force-review-2019");
        assertThat(criterion("cut-end-caught").sources()).contains("lost-pieces");
        assertThat(criterion("incisor-inclination-after").dispute()).contains("Renkema 2015", "2.5° to 3.6°", "2.9°");
        assertThat(criterion("overbite-after").dispute()).contains("16 ± 5°", "0.7°");
        assertThat(criterion("class-iii-caution").dispute()).contains("4.68 ± 1.76°");
        assertThat(criterion("buccal-window-open").dispute()).contains("2.1 mm", "4.0 mm");
        assertThat(criterion("plan-meets-need").dispute()).contains("1.2 to 2.1");
        assertThat(criterion("hygiene-at-visit").asks()).contains("O'Leary");
        assertThat(criterion("root-check-decided").dispute()).contains("none as a routine");
    }

    @Test
    void everySourceIsCitedSomewhere() {
        List<String> cited = CATALOGUE.criteria().stream()
                .flatMap(c -> Stream.concat(
                        c.sources().stream(), c.thresholds().values().stream().flatMap(t -> t.sources().stream())))
                .distinct()
                .toList();
        assertThat(cited)
                .hasSizeGreaterThan(50)
                .allMatch(k -> CATALOGUE.sources().containsKey(k));
    }

    private static String citation(String key) {
        return CATALOGUE.sources().get(key).citation();
    }
}
