package dev.fairlead.web.page;

import dev.fairlead.intake.crosscheck.PersonDoubts;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormSection;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Map;
import java.util.Objects;

/** Where a person answers with initials that words of a case, which look like a name, name nobody. */
final class NobodyController extends Controller {
    NobodyController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/nobody", ctx -> show(ctx, editable(ctx), ""));
        routes.post("/cases/{name}/nobody", this::answer);
    }

    private void show(Context ctx, Opened opened, String refused) {
        String at = doubted(ctx, opened);
        String[] who = Visitor.known(ctx).who().split(" ");
        page(
                ctx,
                opened,
                "web/nobody.jte",
                "facts",
                "Names nobody",
                Map.of(
                        "at",
                        at,
                        "words",
                        opened.typed(at),
                        "initials",
                        who.length == 2 ? who[1] : "",
                        "back",
                        back(opened, at),
                        "refused",
                        refused));
    }

    private void answer(Context ctx) {
        Opened opened = editable(ctx);
        String at = doubted(ctx, opened);
        String initials =
                Objects.requireNonNullElse(ctx.formParam("initials"), "").strip();
        if (!initials.matches("[A-Za-z]{2,3}")) {
            show(ctx.status(422), opened, "Not written: give two or three letters as initials.");
            return;
        }
        site.editor().rework(opened.name(), version(ctx), author(ctx), tree -> {
            String entry = "/notPersons/" + tree.size("/notPersons");
            tree.set(entry + "/words", opened.typed(at));
            tree.set(entry + "/by", initials);
        });
        ctx.redirect(back(opened, at), HttpStatus.SEE_OTHER);
    }

    private static String doubted(Context ctx, Opened opened) {
        String at = Objects.requireNonNullElse(ctx.queryParam("at"), "");
        if (opened.problems(at).stream().noneMatch(PersonDoubts::is)) {
            throw new PageError(
                    422,
                    "Nothing there looks like a name",
                    "It may have been changed or answered for meanwhile. Go back to the case.");
        }
        return at;
    }

    private static String back(Opened opened, String at) {
        FormSection section = FormSection.holding(at);
        return Urls.of(opened.name()) + (section == null ? "/findings" : "/form/" + section.key());
    }
}
