package dev.fairlead.measure.uncertainty;

import dev.fairlead.measure.records.Readings;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Tooth;

/**
 * The error that a measurement counts with: the case's own duplicate error where it has enough, else as the case states
 * or assumes it.
 */
final class RawErrors {
    private final Readings readings;

    RawErrors(Readings readings) {
        this.readings = readings;
    }

    /** The measurement with the errors that it counts with. */
    Measured counted(String pointer, Measured raw) {
        if (!raw.known()) {
            return raw;
        }
        return switch (pointer) {
            case "/space/left" -> readings.segment(Side.LEFT);
            case "/space/right" -> readings.segment(Side.RIGHT);
            case "/space/incisors" -> readings.incisorSegment();
            case "/space/perimeter" -> readings.perimeter();
            case "/headFilm/incisorMandibular" -> readings.incisorMandibular();
            case "/headFilm/mandibularPlane" -> readings.mandibularPlane();
            case "/headFilm/occlusalMandibular" -> readings.occlusalMandibular();
            case "/headFilm/anb" -> readings.anb();
            case "/headFilm/incisorToAPog" -> readings.incisorToAPog();
            default ->
                pointer.matches("/teeth/\\d\\d/width")
                        ? readings.width(Tooth.of(Integer.parseInt(pointer.substring(7, 9))))
                        : raw;
        };
    }
}
