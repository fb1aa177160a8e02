package dev.fairlead.picture.into;

import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.picture.PictureMeasures;
import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.measure.picture.PictureValue;
import dev.fairlead.model.Case;
import dev.fairlead.model.ErrorKind;
import dev.fairlead.model.Field;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.model.shape.FieldShape;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which readings of a picture a case can take, and puts them in: into an empty field as they are, into one that holds
 * readings as one more of them, so that typed and pictured readings are averaged; nothing typed is ever replaced.
 */
public final class CaseOffers {
    private static final int MOST_READINGS = 20;

    private CaseOffers() {}

    /** What a case could take of these values; those that have no field in a case are left out. */
    public static List<Offer> of(Case c, CaseTree tree, Collection<PictureValue> values) {
        List<Offer> all = new ArrayList<>();
        for (PictureValue v : values) {
            Optional<FieldShape> field = CasePaths.field(v.pointer());
            if (!v.pointer().isEmpty() && field.isPresent()) {
                all.add(offer(c, tree, v, field.get().about()));
            }
        }
        return all;
    }

    private static Offer offer(Case c, CaseTree tree, PictureValue v, Field about) {
        Measured old = (Measured) Edit.get(c, v.pointer());
        String there = old.known() || old.doesNotApply() ? tree.get(v.pointer()).orElse("") : "";
        double value = rounded(v.value(), v.unit());
        if (value < about.low() || value > about.high()) {
            return new Offer(v, there, "", text(value) + " is outside what a case takes here, " + Slips.range(about));
        }
        if (!old.known()) {
            return new Offer(v, there, text(value) + " ± " + text(error(v.sd())), "");
        }
        double[] readings = old.repeatCount() > 0 ? old.repeats() : new double[] {old.value()};
        if (readings.length >= MOST_READINGS) {
            return new Offer(v, there, "", "a field takes no more than " + MOST_READINGS + " readings");
        }
        int n = readings.length;
        StringBuilder becomes = new StringBuilder();
        for (double r : readings) {
            becomes.append(text(r)).append("; ");
        }
        // the mean of n readings with the error s, and one more with the error t
        double sd = Math.sqrt(n * n * old.sd() * old.sd() + v.sd() * v.sd()) / (n + 1);
        return new Offer(v, there, becomes.append(text(value)) + " ± " + text(error(sd)), "");
    }

    /**
     * Puts the readings in, and where each came from.
     *
     * @param points landmarks of the arch to go with them, as {@link PictureMeasures#landmarks} gives them; a case that
     *     has landmarks keeps its own
     */
    public static void put(CaseTree tree, Collection<Offer> taken, Map<String, double[]> points, Origin origin) {
        int entry = tree.size("/pictured");
        int picture = 1;
        for (int i = 0; i < entry; i++) {
            String n = tree.get("/pictured/" + i + "/picture").orElse("");
            picture = n.matches("\\d{1,2}") ? Math.max(picture, Integer.parseInt(n) + 1) : picture;
        }
        for (Offer o : taken) {
            if (!o.possible()) {
                throw new IllegalArgumentException(o.value().pointer() + " cannot be taken: " + o.refusal());
            }
            tree.set(o.value().pointer(), o.becomes());
            String at = "/pictured/" + entry++;
            origin(tree, at, o.value().pointer(), picture, origin, o.value().unit() == Unit.MM);
            tree.set(at + "/value", rounded(o.value().value(), o.value().unit()));
            tree.set(at + "/sd", error(o.value().sd()));
        }
        if (tree.size("/landmarks") == 0 && landmarks(tree, points, origin)) {
            origin(tree, "/pictured/" + entry, "/landmarks", picture, origin, true);
        }
    }

    private static void origin(CaseTree tree, String at, String field, int picture, Origin origin, boolean length) {
        PictureResult r = origin.result();
        tree.set(at + "/field", field);
        tree.set(at + "/from", origin.from().word());
        tree.set(at + "/picture", picture);
        tree.set(at + "/date", origin.date().toString());
        if (length && r.scale().isPresent()) {
            tree.set(at + "/scale", r.scale().get().word());
            tree.set(at + "/scaleError", error(r.scaleError()));
        }
        tree.set(at + "/placedTwice", origin.again().isEmpty() ? "no" : "yes");
    }

    private static boolean landmarks(CaseTree tree, Map<String, double[]> points, Origin origin) {
        int n = 0;
        for (Map.Entry<String, double[]> p : points.entrySet()) {
            String kind = switch (p.getKey().charAt(0)) {
                case 'M' -> "mesial";
                case 'D' -> "distal";
                case 'L' -> "labial";
                case 'T' -> "tube";
                case 'B' -> "bracket";
                case 'E' -> p.getKey().endsWith("3") ? "cusp" : "incisal";
                default -> "";
            };
            if (!kind.isEmpty() && p.getKey().length() == 3) {
                String at = "/landmarks/" + n++;
                tree.set(at + "/tooth", p.getKey().substring(1));
                tree.set(at + "/point", kind);
                double placing = placing(p.getKey(), origin);
                tree.set(at + "/x", coordinate(p.getValue()[0], placing, origin));
                tree.set(at + "/y", coordinate(p.getValue()[1], placing, origin));
            }
        }
        return n > 0;
    }

    /** One standard deviation of a coordinate from placing alone, mm: the hand's own where it is known. */
    private static double placing(String point, Origin origin) {
        return origin.result()
                .ownError()
                .map(own -> own / (origin.again().contains(point) ? Math.sqrt(2) : 1))
                .orElse(ErrorKind.ARCH_DIMENSION.defaultSd());
    }

    private static String coordinate(double mm, double placing, Origin origin) {
        double scale = mm * origin.result().scaleError() / 100;
        return text(rounded(mm, Unit.MM)) + " ± " + text(error(Math.hypot(placing, scale)));
    }

    private static double rounded(double v, Unit unit) {
        return new BigDecimal(v)
                .setScale(unit == Unit.DEGREE ? 1 : 2, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    /** An error is rounded up: it is never told smaller than it is. */
    private static double error(double sd) {
        return new BigDecimal(sd).setScale(2, RoundingMode.UP).doubleValue();
    }

    private static String text(double v) {
        return BigDecimal.valueOf(v).stripTrailingZeros().toPlainString();
    }
}
