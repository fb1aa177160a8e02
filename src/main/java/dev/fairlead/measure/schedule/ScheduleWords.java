package dev.fairlead.measure.schedule;

import dev.fairlead.measure.statistics.NumberWithError;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.Pattern;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Pointers;
import dev.fairlead.model.Side;
import dev.fairlead.model.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Notes how the forecast came about. */
final class ScheduleWords {
    private static final String GROUP = "Schedule";
    private static final String MODEL =
            "In each interval a side runs down the same share of its stand-off, at most 1 mm a month.";

    private final Case c;
    private final Forecast f;
    private final Workbook book;

    ScheduleWords(Case c, Forecast f, Workbook book) {
        this.c = c;
        this.f = f;
        this.book = book;
    }

    void write() {
        f.sides().forEach(this::response);
        f.sides().forEach(this::advance);
        for (Pattern p : Pattern.values()) {
            route(p);
        }
        for (Side side : Side.values()) {
            leeway(f.shedding(PrimaryTooth.SECOND_MOLAR, side));
        }
        fit();
    }

    private void response(SideForecast s) {
        OwnResponse r = s.response();
        String side = Say.side(s.side());
        NumberWithError e = r.estimate();
        Measured share = Measured.of(100 * e.value(), Unit.PERCENT, "response of this child", 100 * e.error());
        OwnResponse.Step last =
                r.steps().isEmpty() ? null : r.steps().get(r.steps().size() - 1);
        String note = last == null
                ? "Nothing was read yet that tells this child's own response"
                        + (r.missing().isEmpty() ? "" : " (missing: " + String.join(", ", r.missing()) + ")")
                        + "; 65 % (SD 20 %) is common practice for any child."
                : "Up to visit " + last.visit() + " this side ran down "
                        + percent(last.own().value())
                        + " of its stand-off; any child is expected to run down 65 % (SD 20 %,"
                        + " common practice). The readings are certain enough for a weight of " + percent(last.weight())
                        + " of the child's own figure."
                        + (last.outOfBand()
                                ? " The own figure is out of the usual band, farther off than chance and reading errors explain: look for a loose band or tie, or a wrong reading."
                                : "");
        book.add(() -> Working.of(
                "schedule.response." + side,
                GROUP,
                "share of the stand-off that is run down between visits, " + side,
                share,
                last == null ? "as expected of any child" : "w x own + (1 - w) x 65, w = 20² / (20² + error of own²)",
                last == null
                        ? "65"
                        : Say.num(last.weight()) + " x "
                                + Say.num(100 * last.own().value()) + " + " + Say.num(1 - last.weight()) + " x 65",
                note,
                "common-practice",
                "programmed-movement"));
    }

    private void advance(SideForecast s) {
        String side = Say.side(s.side());
        book.add(() -> Working.of(
                "schedule.to-do." + side,
                GROUP,
                "planned advance still to do, " + side,
                s.toDo(),
                "planned advance - advance so far",
                Say.num(s.planned()) + " - " + Say.signed(s.done()),
                "So far: growth of the space since the first visit over 0.866 (0.6 to 1.05 were seen; the error spans them), or the incisors' own movement where the space was not read.",
                "geometry"));
        book.add(() -> Working.of(
                "schedule.needed." + side,
                GROUP,
                "advance still needed for the room that is lacking, " + side,
                s.needed(),
                "(need - space) / 0.866, at least 0",
                "(" + Say.num(s.target()) + " - " + Say.num(s.space()) + ") / 0.866",
                "Space: as last read; before the first visit the buccal segment less half of what the incisors lack.",
                "geometry"));
        book.add(() -> Working.of(
                "schedule.lacking-after." + side,
                GROUP,
                "room still lacking after the planned advance, " + side,
                s.lackingAfter(),
                "need - space - 0.866 x advance still to do",
                Say.num(s.target()) + " - " + Say.num(s.space()) + " - 0.866 x " + Say.signed(s.toDo()),
                "Negative: room to spare. The measured space contains the leeway; nothing is added for it.",
                "geometry"));
    }

    private void route(Pattern p) {
        Optional<Route> route =
                f.routes().stream().filter(r -> r.pattern() == p).findFirst();
        boolean planned = f.pattern().is(p);
        Measured activations = route.map(r -> Measured.exact(r.activations().expected(), Unit.COUNT))
                .orElseGet(() -> Measured.unknown(f.missing().isEmpty() ? List.of("/plan/standOff") : f.missing()));
        String words = p == Pattern.BOTH_SIDES ? "both sides at each visit" : "sides in turn";
        book.add(() -> Working.of(
                "schedule.activations." + p.word(),
                GROUP,
                "activations still to come, " + words + (planned ? " (as planned)" : ""),
                activations,
                "visit by visit: gain = share x stand-off, until both sides have come as far as planned",
                "to do " + Say.num(f.side(Side.LEFT).toDo()) + " left, "
                        + Say.num(f.side(Side.RIGHT).toDo()) + " right; stand-off "
                        + (c.plan().sidedStandOff()
                                ? Say.num(c.plan().standOff(Side.LEFT)) + " left, "
                                        + Say.num(c.plan().standOff(Side.RIGHT)) + " right"
                                : Say.num(c.plan().standOff())),
                route.map(r -> range(r) + " " + MODEL).orElse(MODEL),
                "common-practice",
                "rate-of-movement"));
    }

    private static String range(Route r) {
        return "From " + r.activations().early() + " to " + r.activations().late() + " in about nine children of ten"
                + r.end()
                        .map(e -> "; done by " + e.expected() + ", at the earliest " + e.early() + ", at the latest "
                                + e.late())
                        .orElse("")
                + ".";
    }

    private void leeway(Shedding s) {
        String side = Say.side(s.side());
        Measured age = s.row()
                .map(r -> Measured.of(r.mean(), Unit.YEAR, "age at shedding among children", r.sd()))
                .orElseGet(() -> Measured.unknown(s.missing()));
        String note = s.stands().no()
                ? "It does not stand any more: leeway is being lost unless something holds the first molar."
                : s.date()
                        .map(d -> "Given that it stood at " + Say.num(s.age()) + " years: about " + d.expected()
                                + "; from " + d.early() + " to " + d.late()
                                + " in nine children of ten. Leeway starts to be lost when it goes.")
                        .orElse("");
        book.add(() -> Working.of(
                "schedule.leeway-until." + side,
                GROUP,
                "age at which the second primary molar goes, " + side,
                age,
                "table of ages by sex, mean and standard deviation",
                "",
                note,
                s.row().map(Exfoliation::source).orElse("moorrees-exfoliation")));
    }

    private void fit() {
        Optional<LocalDate> end = f.planned().flatMap(Route::end).map(ExpectedRange::expected);
        Measured gone = f.gone()
                .map(g -> Measured.exact(100 * g, Unit.PERCENT))
                .orElseGet(() -> f.fit() == Fit.SHED ? Measured.notApplicable() : Measured.unknown(absent()));
        String words = switch (f.fit()) {
            case FITS -> "The plan fits: even its late end comes before the early end of shedding.";
            case TIGHT ->
                "The plan is tight: it is expected to end before the second primary molar goes, but the ranges overlap.";
            case LATE -> "The plan is late: it is expected to end after the second primary molar goes.";
            case SHED -> "A second primary molar is gone already.";
            case UNKNOWN -> "";
        };
        book.add(() -> Working.of(
                "schedule.gone-before-end",
                GROUP,
                "chance that a second primary molar goes before the plan is done",
                gone,
                "(F(age at end) - F(age at records)) / (1 - F(age at records)), F normal",
                "end " + end.map(LocalDate::toString).orElse("?"),
                words,
                "moorrees-exfoliation"));
    }

    /** What keeps the chance from being worked out. */
    private List<String> absent() {
        List<String> all = f.missing();
        for (Side side : Side.values()) {
            all = Pointers.union(
                    all, f.shedding(PrimaryTooth.SECOND_MOLAR, side).missing());
        }
        // nothing is missing, and yet the plan has no end: the stand-off moves nothing
        return all.isEmpty() ? List.of("/plan/standOff") : all;
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
