package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.web.PageError;
import dev.fairlead.web.Prints;
import dev.fairlead.web.Site;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.function.BiFunction;

/** What can be printed or taken away of a case. */
final class PrintController extends Controller {
    PrintController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/report", ctx -> page(ctx, opened(ctx), "web/report.jte", "report", "Report", Map.of("prints", site.prints().isPresent())));
        if (site.prints().isPresent()) {
            routes.get("/cases/{name}/report.html", ctx -> send(ctx, "text/html; charset=utf-8", "report.html", (p, c) -> p.html(c)));
            routes.get("/cases/{name}/report.pdf", ctx -> send(ctx, "application/pdf", "report.pdf", (p, c) -> p.pdf(c)));
            routes.get("/cases/{name}/sheet.pdf", ctx -> send(ctx, "application/pdf", "sheet.pdf", (p, c) -> p.sheet(c)));
        }
    }

    private void send(Context ctx, String type, String what, BiFunction<Prints, Checked, Object> make) {
        Opened opened = opened(ctx);
        Checked checked = site.reports().checked(opened).orElseThrow(() -> new PageError(409, "The case cannot be read as it stands, so there is nothing to print",
                "Look at its findings page for what to mend."));
        Object made = make.apply(site.prints().orElseThrow(), checked);
        // taken away as a file: a report brings styles of its own, which the pages here do not allow
        ctx.header("Content-Disposition", "attachment; filename*=UTF-8''" + Urls.part(opened.title() + "-" + what)).contentType(type);
        if (made instanceof byte[] bytes) {
            ctx.result(bytes);
        } else {
            ctx.result(made.toString());
        }
    }
}
