package dev.fairlead.web.page;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Missing;
import dev.fairlead.report.html.LoggedChange;
import dev.fairlead.report.sheet.Paper;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** What can be printed or taken away of a case. */
public final class PrintController extends Controller {
    private final PaperChoice papers = new PaperChoice();

    /** One paper that a sheet can be had on. */
    public record Sheet(String paper, String words) {}

    PrintController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/report", this::show);
        if (site.prints().isPresent()) {
            routes.get(
                    "/cases/{name}/report.html",
                    ctx -> send(ctx, "text/html; charset=utf-8", "report.html", (p, c) -> p.html(c, last(ctx))));
            routes.get(
                    "/cases/{name}/report.pdf",
                    ctx -> send(ctx, "application/pdf", "report.pdf", (p, c) -> p.pdf(c, last(ctx))));
            routes.get(
                    "/cases/{name}/first-page.pdf",
                    ctx -> send(ctx, "application/pdf", "first-page.pdf", (p, c) -> p.firstPage(c)));
            routes.get(
                    "/cases/{name}/sheet.pdf",
                    ctx -> send(ctx, "application/pdf", "sheet.pdf", (p, c) -> sheet(p, c, paper(ctx))));
            routes.get(
                    "/cases/{name}/family.pdf",
                    ctx -> send(ctx, "application/pdf", "family.pdf", (p, c) -> p.family(c, paper(ctx))));
        }
    }

    private Paper paper(Context ctx) {
        return papers.asked(ctx.queryParam("paper"), ctx.header("Accept-Language"));
    }

    private void show(Context ctx) {
        Opened opened = opened(ctx);
        List<Missing> lacks = site.prints()
                .flatMap(p -> site.reports().checked(opened).map(p::noSheet))
                .orElse(List.of());
        page(
                ctx,
                opened,
                "web/report.jte",
                "report",
                "Report",
                Map.of(
                        "prints",
                        site.prints().isPresent(),
                        "log",
                        last(ctx),
                        "noSheet",
                        lacks,
                        "sheets",
                        papers.all(ctx.header("Accept-Language")).stream()
                                .map(p -> new Sheet(p.name(), PaperChoice.words(p)))
                                .toList(),
                        "panel",
                        site.reports().surePanel(opened)));
    }

    private List<LoggedChange> last(Context ctx) {
        return LastChanges.of(site.editor().folder().log(opened(ctx).name()));
    }

    private static byte[] sheet(Prints prints, Checked checked, Paper paper) {
        List<Missing> lacks = prints.noSheet(checked);
        if (!lacks.isEmpty()) {
            throw new PageError(
                    409,
                    "There is no bench sheet yet, for nothing of the wire can be drawn",
                    Missing.heading(lacks) + ": "
                            + String.join(
                                    ", ", lacks.stream().map(Missing::words).toList()) + ".");
        }
        return prints.sheet(checked, paper);
    }

    private void send(Context ctx, String type, String what, BiFunction<Prints, Checked, Object> make) {
        Opened opened = opened(ctx);
        Checked checked = site.reports()
                .sure(opened)
                .orElseThrow(() -> new PageError(
                        409,
                        "The case cannot be read as it stands, so there is nothing to print",
                        "Look at its findings page for what to correct."));
        Object made = make.apply(site.prints().orElseThrow(), checked);
        // taken away as a file: a report brings styles of its own, which the pages here do not allow
        ctx.header("Content-Disposition", "attachment; filename*=UTF-8''" + Urls.part(opened.title() + "-" + what))
                .contentType(type);
        if (made instanceof byte[] bytes) {
            ctx.result(bytes);
        } else {
            ctx.result(made.toString());
        }
    }
}
