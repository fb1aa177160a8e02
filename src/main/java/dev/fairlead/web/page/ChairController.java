package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.model.Stage;
import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Chair mode: one large question a screen, or a compact list that can be printed; then who answered, and when. */
final class ChairController extends Controller {
    ChairController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/chair", ctx -> ask(ctx, editable(ctx), -1, null));
        routes.post("/cases/{name}/chair", this::answer);
        routes.get("/cases/{name}/chair/list", this::list);
    }

    private void ask(Context ctx, Opened opened, int at, FieldView.Note refused) {
        Checklist checklist = checklist(ctx, opened);
        int index = at >= 0 ? at : number(ctx.queryParam("q"), checklist);
        Map<String, Object> model = new HashMap<>();
        model.put(
                "page",
                chair(opened, checklist, Math.min(index, checklist.questions().size())));
        model.put("refused", refused);
        model.putAll(who(opened));
        page(ctx, opened, "web/chair.jte", "chair", "Chair mode", model);
    }

    private void list(Context ctx) {
        Opened opened = editable(ctx);
        Checklist checklist = checklist(ctx, opened);
        Map<String, Object> model = new HashMap<>(who(opened));
        model.put("page", chair(opened, checklist, 0));
        page(ctx, opened, "web/chairlist.jte", "chair", "Checklist", model);
    }

    private void answer(Context ctx) {
        Opened opened = editable(ctx);
        Checklist checklist = checklist(ctx, opened);
        int q = number(ctx.queryParam("q"), checklist);
        EditResult outcome =
                site.editor().change(opened.name(), version(ctx), window(ctx), Typed.of(ctx.formParamMap(), ""));
        if (!outcome.clashes().isEmpty()) {
            page(
                    ctx.status(409),
                    outcome.now(),
                    "web/clash.jte",
                    "chair",
                    "Two windows",
                    Map.of("clashes", outcome.clashes(), "back", "insertion"));
        } else if (!outcome.refused().isEmpty()) {
            Fields fields = fields(outcome.now());
            ask(
                    ctx.status(422),
                    outcome.now(),
                    q,
                    fields.at(outcome.refused().keySet().iterator().next()).note());
        } else {
            if ("list".equals(ctx.queryParam("to"))) {
                ctx.redirect(
                        Urls.of(opened.name()) + "/chair/list?part=" + checklist.part() + "#q" + q,
                        HttpStatus.SEE_OTHER);
                return;
            }
            boolean end = q >= checklist.questions().size();
            ctx.redirect(
                    Urls.of(opened.name())
                            + (end
                                    ? "/chair/list?part=" + checklist.part()
                                    : "/chair?part=" + checklist.part() + "&q=" + (q + 1)),
                    HttpStatus.SEE_OTHER);
        }
    }

    private ChairPage chair(Opened opened, Checklist checklist, int index) {
        Stage stage = Checklist.stage(checklist.part());
        List<Finding> warnings = site.reports()
                .report(opened)
                .map(r -> r.findings().forReading().stream()
                        .filter(f -> f.stage() == stage && f.open())
                        .toList())
                .orElse(List.of());
        boolean judged = site.reports()
                .report(opened)
                .map(r -> r.stages().contains(stage))
                .orElse(false);
        return new ChairPage(
                Urls.of(opened.name()),
                checklist.part(),
                checklist.questions(),
                index,
                checklist.answered(),
                warnings.stream().filter(f -> Panel.mark(f).equals("stop")).toList(),
                warnings.stream().filter(f -> Panel.mark(f).equals("caution")).toList(),
                judged);
    }

    /** The fields on who answered; a day and time that are not recorded yet are offered as now. */
    private Map<String, Object> who(Opened opened) {
        Fields fields = fields(opened);
        return Map.of(
                "role",
                fields.at("/insertion/answeredBy"),
                "initials",
                fields.at("/insertion/initials"),
                "date",
                fields.at("/insertion/date"),
                "time",
                fields.at("/insertion/time"),
                "today",
                site.today().get().toString(),
                "now",
                LocalTime.now().truncatedTo(ChronoUnit.MINUTES).toString());
    }

    private Fields fields(Opened opened) {
        return new Fields(opened, site.editor().refused(opened.name()), p -> List.of());
    }

    private Checklist checklist(Context ctx, Opened opened) {
        return Checklist.of("bench".equals(ctx.queryParam("part")) ? "bench" : "insertion", fields(opened));
    }

    private static int number(String q, Checklist checklist) {
        return q != null && q.matches("[0-9]{1,3}") ? Integer.parseInt(q) : checklist.open();
    }
}
