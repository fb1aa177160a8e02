package dev.fairlead.measure.picture;

import dev.fairlead.measure.archform.Point;
import dev.fairlead.model.Unit;
import java.util.List;

/** What points on a lateral cephalogram give, the face looking towards x, y up. */
final class FilmQuantities {
    private FilmQuantities() {}

    /**
     * All that the film can give.
     *
     * @param share of the distance from edge to apex at which the lower incisor is taken to tip
     */
    static List<Quantity> of(double share) {
        return List.of(
                new Quantity(
                        "/headFilm/incisorMandibular",
                        "Lower incisor to mandibular plane (Go-Me)",
                        Unit.DEGREE,
                        List.of("L1a", "L1", "Me", "Go"),
                        q -> between(line(q, "L1a", "L1"), line(q, "Me", "Go")),
                        2.5,
                        "The apex is the hardest of these points to see; 4.3° on a poor film."),
                new Quantity(
                        "/headFilm/mandibularPlane",
                        "Mandibular plane (Go-Me) to Frankfort horizontal",
                        Unit.DEGREE,
                        List.of("Po", "Or", "Go", "Me"),
                        q -> turned(line(q, "Go", "Me"), line(q, "Po", "Or")),
                        1.6,
                        "Porion is the bony ear canal, not the ear rod."),
                new Quantity(
                        "/headFilm/anb",
                        "ANB",
                        Unit.DEGREE,
                        List.of("S", "N", "A", "B"),
                        q -> between(line(q, "N", "S"), line(q, "N", "A"))
                                - between(line(q, "N", "S"), line(q, "N", "B")),
                        0.8,
                        ""),
                new Quantity(
                        "/headFilm/incisorToAPog",
                        "Lower incisor edge to A-Pog",
                        Unit.MM,
                        List.of("L1", "A", "Pog", "N", "S"),
                        q -> {
                            Point along = line(q, "Pog", "A").unit();
                            return cross(line(q, "Pog", "L1"), along);
                        },
                        0.7,
                        "Nasion and sella tell which side is the front."),
                new Quantity(
                        "/headFilm/tippingRadius",
                        "Edge to centre of tipping, " + Math.round(share * 100) + " % of edge to apex",
                        Unit.MM,
                        List.of("L1", "L1a"),
                        q -> share * q.distance("L1", "L1a"),
                        0.8,
                        "Where a tooth tips varies with load and bone; the share is from memory."),
                new Quantity(
                        "/headFilm/occlusalMandibular",
                        "Occlusal plane to mandibular plane (Go-Me)",
                        Unit.DEGREE,
                        List.of("OPm", "OPi", "Go", "Me"),
                        q -> turned(line(q, "Go", "Me"), line(q, "OPm", "OPi")),
                        1.6,
                        ""),
                new Quantity(
                        "/bite/overbite",
                        "Overbite on the film",
                        Unit.MM,
                        List.of("U1", "L1", "OPm", "OPi"),
                        q -> cross(line(q, "OPm", "OPi").unit(), line(q, "U1", "L1")),
                        0.5,
                        ""),
                new Quantity(
                        "/bite/overjet",
                        "Overjet on the film, to the labial face",
                        Unit.MM,
                        List.of("U1", "L1f", "OPm", "OPi"),
                        q -> line(q, "L1f", "U1").dot(line(q, "OPm", "OPi").unit()),
                        0.5,
                        "Of the foremost incisors, along the occlusal plane."),
                new Quantity(
                        "",
                        "Incisors edge to edge on the film",
                        Unit.MM,
                        List.of("U1", "L1", "OPm", "OPi"),
                        q -> line(q, "L1", "U1").dot(line(q, "OPm", "OPi").unit()),
                        0.5,
                        "Not the overjet, which reaches to the labial face."));
    }

    private static Point line(Places q, String from, String to) {
        return q.flat(to).minus(q.flat(from));
    }

    private static double cross(Point a, Point b) {
        return a.x() * b.y() - a.y() * b.x();
    }

    /** Angle between two directions, 0 to 180 degrees. */
    private static double between(Point a, Point b) {
        return Math.toDegrees(Math.atan2(Math.abs(cross(a, b)), a.dot(b)));
    }

    /** By how much the second direction is turned from the first, counter-clockwise positive, degrees. */
    private static double turned(Point from, Point to) {
        return Math.toDegrees(Math.atan2(cross(from, to), from.dot(to)));
    }
}
