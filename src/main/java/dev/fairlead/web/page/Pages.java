package dev.fairlead.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import java.util.Map;

/** All pages with their addresses. */
public final class Pages {
    private Pages() {}

    /** Installs all pages. */
    public static void install(RoutesConfig routes, Site site) {
        routes.get("/", ctx -> ctx.redirect("/cases"));
        // asked by pages that wait for the program to answer again
        routes.get("/alive", ctx -> ctx.status(HttpStatus.NO_CONTENT));
        routes.get("/help", ctx -> site.views().page(ctx, "web/help.jte", "Help", "help", Map.of()));
        new CasesController(site).install(routes);
        new ConsultController(site).install(routes);
        new FormController(site).install(routes);
        new ReadingController(site).install(routes);
        new WireController(site).install(routes);
        new PlanController(site).install(routes);
        new MeasureController(site).install(routes);
        new WaiveController(site).install(routes);
        new NobodyController(site).install(routes);
        new VisitsController(site).install(routes);
        new ChairController(site).install(routes);
        new PrintController(site).install(routes);
        new DevicesController(site).install(routes);
        new VersionsController(site).install(routes);
        new BookController(site).install(routes);
    }
}
