package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.measure.schedule.ExpectedRange;
import dev.fairlead.measure.schedule.Forecast;
import dev.fairlead.measure.schedule.OwnResponse;
import dev.fairlead.measure.schedule.Route;
import dev.fairlead.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One sentence on what lies ahead of a case.
 *
 * @param mark outcome by whose colour and shape it is shown; empty for an ordinary one
 */
public record ForecastNote(String mark, String text) {
    /**
     * How long the plan still takes, whether that is in time, and how this child answers; nothing once the space is
     * being held.
     */
    static List<ForecastNote> of(Checked checked) {
        Forecast f = checked.worked().forecast().orElse(null);
        if (f == null || checked.report().stages().contains(Stage.HOLDING)) {
            return List.of();
        }
        List<ForecastNote> all = new ArrayList<>();
        f.planned().ifPresent(r -> all.add(new ForecastNote("", route(r))));
        fit(f).ifPresent(all::add);
        f.sides().forEach(s -> response(s.side().word(), s.response(), all));
        return all;
    }

    private static String route(Route r) {
        String visits = r.visits().expected() == 0
                ? "The planned advance is done on both sides."
                : "As planned, the advance takes about " + r.visits().expected() + " more visits" + range(r.visits())
                        + ".";
        return visits
                + r.end()
                        .map(e -> r.visits().expected() == 0 ? "" : " That is about " + e.expected() + range(e) + ".")
                        .orElse("");
    }

    private static String range(ExpectedRange<?> s) {
        return s.early().equals(s.late()) ? "" : " (" + s.early() + " to " + s.late() + " in nine children of ten)";
    }

    private static Optional<ForecastNote> fit(Forecast f) {
        String gone = f.gone()
                .map(g -> " The chance that one goes before the plan is done is " + Math.round(100 * g) + " %.")
                .orElse("");
        return switch (f.fit()) {
            case FITS ->
                Optional.of(new ForecastNote(
                        "", "The second primary molars are expected to stand until the plan is done." + gone));
            case TIGHT ->
                Optional.of(new ForecastNote(
                        "caution",
                        "It is tight: the second primary molars are expected to stand until the plan is done, but the ranges overlap."
                                + gone));
            case LATE ->
                Optional.of(new ForecastNote(
                        "caution",
                        "It is late: a second primary molar is expected to go before the plan is done, and with it the leeway."
                                + gone));
            case SHED ->
                Optional.of(
                        new ForecastNote(
                                "caution",
                                "A second primary molar is gone already: its leeway is being lost, or held by something else."));
            case UNKNOWN -> Optional.empty();
        };
    }

    private static void response(String side, OwnResponse r, List<ForecastNote> to) {
        if (r.outOfBand()) {
            to.add(
                    new ForecastNote(
                            "caution",
                            "The " + side + " side runs down "
                                    + Math.round(100
                                            * r.steps()
                                                    .get(r.steps().size() - 1)
                                                    .own()
                                                    .value())
                                    + " % of its stand-off between visits, farther from the usual "
                                    + Math.round(100 * r.expected().mean())
                                    + " % than chance and reading errors explain: look for a loose band or tie, or a wrong reading."));
        }
    }
}
