package dev.fairlead.measure.picture;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Choices.PictureKind;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The points that are asked for: named as the trade names them, and all that the numbers need. */
class PointGuideTest {
    private static PointHelp point(PictureKind kind, String name) {
        return PointGuide.of(kind).stream()
                .filter(p -> p.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Teeth by ISO 3950: 4 and 5 are premolars in the permanent dentition and molars in the primary one. */
    @ParameterizedTest
    @CsvSource({
        "M46, 46 mesial, mesial side of the first molar:, true",
        "D46, 46 distal, distal side of the first molar:, false",
        "D41, 41 distal, distal side of the central incisor:, true",
        "M32, 32 mesial, mesial side of the lateral incisor:, true",
        "D43, 43 distal, distal side of the canine:, true",
        "M44, 44 mesial, mesial side of the first premolar:, false",
        "M35, 35 mesial, mesial side of the second premolar:, false",
        "D84, 84 distal, distal side of the first primary molar:, false",
        "M75, 75 mesial, mesial side of the second primary molar:, false",
        "M73, 73 mesial, 'mesial side of the primary canine, where 43 or 33 has not erupted:', false"
    })
    void contactsAreNamedByToothAndSide(String name, String title, String where, boolean needed) {
        for (PictureKind kind : List.of(PictureKind.ARCH_PICTURE, PictureKind.SURFACE_SCAN)) {
            PointHelp p = point(kind, name);
            assertThat(p.title()).isEqualTo(title);
            assertThat(p.where()).contains("contact point on the " + where);
            assertThat(p.needed()).isEqualTo(needed);
        }
    }

    @ParameterizedTest
    @CsvSource({"36, first", "37, second", "46, first", "47, second"})
    void molarsOnAPanoramicFilm(int tooth, String which) {
        assertThat(point(PictureKind.PANORAMIC, "C" + tooth).where())
                .isEqualTo("Middle of the occlusal surface of the " + which + " molar.");
        assertThat(point(PictureKind.PANORAMIC, "F" + tooth).where())
                .isEqualTo("Where the roots of the " + which + " molar part.");
    }

    @ParameterizedTest
    @EnumSource(PictureKind.class)
    void fivePointsArePlacedTwiceAndAllOfThemAreAskedFor(PictureKind kind) {
        Set<String> asked = PointGuide.of(kind).stream().map(PointHelp::name).collect(Collectors.toSet());
        assertThat(asked).as("each once").hasSameSizeAs(PointGuide.of(kind));
        if (kind == PictureKind.POINT_TABLE) {
            assertThat(asked).isEmpty();
            assertThat(PointGuide.twice(kind)).isEmpty();
        } else {
            assertThat(PointGuide.twice(kind)).hasSize(5).isSubsetOf(asked);
        }
    }

    /**
     * Every number of a complete picture can be had from the points that the guide asks for: 18 widths, 5 contacts, 4
     * lengths, 5 of the arch's form, 4 brackets.
     */
    @Test
    void theGuideAsksForWhateverTheNumbersNeed() {
        Map<String, double[]> all = new TreeMap<>();
        PointGuide.of(PictureKind.ARCH_PICTURE).forEach(p -> all.put(p.name(), new double[3]));
        Places arch = new Places(all, Places.X, Places.Y);
        assertThat(ArchQuantities.of(arch))
                .hasSize(36)
                .allMatch(q -> q.missing(arch).isEmpty());
        Map<String, double[]> film = new TreeMap<>();
        PointGuide.of(PictureKind.LATERAL_CEPHALOGRAM).forEach(p -> film.put(p.name(), new double[3]));
        Places head = new Places(film, Places.X, Places.Y);
        assertThat(FilmQuantities.of(0.65))
                .hasSize(9)
                .allMatch(q -> q.missing(head).isEmpty());
    }
}
