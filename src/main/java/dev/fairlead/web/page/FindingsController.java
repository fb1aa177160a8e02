package dev.fairlead.web.page;

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
        routes.get("/cases/{name}/numbers", this::numbers);
    }

    private void findings(Context ctx) {
        page(ctx, opened(ctx), "web/findingspage.jte", "findings", "Findings", Map.of());
    }

    private void numbers(Context ctx) {
        Opened opened = opened(ctx);
        page(ctx, opened, "web/numbers.jte", "numbers", "Worked numbers", Map.of());
    }
}
