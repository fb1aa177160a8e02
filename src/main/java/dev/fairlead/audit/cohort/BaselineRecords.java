package dev.fairlead.audit.cohort;

import static dev.fairlead.audit.cohort.Draws.tenth;

import dev.fairlead.model.Answer;
import dev.fairlead.model.ArchMeasures;
import dev.fairlead.model.BiteBefore;
import dev.fairlead.model.Child;
import dev.fairlead.model.Consent;
import dev.fairlead.model.Contacts;
import dev.fairlead.model.Fact;
import dev.fairlead.model.Films;
import dev.fairlead.model.HeadFilm;
import dev.fairlead.model.MouthExam;
import dev.fairlead.model.Plan;
import dev.fairlead.model.Side;
import dev.fairlead.model.SpaceMeasures;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.ToothRecord;
import dev.fairlead.model.shape.Draft;
import java.util.HashMap;
import java.util.Map;

/** Records, findings and plan of an invented child in whom nothing stands in the way. */
final class BaselineRecords {
    private static final double CALIPER = 0.07;

    private final InventedChild s;
    private final Draws d;

    BaselineRecords(InventedChild sketch, Draws draws) {
        s = sketch;
        d = draws;
    }

    Child child() {
        return Draft.of(Child.class, "/child")
                .set("age", d.tenth(10.2, 11.9))
                .set("sex", s.male() ? "male" : "female")
                .set("population", Fact.notApplicable())
                .set("familyClassIII", false)
                .set("historyTaken", true)
                .set("medicalFinding", false)
                .set("medicalAdvice", Answer.NOT_APPLICABLE)
                .make();
    }

    Map<Tooth, ToothRecord> teeth() {
        Map<Tooth, ToothRecord> teeth = new HashMap<>();
        double second =
                d.normal(Odontometry.SECOND_PRIMARY_MOLAR.mean(), Odontometry.SECOND_PRIMARY_MOLAR.sd(), 9.2, 10.6);
        for (Side side : Side.values()) {
            int lower = side == Side.LEFT ? 30 : 40;
            for (int position = 1; position <= 7; position++) {
                Draft<ToothRecord> tooth = tooth(lower + position)
                        .set(
                                "state",
                                position == 5
                                        ? "primary-present"
                                        : position == 4 || position == 7 ? "unerupted" : "erupted");
                if (position == 3 || position == 6) {
                    tooth.set("width", tenth(s.teeth().width(side, position)));
                } else if (position < 3) {
                    tooth.set("width", d.twice(s.teeth().width(side, position), CALIPER))
                            .set("gingivaThickness", d.tenth(1.3, 1.9))
                            .set("keratinised", d.tenth(3.2, 5))
                            .set("recession", 0);
                }
                teeth.put(Tooth.of(lower + position), tooth.make());
            }
            int primary = side == Side.LEFT ? 75 : 85;
            teeth.put(
                    Tooth.of(primary),
                    tooth(primary)
                            .set("width", tenth(second + d.uniform(-0.15, 0.15)))
                            .make());
        }
        upper(teeth);
        return teeth;
    }

    private void upper(Map<Tooth, ToothRecord> teeth) {
        double lowerSix =
                s.teeth().incisors() + s.teeth().width(Side.LEFT, 3) + s.teeth().width(Side.RIGHT, 3);
        // Bolton 1958: 77.2 with a standard deviation of 1.65 (from memory); the ends are cut
        double[] widths = Odontometry.upperFront(lowerSix, d.normal(77.2, 1.65, 75.6, 78.8));
        for (int quadrant = 10; quadrant <= 20; quadrant += 10) {
            for (int position = 1; position <= 3; position++) {
                int number = quadrant + position;
                teeth.put(
                        Tooth.of(number),
                        tooth(number)
                                .set("state", "erupted")
                                .set("width", tenth(widths[position - 1]))
                                .make());
            }
        }
    }

    private static Draft<ToothRecord> tooth(int number) {
        return Draft.of(ToothRecord.class, "/teeth/" + number);
    }

    /** Contacts at one time: the largest displacement of each is {@code most} mm. */
    Contacts contacts(String pointer, double least, double most) {
        return Draft.of(Contacts.class, pointer)
                .set("43-42", d.tenth(least, most))
                .set("42-41", d.tenth(least, most))
                .set("41-31", d.tenth(least, most))
                .set("31-32", d.tenth(least, most))
                .set("32-33", d.tenth(least, most))
                .make();
    }

    SpaceMeasures space() {
        double[] left = d.twice(s.available(Side.LEFT), 0.1);
        double[] right = d.twice(s.available(Side.RIGHT), 0.1);
        double[] incisors = d.twice(s.teeth().incisors() - s.incisorsLack(), 0.1);
        double whole = (left[0] + left[1] + right[0] + right[1] + incisors[0] + incisors[1]) / 2;
        return Draft.of(SpaceMeasures.class, "/space")
                .set("left", left)
                .set("right", right)
                .set("incisors", incisors)
                .set("perimeter", d.twice(whole + d.uniform(-0.4, 0.4), 0.1))
                .make();
    }

    ArchMeasures arch() {
        double width = d.normal(44.5, 1, 42.5, 46.5);
        // the curve between the tubes is longer than that between the molars' mesial contacts by the mesial parts of
        // both molars;
        // slopes of the beta function about 44 by 24 mm
        double between =
                s.available(Side.LEFT) + s.available(Side.RIGHT) + s.teeth().incisors() - s.incisorsLack() + 5.5;
        double depth = 24 + (between - 69.29 - 0.69 * (width - 44)) / 1.585;
        double canine = d.normal(26, 0.7, 24.5, 27.5);
        double share = 1 - (canine / width) * (canine / width);
        return Draft.of(ArchMeasures.class, "/arch")
                .set("molarWidth", tenth(width))
                .set("molarDepth", tenth(depth))
                .set("canineWidth", tenth(canine))
                .set("canineDepth", tenth(depth * (1 - Math.pow(share, 0.8))))
                .make();
    }

    Films films() {
        var models = s.start().minusDays(d.whole(14, 24));
        return Draft.of(Films.class, "/films")
                .set("models", models)
                .set("headFilm", models.minusDays(d.whole(0, 20)))
                .set("panoramic", models.minusDays(d.whole(0, 20)))
                .set("panoramicRead", true)
                .set("missingTeeth", false)
                .set("supernumerary", false)
                .set("ectopic", false)
                .set("caninePathNormal", true)
                .set("infraoccludedMolar", false)
                .set("ectopicFirstMolar", false)
                .set("shortRoots", false)
                .set("resorption", false)
                .set("secondMolarAngleLeft", d.tenth(8, 17))
                .set("secondMolarAngleRight", d.tenth(8, 17))
                .make();
    }

    HeadFilm headFilm() {
        // room for 3.6 degrees per mm of advancement, the steepest published figure
        double steepest = 92 - 3.1 * s.advance();
        return Draft.of(HeadFilm.class, "/headFilm")
                .set("incisorMandibular", d.twice(d.normal(86, 3, steepest - 6, steepest), 0.7))
                .set("mandibularPlane", d.twice(d.normal(24, 2, 20, 26), 0.5))
                .set("incisorToAPog", tenth(d.normal(-1.5, 1, -3.5, 2 - s.advance())))
                // two readings 0.8 too low, the most that they can be, leave the least of these above the limit of 1
                .set("anb", d.twice(d.normal(3, 1, 1.9, 5), 0.4))
                .set("occlusalMandibular", d.tenth(13, 19))
                .set("tippingRadius", d.tenth(21, 24))
                .make();
    }

    BiteBefore bite() {
        return Draft.of(BiteBefore.class, "/bite")
                .set("overjet", tenth(s.advance() + d.uniform(1.6, 2.8)))
                .set("overbite", d.tenth(2.5, 4))
                .set("lowerMidline", d.tenth(-0.6, 0.6))
                .set("anteriorShift", false)
                .set("biteOnBrackets", false)
                .set("molarLeft", "class-i")
                .set("molarRight", "class-i")
                .make();
    }

    MouthExam mouth() {
        return Draft.of(MouthExam.class, "/mouth")
                .set("plaqueScore", d.whole(6, 22))
                .set("untreatedCaries", false)
                .set("activeGingivitis", false)
                .set("nickelSensitivity", false)
                .set("periodontalOpinion", false)
                .set("opinionSays", Fact.notApplicable())
                .set("habitsLookedFor", true)
                .set("habit", false)
                .make();
    }

    Consent consent() {
        return Draft.of(Consent.class, "/consent")
                .set("guardian", true)
                .set("stabilityExplained", true)
                .set("risksExplained", true)
                .make();
    }

    Plan plan() {
        return Draft.of(Plan.class, "/plan")
                .set("advanceLeft", s.advance())
                .set("advanceRight", s.advance())
                .set("moreOn", "both")
                .set("standOff", Draws.half(s.standOff()))
                .set("intervalWeeks", 5)
                .set("pattern", "both-sides")
                .set("habitAddressed", Answer.NOT_APPLICABLE)
                .set("start", s.start())
                .set("percentile", 75)
                .make();
    }
}
