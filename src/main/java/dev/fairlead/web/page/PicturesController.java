package dev.fairlead.web.page;

import dev.fairlead.report.picture.Picture;
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
        List<Picture> pictures = site.prints().flatMap(p -> site.reports().checked(opened).map(p::pictures)).orElse(List.of());
        page(ctx, opened, "web/pictures.jte", "pictures", "Pictures", Map.of("pictures", pictures));
    }
}
