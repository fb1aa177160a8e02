package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.Block;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.FormBuilder;
import dev.fairlead.web.form.FormPage;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.form.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Visits of a case: what comes next, how the space grows, and a short form for a new visit. */
final class VisitsController extends Controller {
    VisitsController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/visits", ctx -> show(ctx, editable(ctx), ""));
        routes.post("/cases/{name}/visits", this::log);
    }

    private void show(Context ctx, Opened opened, String said) {
        Map<String, Object> model = new HashMap<>();
        Checked checked = site.reports().checked(opened).orElse(null);
        List<SpaceCourse> sides = checked == null ? List.of() : SpaceCourse.of(checked);
        model.put("said", said);
        model.put("sides", sides);
        model.put("charts", SpaceChart.of(sides));
        model.put(
                "next",
                checked == null
                        ? new NextStep("stop", "Correct the case first.", "It cannot be read as it stands.")
                        : NextStep.of(checked, sides));
        model.put("outlook", checked == null ? List.of() : ForecastNote.of(checked));
        model.put("visits", checked == null ? List.of() : checked.subject().visits());
        model.put("fresh", fresh(opened));
        model.put("today", site.today().get().toString());
        page(ctx, opened, "web/visits.jte", "visits-page", "Visits", model);
    }

    private FormPage fresh(Opened opened) {
        int n = opened.tree().map(t -> t.size("/visits")).orElse(0);
        Fields fields = new Fields(opened, site.editor().refused(opened.name()), p -> List.of());
        List<Block> blocks = new FormBuilder(fields, "")
                .record(
                        "",
                        "/visits/" + n,
                        CasePaths.field("/visits").orElseThrow().nested());
        return new FormPage(
                Urls.of(opened.name()),
                Objects.requireNonNull(FormSection.of("visits")),
                blocks,
                false,
                false,
                "/visits/" + n);
    }

    private void log(Context ctx) {
        Opened opened = editable(ctx);
        Map<String, String> typed = Typed.of(ctx.formParamMap(), "");
        typed.values().removeIf(String::isEmpty);
        // with nothing but a day there is no visit to log
        if (typed.size() < 2) {
            show(ctx.status(422), opened, "Nothing was logged: fill in at least one thing that was done or seen.");
            return;
        }
        EditResult outcome = change(ctx, opened, typed);
        if (!outcome.clashes().isEmpty()) {
            page(
                    ctx.status(409),
                    outcome.now(),
                    "web/clash.jte",
                    "visits-page",
                    "Two windows",
                    Map.of("clashes", outcome.clashes(), "back", "visits"));
        } else if (!outcome.refused().isEmpty()) {
            ctx.redirect(
                    Urls.of(opened.name()) + "/form/visits#"
                            + dev.fairlead.web.form.FieldView.id(
                                    outcome.refused().keySet().iterator().next()),
                    HttpStatus.SEE_OTHER);
        } else {
            ctx.redirect(Urls.of(opened.name()) + "/visits", HttpStatus.SEE_OTHER);
        }
    }
}
