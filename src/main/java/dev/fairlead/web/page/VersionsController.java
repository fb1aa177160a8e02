package dev.fairlead.web.page;

import dev.fairlead.web.edit.CaseValues;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.store.ChangeLog;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Earlier versions of a case, to see, compare and bring back; and the log of who changed what. */
public final class VersionsController extends Controller {
    /** Entries of the log that a page shows at once. */
    private static final int SHOWN = 200;

    VersionsController(Site site) {
        super(site);
    }

    /** An earlier version as it stands in the list. */
    public record Line(String version, String until, int changes) {}

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/versions", this::list);
        routes.get("/cases/{name}/versions/{version}", this::compare);
        routes.post("/cases/{name}/versions/{version}", this::bringBack);
    }

    private void list(Context ctx) {
        Opened opened = opened(ctx);
        List<Line> lines = site.editor().folder().earlier(opened.name()).stream()
                .map(e -> new Line(
                        e.version(),
                        CaseHead.moment(e.until()),
                        site.editor()
                                .version(opened.name(), e.version())
                                .map(v -> CaseValues.changes(v, opened).size())
                                .orElse(0)))
                .toList();
        List<ChangeLog.Entry> log = site.editor().folder().log(opened.name()).all();
        page(
                ctx,
                opened,
                "web/versions.jte",
                "versions",
                "Earlier versions",
                Map.of(
                        "lines", lines,
                        "log", LastChanges.told(log, SHOWN),
                        "more", Math.max(0, log.size() - SHOWN)));
    }

    private void compare(Context ctx) {
        Opened opened = opened(ctx);
        Opened earlier = earlier(ctx, opened);
        page(
                ctx,
                opened,
                "web/version.jte",
                "versions",
                "An earlier version",
                Map.of(
                        "earlier",
                        earlier,
                        "values",
                        CaseValues.of(earlier),
                        "changes",
                        CaseValues.changes(earlier, opened)));
    }

    private void bringBack(Context ctx) {
        Opened opened = opened(ctx);
        Opened earlier = earlier(ctx, opened);
        site.editor().bringBack(opened.name(), version(ctx), earlier.file().version(), author(ctx));
        ctx.redirect(Urls.of(opened.name()) + "/versions", HttpStatus.SEE_OTHER);
    }

    private Opened earlier(Context ctx, Opened opened) {
        String version = Objects.requireNonNullElse(ctx.pathParam("version"), "");
        return (version.matches("[0-9a-f]{20}")
                        ? site.editor().version(opened.name(), version)
                        : java.util.Optional.<Opened>empty())
                .orElseThrow(() -> new PageError(
                        404,
                        "That version is no longer kept",
                        "The first and the last hundred versions are. Go back to the list of versions."));
    }
}
