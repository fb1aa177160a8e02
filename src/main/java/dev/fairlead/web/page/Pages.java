package dev.fairlead.web.page;

import dev.fairlead.web.Site;
import io.javalin.config.RoutesConfig;

/** All pages with their addresses. */
public final class Pages {
    private Pages() {}

    /** Installs all pages; what comes back makes them quick before they are asked for. */
    public static Runnable install(RoutesConfig routes, Site site) {
        CaseList cases = new CaseList(site);
        WarmUp warmUp = new WarmUp(site, cases);
        warmUp.install(routes);
        routes.get("/", ctx -> ctx.redirect("/cases"));
        new CasesController(site, cases).install(routes);
        new FormController(site).install(routes);
        new FindingsController(site).install(routes);
        new PlanController(site).install(routes);
        new WaiveController(site).install(routes);
        new VisitsController(site).install(routes);
        new ChairController(site).install(routes);
        new PicturesController(site).install(routes);
        new PrintController(site).install(routes);
        new BookController(site).install(routes);
        return warmUp;
    }
}
