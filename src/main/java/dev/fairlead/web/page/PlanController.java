package dev.fairlead.web.page;

import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.form.Typed;
import dev.fairlead.web.plan.PlanSearch;
import dev.fairlead.web.plan.Plans;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;

/**
 * What would clear a warning: the smallest changes of the plan, what they would change, and one press that makes them.
 */
final class PlanController extends Controller {
    /** So long a page waits for a search; after that it says that it is under way, and asks again. */
    private static final Duration PROMPT = Duration.ofMillis(800);

    private final Plans plans;

    PlanController(Site site) {
        super(site);
        plans = new Plans(site.reports().checks()::checker, site.today());
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/whatif", ctx -> show(ctx, ""));
        routes.get("/cases/{name}/whatif/{id}", ctx -> show(ctx, ctx.pathParam("id")));
        routes.post("/cases/{name}/whatif", this::take);
    }

    private void show(Context ctx, String id) {
        Opened opened = editable(ctx);
        Panel panel = site.reports().panel(opened);
        if (panel.report().isEmpty()) {
            throw new PageError(
                    409,
                    "The case cannot be read as it stands, so no plan can be judged",
                    "Mend what is listed under findings first.");
        }
        if (!id.isEmpty() && panel.finding(id).isEmpty()) {
            throw PageError.noFinding();
        }
        PlanSearch answer = plans.of(opened, PROMPT);
        Map<String, Object> model = new HashMap<>(Map.of(
                "answer",
                id.isEmpty() ? answer : answer.about(id),
                "id",
                id,
                "panel",
                panel,
                "head",
                head(ctx, opened, "findings")));
        if (partial(ctx)) {
            site.views().part(ctx, "web/plans.jte", model);
        } else {
            page(ctx, opened, "web/planspage.jte", "findings", "What would clear it", model);
        }
    }

    /** Takes a suggestion over into the case: all its values in one change, which one press undoes. */
    private void take(Context ctx) {
        Opened opened = editable(ctx);
        Map<String, String> typed = Typed.of(ctx.formParamMap(), "");
        if (typed.isEmpty()) {
            throw new PageError(
                    400, "No value was sent", "Go back to what would clear the warning, and take it over from there.");
        }
        EditResult outcome = site.editor().change(opened.name(), version(ctx), window(ctx), typed);
        String first = typed.keySet().iterator().next();
        FormSection section = FormSection.holding(first);
        if (!outcome.clashes().isEmpty()) {
            page(
                    ctx.status(409),
                    outcome.now(),
                    "web/clash.jte",
                    section.key(),
                    "Two windows",
                    Map.of("clashes", outcome.clashes(), "back", section.key()));
            return;
        }
        ctx.redirect(
                Urls.of(opened.name()) + "/form/" + section.key() + "?taken="
                        + outcome.taken().size() + "#" + FieldView.id(first),
                HttpStatus.SEE_OTHER);
    }
}
