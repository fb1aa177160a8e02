package dev.fairlead.measure.picture;

import dev.fairlead.model.Choices.PictureKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The points that are asked for, in the order of the hand, with the definitions of the trade. */
public final class PointGuide {
    private static final String LITTLE = "Little 1975, Am J Orthod 68:554";
    private static final String COMMON = "common practice, no source";
    private static final String FILM = "definitions as in PMC5734880, figure 1";
    private static final String PLANE = "Prog Orthod 2020, 10.1186/s40510-020-00344-2";

    private static final Map<PictureKind, List<PointHelp>> ALL = Map.of(
            PictureKind.ARCH_PICTURE, arch(),
            PictureKind.SURFACE_SCAN, arch(),
            PictureKind.LATERAL_CEPHALOGRAM, film(),
            PictureKind.PANORAMIC, panoramic());

    private static final Map<PictureKind, List<String>> TWICE = Map.of(
            PictureKind.ARCH_PICTURE, List.of("D42", "D32", "M46", "M36", "I"),
            PictureKind.SURFACE_SCAN, List.of("D42", "D32", "M46", "M36", "I"),
            PictureKind.LATERAL_CEPHALOGRAM, List.of("L1a", "L1", "Go", "Me", "Po"),
            PictureKind.PANORAMIC, List.of("F36", "F37", "C37", "F46", "F47"));

    private PointGuide() {}

    /** The points of a kind of picture; none for a table, which brings its own. */
    public static List<PointHelp> of(PictureKind kind) {
        return ALL.getOrDefault(kind, List.of());
    }

    /** The five points that matter most for what the case is judged by, to be placed a second time. */
    public static List<String> twice(PictureKind kind) {
        return TWICE.getOrDefault(kind, List.of());
    }

    private static List<PointHelp> arch() {
        List<PointHelp> all = new ArrayList<>();
        contact(all, "M46", "first molar", true);
        for (int n : new int[] {43, 42, 41}) {
            contact(all, "D" + n, name(n), true);
            contact(all, "M" + n, name(n), true);
        }
        for (int n : new int[] {31, 32, 33}) {
            contact(all, "M" + n, name(n), true);
            contact(all, "D" + n, name(n), true);
        }
        contact(all, "M36", "first molar", true);
        all.add(new PointHelp(
                "I",
                "Midpoint, 41 and 31 in place",
                "On the labial side, midway between 41 and 31 where they are to stand in the planned curve.",
                COMMON,
                true));
        for (int n : new int[] {46, 36}) {
            all.add(new PointHelp(
                    "T" + n,
                    n + " tube",
                    "Mesial end of the molar tube, or the buccal point where it will be.",
                    COMMON,
                    true));
        }
        for (int n : new int[] {43, 33}) {
            all.add(new PointHelp(
                    "L" + n, n + " labial", "Most labial point of the crown, seen from above.", COMMON, true));
        }
        for (int n : new int[] {42, 41, 31, 32}) {
            all.add(new PointHelp("B" + n, n + " bracket", "Middle of the bracket slot.", COMMON, false));
        }
        for (int n : new int[] {42, 41, 31, 32}) {
            all.add(new PointHelp(
                    "L" + n, n + " labial", "Most labial point of the crown: for the arch form.", COMMON, false));
        }
        for (int n : new int[] {42, 41, 31, 32}) {
            all.add(new PointHelp("E" + n, n + " edge", "Middle of the incisal edge.", COMMON, false));
        }
        for (int n : new int[] {43, 33}) {
            all.add(new PointHelp("E" + n, n + " cusp", "Tip of the canine's cusp.", COMMON, false));
        }
        for (int n : new int[] {83, 73}) {
            contact(all, "D" + n, "primary canine, where 43 or 33 has not erupted", false);
            contact(all, "M" + n, "primary canine, where 43 or 33 has not erupted", false);
            all.add(new PointHelp("L" + n, n + " labial", "Labial point of the primary canine.", COMMON, false));
        }
        for (int n : new int[] {85, 75, 84, 74, 45, 35, 44, 34}) {
            contact(all, "D" + n, name(n), false);
            contact(all, "M" + n, name(n), false);
        }
        for (int n : new int[] {46, 36}) {
            contact(all, "D" + n, "first molar", false);
        }
        return List.copyOf(all);
    }

    private static String name(int n) {
        boolean primary = n > 50;
        return switch (n % 10) {
            case 1 -> "central incisor";
            case 2 -> "lateral incisor";
            case 3 -> "canine";
            case 4 -> primary ? "first primary molar" : "first premolar";
            default -> primary ? "second primary molar" : "second premolar";
        };
    }

    private static void contact(List<PointHelp> all, String point, String tooth, boolean needed) {
        boolean mesial = point.startsWith("M");
        all.add(new PointHelp(
                point,
                point.substring(1) + (mesial ? " mesial" : " distal"),
                "Anatomic contact point on the " + (mesial ? "mesial" : "distal") + " side of the " + tooth
                        + ": the broadest place of that side, also where it is turned or overlapped.",
                LITTLE,
                needed));
    }

    private static List<PointHelp> film() {
        return List.of(
                new PointHelp("S", "Sella", "Centre of the sella turcica.", FILM, true),
                new PointHelp("N", "Nasion", "Foremost point of the frontonasal suture.", FILM, true),
                new PointHelp("Or", "Orbitale", "Lowest point of the orbital rim; midway where two show.", FILM, true),
                new PointHelp("Po", "Porion", "Top of the bony ear canal, not of the ear rod.", FILM, true),
                new PointHelp("A", "Point A", "Deepest point of the curve below the front nasal spine.", FILM, true),
                new PointHelp("B", "Point B", "Deepest point of the curve above the chin.", FILM, true),
                new PointHelp("Pog", "Pogonion", "Foremost point of the bony chin.", FILM, true),
                new PointHelp("Me", "Menton", "Lowest point of the symphysis.", FILM, true),
                new PointHelp(
                        "Go",
                        "Gonion",
                        "Where the tangents of ramus and lower border meet; midway where two borders show.",
                        FILM,
                        true),
                new PointHelp("L1", "Lower incisor edge", "Edge of the foremost lower incisor.", FILM, true),
                new PointHelp("L1a", "Lower incisor apex", "Root tip of the same incisor.", FILM, true),
                new PointHelp(
                        "L1f",
                        "Lower incisor, labial face",
                        "Labial face of the same incisor at the height of the upper incisor's edge: what an overjet is"
                                + " measured from.",
                        COMMON,
                        false),
                new PointHelp("U1", "Upper incisor edge", "Edge of the foremost upper incisor.", FILM, true),
                new PointHelp(
                        "OPm",
                        "Occlusal plane, molar",
                        "Middle of the overlap of the first molars' cusps.",
                        PLANE,
                        true),
                new PointHelp(
                        "OPi",
                        "Occlusal plane, incisor",
                        "Middle of the overlap of upper and lower incisor.",
                        PLANE,
                        true));
    }

    private static List<PointHelp> panoramic() {
        List<PointHelp> all = new ArrayList<>();
        for (int n : new int[] {36, 37, 46, 47}) {
            String tooth = n % 10 == 6 ? "first molar" : "second molar";
            all.add(new PointHelp(
                    "C" + n, n + " crown", "Middle of the occlusal surface of the " + tooth + ".", COMMON, true));
            all.add(new PointHelp(
                    "F" + n, n + " furcation", "Where the roots of the " + tooth + " part.", COMMON, true));
        }
        return List.copyOf(all);
    }
}
