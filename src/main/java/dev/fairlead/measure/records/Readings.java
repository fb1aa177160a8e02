package dev.fairlead.measure.records;

import dev.fairlead.model.Case;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.HeadFilm;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.SpaceMeasures;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothRecord;
import dev.fairlead.model.shape.SharedScales;
import java.util.Map;

/**
 * The readings of a case with the best error that the case allows: its own duplicate error where enough values were
 * read twice, else the one stated or assumed.
 */
public final class Readings {
    /** Above the largest tooth number of ISO 3950. */
    private static final int TEETH = 86;

    private static final ToothRecord[] BLANK = new ToothRecord[TEETH];

    static {
        for (int n = 0; n < TEETH; n++) {
            BLANK[n] = Tooth.exists(n) ? ToothRecord.blank("/teeth/" + n) : null;
        }
    }

    private final Case c;
    private final SharedScales scales;
    private final ToothRecord[] teeth = BLANK.clone();
    private final Duplicates widths = new Duplicates();
    private final Duplicates segments = new Duplicates();
    private final Duplicates filmAngles = new Duplicates();
    private final Duplicates skeletalAngles = new Duplicates();
    private final Duplicates filmLengths = new Duplicates();

    public Readings(Case c) {
        this.c = c;
        this.scales = SharedScales.of(c);
        for (Map.Entry<Tooth, ToothRecord> t : c.teeth().entrySet()) {
            teeth[t.getKey().number()] = t.getValue();
            widths.add(t.getValue().width());
        }
        SpaceMeasures s = c.space();
        segments.add(s.left());
        segments.add(s.right());
        segments.add(s.incisors());
        segments.add(s.perimeter());
        HeadFilm h = c.headFilm();
        filmAngles.add(h.incisorMandibular());
        skeletalAngles.add(h.mandibularPlane());
        skeletalAngles.add(h.anb());
        skeletalAngles.add(h.occlusalMandibular());
        filmLengths.add(h.incisorToAPog());
        filmLengths.add(h.tippingRadius());
    }

    /** The case that the readings are of. */
    public Case ofCase() {
        return c;
    }

    /** Mesiodistal width of a tooth, mm. */
    public Measured width(Tooth tooth) {
        Measured width = widths.applyTo(teeth[tooth.number()].width(), ErrorKind.TOOTH_WIDTH);
        return c.pictured().isEmpty() ? width : scales.in("/teeth/" + tooth + "/width", width);
    }

    /** The record of a tooth, as {@link Case#tooth} gives it. */
    public ToothRecord tooth(Tooth tooth) {
        return teeth[tooth.number()];
    }

    /** Buccal segment of one side before treatment, mm. */
    public Measured segment(Side side) {
        return scales.in(
                side == Side.LEFT ? "/space/left" : "/space/right",
                segments.applyTo(c.space().side(side), ErrorKind.SEGMENT));
    }

    /** Segment of the four incisors before treatment, mm. */
    public Measured incisorSegment() {
        return scales.in("/space/incisors", segments.applyTo(c.space().incisors(), ErrorKind.SEGMENT));
    }

    /** Whole lower arch, measured on its own, mm. */
    public Measured perimeter() {
        return scales.in("/space/perimeter", segments.applyTo(c.space().perimeter(), ErrorKind.SEGMENT));
    }

    /** Lower incisor to mandibular plane before treatment, degrees. */
    public Measured incisorMandibular() {
        return filmAngles.applyTo(c.headFilm().incisorMandibular(), ErrorKind.FILM_ANGLE);
    }

    /** FMA, degrees. */
    public Measured mandibularPlane() {
        return skeletalAngles.applyTo(c.headFilm().mandibularPlane(), ErrorKind.PLANE_ANGLE);
    }

    /** Occlusal plane to mandibular plane, degrees. */
    public Measured occlusalMandibular() {
        return skeletalAngles.applyTo(c.headFilm().occlusalMandibular(), ErrorKind.PLANE_ANGLE);
    }

    /** ANB, degrees. */
    public Measured anb() {
        return skeletalAngles.applyTo(c.headFilm().anb(), ErrorKind.SKELETAL_ANGLE);
    }

    /** Lower incisor edge to A-Pog, mm. */
    public Measured incisorToAPog() {
        return scales.in(
                "/headFilm/incisorToAPog", filmLengths.applyTo(c.headFilm().incisorToAPog(), ErrorKind.FILM_LENGTH));
    }

    /** Duplicates of crown widths. */
    public Duplicates widths() {
        return widths;
    }

    /** Duplicates of arch segments. */
    public Duplicates segments() {
        return segments;
    }

    /** Duplicates of crown widths and arch segments together. */
    public Duplicates lengths() {
        Duplicates all = new Duplicates();
        all.add(widths);
        all.add(segments);
        return all;
    }

    /** Duplicates of all angles on the head film together. */
    public Duplicates angles() {
        Duplicates all = new Duplicates();
        all.add(filmAngles);
        all.add(skeletalAngles);
        return all;
    }
}
