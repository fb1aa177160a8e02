package dev.fairlead.web.page;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.EditResult.Refused;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.FormBuilder;
import dev.fairlead.web.form.FormPage;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.form.Typed;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The form of a case, section by section: shows it, takes single fields as they are left, or the whole section at once.
 */
final class FormController extends Controller {
    /** Before a value that a person chose over what stands in the file. */
    private static final String HERE = "here:";

    FormController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/form/{section}", this::show);
        routes.post("/cases/{name}/form/{section}", this::save);
        routes.post("/cases/{name}/form/{section}/preview", this::preview);
        routes.post("/cases/{name}/stage", this::stage);
        routes.post("/cases/{name}/choose", this::choose);
        routes.post("/cases/{name}/remove", this::remove);
        routes.post("/cases/{name}/undo", ctx -> step(ctx, true));
        routes.post("/cases/{name}/redo", ctx -> step(ctx, false));
    }

    private void show(Context ctx) {
        String taken = query(ctx, "taken");
        show(
                ctx,
                editable(ctx),
                !taken.matches("[1-9]")
                        ? Map.of()
                        : Map.of(
                                "said",
                                "The suggestion is in the case: " + taken
                                        + (taken.equals("1") ? " value was" : " values were")
                                        + " changed. Undo takes it back in one step."));
    }

    private void show(Context ctx, Opened opened, Map<String, Object> more) {
        FormSection section = section(ctx);
        Panel panel = site.reports().whole(opened);
        Map<String, Object> model = new HashMap<>(more);
        model.put("page", form(ctx, opened, section, panel));
        model.put("nav", SectionNav.of(opened, panel, section));
        model.put("offered", NextFact.offered(query(ctx, "next"), panel));
        page(ctx, opened, "web/form.jte", section.key(), section.title(), model);
    }

    private void save(Context ctx) {
        Opened opened = editable(ctx);
        String changed = query(ctx, "changed");
        if (!changed.isEmpty() && CasePaths.field(changed).isEmpty()) {
            throw new PageError(
                    422, "There is no such field in a case", "Go to the list of cases and open the case again.");
        }
        EditResult outcome = change(ctx, opened, Typed.of(ctx.formParamMap(), changed));
        if (partial(ctx) && !changed.isEmpty()) {
            saved(ctx, changed, outcome);
        } else if (!outcome.clashes().isEmpty()) {
            page(
                    ctx.status(409),
                    outcome.now(),
                    "web/clash.jte",
                    section(ctx).key(),
                    "Two windows",
                    Map.of("clashes", outcome.clashes(), "back", section(ctx).key()));
        } else if (!query(ctx, "more").isEmpty() || !outcome.refused().isEmpty()) {
            show(
                    ctx,
                    outcome.now(),
                    Map.of(
                            "said",
                            outcome.refused().isEmpty()
                                    ? ""
                                    : "What could not be taken stands beside its field; the rest is in the case."));
        } else {
            ctx.redirect(next(ctx, opened.name()), io.javalin.http.HttpStatus.SEE_OTHER);
        }
    }

    /** Back to the section, or on to the next one when that was asked for. */
    private String next(Context ctx, String name) {
        if (query(ctx, "to").equals("consult")) {
            return Urls.of(name) + "/report";
        }
        FormSection section = section(ctx);
        FormSection to = ctx.formParam("go-on") != null && section.next() != null ? section.next() : section;
        return Urls.of(name) + "/form/" + to.key() + (query(ctx, "again").isEmpty() ? "" : "?again=yes");
    }

    private void saved(Context ctx, String changed, EditResult outcome) {
        Opened now = outcome.now();
        Panel panel = site.reports().panel(now).opening(ctx.formParam("open"));
        Map<String, Refused> refused = site.editor().refused(now.name());
        Map<String, Object> model = new HashMap<>();
        model.put("field", new Fields(now, refused, p -> List.of()).at(changed));
        model.put("clash", outcome.clashes().stream().findFirst().orElse(null));
        model.put("others", outcome.others());
        model.put("head", head(ctx, now, section(ctx).key()));
        model.put("panel", panel);
        model.put("nav", SectionNav.of(now, panel, section(ctx)));
        site.views().part(ctx, "web/saved.jte", model);
    }

    private void preview(Context ctx) {
        Opened opened = editable(ctx);
        Map<String, String> typed = Typed.of(ctx.formParamMap(), query(ctx, "changed"));
        Panel panel = site.reports()
                .preview(opened, site.editor().preview(opened, typed))
                .opening(ctx.formParam("open"));
        if (panel.report().isEmpty()) {
            // a value half typed says nothing; the findings stay as they are
            ctx.status(204);
            return;
        }
        site.views().part(ctx, "web/preview.jte", Map.of("panel", panel));
    }

    /** Moves the case to the stage that what is recorded has reached. */
    private void stage(Context ctx) {
        Opened opened = editable(ctx);
        change(ctx, opened, Typed.of(ctx.formParamMap(), "/stage"));
        String back = query(ctx, "to");
        ctx.redirect(
                Urls.of(opened.name())
                        + (back.matches("chair|visits|findings|numbers|report") ? "/" + back : "/form/child"),
                io.javalin.http.HttpStatus.SEE_OTHER);
    }

    private void choose(Context ctx) {
        Opened opened = editable(ctx);
        Map<String, String> chosen = new HashMap<>();
        // the form around a field sends all its fields along; only a choice has the mark
        ctx.formParamMap()
                .forEach((name, values) -> values.stream()
                        .filter(v -> name.startsWith("/") && v.startsWith(HERE))
                        .findFirst()
                        .ifPresent(v -> chosen.put(name, v.substring(HERE.length()))));
        site.editor().choose(opened.name(), version(ctx), window(ctx), author(ctx), chosen);
        FormSection back = FormSection.of(query(ctx, "back"));
        ctx.redirect(
                Urls.of(opened.name()) + "/form/" + (back == null ? FormSection.ALL.get(0) : back).key(),
                io.javalin.http.HttpStatus.SEE_OTHER);
    }

    private void remove(Context ctx) {
        Opened opened = editable(ctx);
        String entry = query(ctx, "entry");
        if (!entry.matches("/(visits|images|landmarks|pictured|waivers)/[0-9]{1,4}")) {
            throw new PageError(
                    400, "That entry cannot be taken out", "Load the page again and use the button beside the entry.");
        }
        if (entry.startsWith("/waivers")) {
            mayWaive(ctx);
        }
        site.editor().rework(opened.name(), version(ctx), author(ctx), tree -> tree.remove(entry));
        ctx.redirect(back(ctx, opened.name(), entry), io.javalin.http.HttpStatus.SEE_OTHER);
    }

    private static String back(Context ctx, String name, String entry) {
        FormSection section = FormSection.holding(entry);
        boolean visits = "visits".equals(ctx.queryParam("to"));
        return Urls.of(name) + (visits ? "/visits" : section == null ? "/findings" : "/form/" + section.key());
    }

    private void step(Context ctx, boolean back) {
        Opened opened = editable(ctx);
        if (back) {
            site.editor().undo(opened.name(), version(ctx), author(ctx));
        } else {
            site.editor().redo(opened.name(), version(ctx), author(ctx));
        }
        String to = query(ctx, "to");
        String where = FormSection.of(to) != null
                ? "/form/" + to
                : to.equals("visits") || to.equals("chair") || to.equals("findings") ? "/" + to : "/form/child";
        ctx.redirect(Urls.of(opened.name()) + where, io.javalin.http.HttpStatus.SEE_OTHER);
    }

    private FormPage form(Context ctx, Opened opened, FormSection section, Panel panel) {
        Fields fields = new Fields(opened, site.editor().refused(opened.name()), panel.uses()::of);
        String more = query(ctx, "more");
        return new FormPage(
                Urls.of(opened.name()),
                section,
                new FormBuilder(fields, more).of(section),
                !query(ctx, "again").isEmpty(),
                true,
                more);
    }

    private static FormSection section(Context ctx) {
        FormSection section = FormSection.of(ctx.pathParam("section"));
        if (section == null) {
            throw new PageError(
                    404, "The form has no such section", "Go to the list of cases and open the case from there.");
        }
        return section;
    }

    private static String query(Context ctx, String key) {
        String value = ctx.queryParam(key);
        return value == null ? "" : value;
    }
}
