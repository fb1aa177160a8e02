package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.web.PageError;
import dev.fairlead.web.Site;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;

/** All findings of a case on one page, and the worked numbers. */
final class FindingsController extends Controller {
    FindingsController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/findings", this::findings);
        routes.get("/cases/{name}/findings/{id}", this::finding);
        routes.get("/cases/{name}/numbers", this::numbers);
    }

    private void findings(Context ctx) {
        Opened opened = opened(ctx);
        page(
                ctx,
                opened,
                "web/findingspage.jte",
                "findings",
                "Findings",
                Map.of("panel", site.reports().surePanel(opened)));
    }

    /** What one finding opens to, for a page that shows its line. */
    private void finding(Context ctx) {
        Opened opened = opened(ctx);
        Panel panel = site.reports().surePanel(opened);
        Finding finding = panel.finding(ctx.pathParam("id")).orElseThrow(PageError::noFinding);
        site.views().part(ctx, "web/findingbody.jte", Map.of("f", finding, "panel", panel));
    }

    private void numbers(Context ctx) {
        Opened opened = opened(ctx);
        page(
                ctx,
                opened,
                "web/numbers.jte",
                "numbers",
                "Worked numbers",
                Map.of(
                        "cited",
                        Numbers.cited(
                                site.reports().panel(opened),
                                site.reports().checks().catalogue().sources())));
    }
}
