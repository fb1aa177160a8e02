package dev.fairlead.web.page;

import dev.fairlead.report.picture.Drawing;
import dev.fairlead.report.picture.Pictures;
import dev.fairlead.web.Site;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** Drawings of a case, each with the table of what it shows. */
final class PicturesController extends Controller {
    PicturesController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/pictures", this::show);
    }

    private void show(Context ctx) {
        var opened = opened(ctx);
        List<Drawing> pictures = site.reports().sure(opened).map(Pictures::of).orElse(List.of()).stream()
                .filter(d -> !d.idle())
                .toList();
        page(ctx, opened, "web/pictures.jte", "pictures", "Pictures", Map.of("pictures", pictures));
    }
}
