package dev.fairlead.web.page;

import dev.fairlead.findings.Words;
import dev.fairlead.intake.write.FirstFacts;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.Block;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.FormPage;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.form.FormWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The way in: the few facts of a first consult on one page, and which facts to measure next. */
public final class ConsultController extends Controller {
    ConsultController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/consult", this::show);
        routes.get("/cases/{name}/next", this::next);
    }

    private void show(Context ctx) {
        Opened opened = editable(ctx);
        Fields fields = new Fields(opened, site.editor().refused(opened.name()), p -> List.of());
        List<Block> blocks = new ArrayList<>();
        FirstFacts.GROUPS.forEach((title, pointers) -> blocks.add(new Block.Fields(
                title, pointers.stream().map(p -> named(fields.at(p))).toList())));
        Panel panel = site.reports().panel(opened);
        page(
                ctx,
                opened,
                "web/consult.jte",
                "consult",
                "First consult",
                Map.of(
                        "page",
                        new FormPage(
                                Urls.of(opened.name()),
                                Objects.requireNonNull(FormSection.of("child")),
                                blocks,
                                false,
                                true,
                                ""),
                        "panel",
                        panel,
                        "next",
                        NextFact.all(panel)));
    }

    /** A field whose label says which tooth or part is meant, for it stands alone here. */
    private static FieldView named(FieldView f) {
        return new FieldView(
                f.pointer(),
                f.shape(),
                FormWords.capital(Words.of(f.pointer())),
                f.value(),
                f.state(),
                f.note(),
                f.uses());
    }

    /** Straight to the fact that most criteria wait for, or to the one after that which was offered last. */
    private void next(Context ctx) {
        Opened opened = opened(ctx);
        ctx.redirect(NextFact.after(
                ctx.queryParam("at"),
                ctx.queryParam("was"),
                site.reports().panel(opened),
                Urls.of(opened.name()) + "/findings"));
    }
}
