package dev.fairlead.web;

import dev.fairlead.web.page.PageError;
import dev.fairlead.web.page.Views;
import dev.fairlead.web.page.Visitor;
import dev.fairlead.web.store.StaleException;
import dev.fairlead.web.store.StoreException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.http.HttpException;

/** Every failure as a page that says what happened and what to do; nothing of a case goes to the log. */
final class Errors {
    private static final Logger LOG = Logger.getLogger("dev.fairlead.web");
    private static final Map<Integer, String[]> KNOWN = Map.of(
            400,
                    new String[] {
                        "The request could not be understood", "Go back, load the page again and try once more."
                    },
            404, new String[] {"There is no such page", "Go to the list of cases and open the page from there."},
            405,
                    new String[] {
                        "This page cannot be asked for in that way",
                        "Go to the list of cases and open the page from there."
                    },
            413, new String[] {"That is too large", "Nothing was changed. A case file has less than two megabytes."},
            415, new String[] {"That kind of file is not read here", "Bring in a case file in JSON or YAML."});

    private final Views views;

    Errors(Views views) {
        this.views = views;
    }

    void install(RoutesConfig routes) {
        routes.exception(PageError.class, (e, ctx) -> show(ctx, e.status(), e.getMessage(), e.mend()));
        routes.exception(StoreException.class, (e, ctx) -> show(ctx, 409, e.getMessage(), e.mend()));
        routes.exception(
                StaleException.class,
                (e, ctx) -> show(
                        ctx,
                        409,
                        "This case was changed in another window meanwhile",
                        "Nothing was overwritten. Load the page again to see how it stands, then make your change."));
        routes.exception(HttpResponseException.class, (e, ctx) -> known(ctx, e.getStatus()));
        routes.exception(Exception.class, (e, ctx) -> {
            if (e.getCause() instanceof HttpException cut && cut.getCode() == 400) {
                show(
                        ctx,
                        400,
                        "What was sent was cut off or damaged on its way",
                        "Nothing was changed. Send it again.");
                return;
            }
            LOG.log(Level.WARNING, "{0} failed: {1}", new Object[] {ctx.method(), trace(e)});
            show(
                    ctx,
                    500,
                    "Something went wrong in the program",
                    "The case file is as it was before. Load the page again; "
                            + "if it happens again, report what you did and the message in the terminal window.");
        });
        routes.error(404, "*", ctx -> {
            if (ctx.attribute("shown") == null) {
                known(ctx, 404);
            }
        });
    }

    /** The kind of failure and where; messages may hold parts of a case. */
    private static String trace(Exception e) {
        StringBuilder all = new StringBuilder(e.getClass().getName());
        int left = 12;
        for (StackTraceElement at : e.getStackTrace()) {
            if (left-- > 0) {
                all.append("\n  at ").append(at);
            }
        }
        return e.getCause() instanceof Exception cause
                ? all.append("\ncaused by ").append(trace(cause)).toString()
                : all.toString();
    }

    private void known(Context ctx, int status) {
        String[] words = KNOWN.getOrDefault(
                status, new String[] {"The request could not be answered", "Go to the list of cases and try again."});
        show(ctx, status, words[0], words[1]);
    }

    private void show(Context ctx, int status, String what, String mend) {
        ctx.attribute("shown", true);
        ctx.status(status);
        if (status == 413) {
            // some of what was sent may not have been read: nothing more can be asked on this connection
            ctx.header("Connection", "close");
        }
        if (Visitor.of(ctx).isEmpty()) {
            // a stranger gets nothing of the program's but what happened, what to do, and on a network the way in
            views.part(ctx, "web/locked.jte", Map.of("what", what, "mend", mend, "shared", views.shared()));
        } else if (ctx.header("HX-Request") != null) {
            views.part(ctx, "web/problem.jte", Map.of("what", what, "mend", mend));
        } else {
            views.page(ctx, "web/error.jte", what, "", Map.of("what", what, "mend", mend));
        }
    }
}
