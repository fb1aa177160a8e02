package dev.fairlead.web.page;

import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.form.Typed;
import dev.fairlead.web.plan.PlanOffer;
import dev.fairlead.web.plan.PlanSearch;
import dev.fairlead.web.plan.Plans;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
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
        routes.post("/cases/{name}/readings", this::read);
    }

    private void show(Context ctx, String id) {
        Opened opened = editable(ctx);
        Panel panel = site.reports().panel(opened);
        if (panel.report().isEmpty()) {
            throw new PageError(
                    409,
                    "The case cannot be read as it stands, so no plan can be judged",
                    "Correct what is listed under findings first.");
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

    /**
     * Takes a suggestion over: planned values go into the case in one change, which one press undoes; for what has to
     * be made, the readings that it then gives are asked for.
     */
    private void take(Context ctx) {
        Opened opened = editable(ctx);
        Map<String, String> typed = Typed.of(ctx.formParamMap(), "");
        if (typed.isEmpty()) {
            throw new PageError(
                    400, "No value was sent", "Go back to what would clear the warning, and take it over from there.");
        }
        Map<String, String> planned = new LinkedHashMap<>(typed);
        planned.keySet().removeIf(p -> !PlanOffer.planned(p));
        Map<String, String> aims = new LinkedHashMap<>(typed);
        aims.keySet().removeAll(planned.keySet());
        if (planned.isEmpty()) {
            readings(ctx, opened, aims, 0);
            return;
        }
        String first = planned.keySet().iterator().next();
        String section = section(first);
        EditResult outcome = change(ctx, opened, planned);
        if (!outcome.clashes().isEmpty()) {
            clash(ctx, outcome, section);
        } else if (!aims.isEmpty()) {
            readings(ctx, outcome.now(), aims, planned.size());
        } else {
            ctx.redirect(
                    Urls.of(opened.name()) + "/form/" + section + "?taken="
                            + outcome.taken().size() + "#" + FieldView.id(first),
                    HttpStatus.SEE_OTHER);
        }
    }

    /** Asks for readings that are to be taken anew; {@code aims} are the values that the suggestion has in mind. */
    private void readings(Context ctx, Opened opened, Map<String, String> aims, int taken) {
        Fields fields = new Fields(opened, Map.of(), p -> List.of());
        page(
                ctx,
                opened,
                "web/readings.jte",
                "findings",
                "New readings",
                Map.of("fields", aims.keySet().stream().map(fields::at).toList(), "aims", aims, "taken", taken));
    }

    /** Writes the new readings; what was left empty stays as it is. */
    private void read(Context ctx) {
        Opened opened = editable(ctx);
        Map<String, String> typed = Typed.of(ctx.formParamMap(), "");
        typed.values().removeIf(String::isBlank);
        if (typed.isEmpty()) {
            ctx.redirect(Urls.of(opened.name()) + "/findings", HttpStatus.SEE_OTHER);
            return;
        }
        String first = typed.keySet().iterator().next();
        String section = section(first);
        EditResult outcome = change(ctx, opened, typed);
        if (!outcome.clashes().isEmpty()) {
            clash(ctx, outcome, section);
            return;
        }
        ctx.redirect(Urls.of(opened.name()) + "/form/" + section + "#" + FieldView.id(first), HttpStatus.SEE_OTHER);
    }

    /** The part of the form that holds a fact; asked before anything is changed. */
    private static String section(String pointer) {
        FormSection section = FormSection.holding(pointer);
        if (section == null) {
            throw new PageError(
                    400,
                    "No part of the form holds " + pointer,
                    "Nothing was changed. Go back to what would clear the warning, and take it over from there.");
        }
        return section.key();
    }

    private void clash(Context ctx, EditResult outcome, String section) {
        page(
                ctx.status(409),
                outcome.now(),
                "web/clash.jte",
                section,
                "Two windows",
                Map.of("clashes", outcome.clashes(), "back", section));
    }
}
