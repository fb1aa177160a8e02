package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Missing;
import dev.fairlead.intake.write.FirstFacts;
import dev.fairlead.rules.verdict.Status;
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
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The way in: the few facts of a first consult on one page, and which facts to measure next. */
public final class ConsultController extends Controller {
    private static final int MOST = 10;

    ConsultController(Site site) {
        super(site);
    }

    /**
     * A fact that criteria wait for.
     *
     * @param why titles of the first criteria that wait
     */
    public record Wanted(String words, String link, int criteria, String why) {}

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
                        new FormPage(Urls.of(opened.name()), FormSection.of("child"), blocks, false, true, ""),
                        "panel",
                        panel,
                        "next",
                        wanted(panel)));
    }

    /** A field whose label says which tooth or part is meant, for it stands alone here. */
    private static FieldView named(FieldView f) {
        return new FieldView(
                f.pointer(),
                f.shape(),
                FormWords.capital(FactWords.words(f.pointer())),
                f.value(),
                f.state(),
                f.note(),
                f.uses());
    }

    /** Straight to the fact that most criteria wait for. */
    private void next(Context ctx) {
        Opened opened = opened(ctx);
        List<Wanted> wanted = wanted(site.reports().panel(opened));
        ctx.redirect(
                wanted.isEmpty()
                        ? Urls.of(opened.name()) + "/findings"
                        : wanted.get(0).link());
    }

    /** The facts that most criteria wait for, the one that helps most first. */
    static List<Wanted> wanted(Panel panel) {
        Map<Missing, List<Finding>> waiting = new LinkedHashMap<>();
        panel.report()
                .ifPresent(r -> r.findings().all().stream()
                        .filter(f -> f.outcome() == Status.NOT_ASSESSED)
                        .forEach(f -> f.missing()
                                .forEach(m -> waiting.computeIfAbsent(m, k -> new ArrayList<>())
                                        .add(f))));
        return waiting.entrySet().stream()
                .filter(e -> !panel.link(e.getKey().pointer()).isEmpty())
                .sorted(Comparator.comparingInt(e -> -e.getValue().size()))
                .limit(MOST)
                .map(e -> new Wanted(
                        e.getKey().words(),
                        panel.link(e.getKey().pointer()),
                        e.getValue().size(),
                        String.join(
                                "; ",
                                e.getValue().stream()
                                        .map(Finding::title)
                                        .limit(2)
                                        .toList())))
                .toList();
    }
}
