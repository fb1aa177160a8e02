package dev.fairlead.report.html;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.Front;
import dev.fairlead.measure.arch.PositionResult;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.schedule.SideForecast;
import dev.fairlead.measure.space.SpaceResult;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The numbers that a presentation opens with. */
public final class KeyNumbers {
    /**
     * One of them.
     *
     * @param values with error and unit, or "unknown"; one for each side where sides differ
     * @param remark what it stands beside; may be empty
     */
    public record KeyNumber(String label, List<String> values, String remark) {}

    /** More of what a number waits for is counted, not named. */
    private static final int NAMED = 2;

    private final Checked checked;
    private final List<KeyNumber> all = new ArrayList<>();

    private KeyNumbers(Checked checked) {
        this.checked = checked;
    }

    static List<KeyNumber> of(Checked checked) {
        KeyNumbers n = new KeyNumbers(checked);
        n.space();
        n.plan();
        n.incisors();
        n.ahead();
        return n.all;
    }

    private void space() {
        SpaceResult s = checked.worked().space();
        add("Crowding of the front", s.irregularity(), "irregularity index");
        add("The whole arch lacks", s.totalShortage(), both(s.required(), s.available(), "need ", ", room "));
        sides(
                "Each side lacks",
                s.right().shortage(),
                s.left().shortage(),
                "canine and premolars, with half of what the incisors lack"
                        + (checked.subject().visits().isEmpty() ? "" : "; before treatment"));
    }

    private void plan() {
        String needed = checked.worked()
                .front()
                .map(Front::position)
                .filter(p -> p.left().chord().known() && p.right().chord().known())
                .map(p -> "needed: " + pair(needed(p, Side.RIGHT), needed(p, Side.LEFT)))
                .orElse("");
        sides(
                "Advance planned",
                checked.subject().plan().advanceRight(),
                checked.subject().plan().advanceLeft(),
                needed);
    }

    private static Measured needed(PositionResult p, Side side) {
        return p.side(side).chord().max(Measured.exact(0, Unit.MM));
    }

    private void incisors() {
        Measured before = checked.subject().headFilm().incisorMandibular();
        add(
                "Incisors to mandibular plane, after",
                checked.worked().position().inclination(),
                before.known() ? "before: " + Numbers.text(before) : "");
        Measured end = checked.subject().holding().incisorMandibular();
        if (end.known()) {
            add("The same, measured at the end", end, "");
        }
        Measured overjet = checked.subject().bite().overjet();
        add(
                "Overjet after",
                checked.worked().position().overjet(),
                overjet.known() ? "before: " + Numbers.text(overjet) : "");
    }

    /** What was reached at the end; before it, where the sides stand and what is still to come. */
    private void ahead() {
        Measured right = checked.subject().holding().spaceRight();
        Measured left = checked.subject().holding().spaceLeft();
        Optional<Forecast> forecast = checked.worked().forecast();
        if (checked.report().stages().contains(Stage.HOLDING) && right.known() && left.known()) {
            sides(
                    "Space at the end",
                    right,
                    left,
                    need(
                            checked.worked().space().right().required(),
                            checked.worked().space().left().required()));
        } else {
            forecast.ifPresent(this::forecast);
        }
    }

    private void forecast(Forecast f) {
        SideForecast right = f.side(Side.RIGHT);
        SideForecast left = f.side(Side.LEFT);
        if (!checked.subject().visits().isEmpty()
                && right.space().known()
                && left.space().known()) {
            sides("Space now", right.space(), left.space(), need(right.target(), left.target()));
        }
        f.planned()
                .ifPresent(r -> all.add(new KeyNumber(
                        "Visits still to come",
                        List.of(String.valueOf(r.visits().expected())),
                        (r.visits().early().equals(r.visits().late())
                                        ? ""
                                        : r.visits().early() + " to "
                                                + r.visits().late() + " in nine cases of ten; ")
                                + r.end()
                                        .map(e -> "done about " + e.expected())
                                        .orElse("the day of the end is not known"))));
    }

    private static String need(Measured right, Measured left) {
        return right.known() && left.known() ? "need: " + pair(right, left) : "";
    }

    private void add(String label, Measured m, String remark) {
        all.add(new KeyNumber(label, List.of(whole(m)), m.known() || !m.applies() ? remark : missing(m)));
    }

    private void sides(String label, Measured right, Measured left, String remark) {
        boolean same = right.known() && left.known() && Numbers.text(right).equals(Numbers.text(left));
        Measured either = right.plus(left);
        boolean none = !right.known() && !left.known();
        List<String> values = same
                ? List.of(whole(right))
                : none ? List.of(whole(either)) : List.of("right " + whole(right), "left " + whole(left));
        String told = same ? "each side" + (remark.isEmpty() ? "" : "; " + remark) : remark;
        all.add(new KeyNumber(label, values, either.known() || !either.applies() ? told : missing(either)));
    }

    /** A quantity that no line breaks. */
    private static String whole(Measured m) {
        return m.known() ? Numbers.text(m).replace(' ', '\u00a0') : Numbers.text(m);
    }

    private static String pair(Measured right, Measured left) {
        return "right " + whole(right) + ", left " + whole(left);
    }

    private static String both(Measured a, Measured b, String first, String second) {
        return a.known() && b.known() ? first + whole(a) + second + whole(b) : "";
    }

    private String missing(Measured m) {
        return Missing.line(Missing.of(m, checked.subject()), NAMED);
    }
}
