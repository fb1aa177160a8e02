package dev.fairlead.measure.schedule;

import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What lies ahead of one side.
 *
 * @param response the share of its stand-off that it runs down between visits
 * @param planned advance planned, mm
 * @param done advance so far, mm
 * @param toDo planned less done, mm
 * @param needed advance that gives the side the room that it lacks, mm; 0 when nothing is lacking
 * @param lackingAfter room that the side still lacks after the planned advance, mm; negative when there is room to
 *     spare
 * @param target space that canine and premolars need, mm
 * @param space space at the last reading, or before treatment once the incisors stand in line, mm
 * @param reached visits until the planned advance is done, counted from now; empty while something is missing
 * @param points space visit by visit, the present first; for a chart against {@code target}
 */
public record SideForecast(
        Side side,
        OwnResponse response,
        Measured planned,
        Measured done,
        Measured toDo,
        Measured needed,
        Measured lackingAfter,
        Measured target,
        Measured space,
        Optional<ExpectedRange<Integer>> reached,
        List<Point> points) {
    /**
     * Space to be expected at one visit.
     *
     * @param visit visits from the present one, which is 0
     * @param date day of the visit; empty while no start is known
     * @param space mm
     * @param low lower end of the band that holds it in about nine cases of ten, mm
     * @param high upper end, mm
     * @param measured it was measured, and low and high are its own reading error
     */
    public record Point(int visit, Optional<LocalDate> date, double space, double low, double high, boolean measured) {}

    /**
     * Room that the side lacks now, mm: what canine and premolars need less the space that they find once the incisors
     * stand in line; negative when there is room to spare. The same that the analysis of space calls shortage.
     */
    public Measured lacking() {
        return target.minus(space);
    }

    public SideForecast {
        points = List.copyOf(points);
    }
}
