package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.report.picture.Drawing;
import dev.fairlead.report.picture.Pictures;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** Pages of a case that are read: findings, worked numbers, pictures. */
final class ReadingController extends Controller {
    ReadingController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/findings", this::findings);
        routes.get("/cases/{name}/findings/{id}", this::finding);
        routes.get("/cases/{name}/numbers", this::numbers);
        routes.get("/cases/{name}/pictures", this::pictures);
    }

    private void pictures(Context ctx) {
        Opened opened = opened(ctx);
        List<Drawing> pictures = site.reports().sure(opened).map(Pictures::of).orElse(List.of()).stream()
                .filter(d -> !d.idle())
                .toList();
        page(ctx, opened, "web/pictures.jte", "pictures", "Pictures", Map.of("pictures", pictures));
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
                        WorkedNumbers.cited(
                                site.reports().panel(opened),
                                site.reports().checks().catalogue().sources())));
    }
}
