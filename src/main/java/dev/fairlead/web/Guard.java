package dev.fairlead.web;

import dev.fairlead.web.page.PageError;
import dev.fairlead.web.store.CaseFolder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Set;

/**
 * Lets only pages of this server talk to it. A page of another site can send requests to a loopback address, under a
 * name of its own (DNS rebinding) or across sites; the Host and Origin headers tell them apart. Sets the headers that
 * bind the browser.
 */
final class Guard {
    /** A form of a case has a few kilobytes; only an import is larger. */
    static final long MOST_FORM_BYTES = 300_000;

    static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; font-src 'self'; "
                    + "base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
    private static final Set<String> READING = Set.of("GET", "HEAD");

    private volatile Set<String> hosts = Set.of();

    /** The port is known only when the socket is bound. */
    void port(int port) {
        hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    }

    void install(RoutesConfig routes) {
        routes.before(this::headers);
        routes.before(this::check);
    }

    private void headers(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        // not no-referrer: a browser then sends the Origin of a plain form as null
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Permissions-Policy", "camera=(), microphone=(), geolocation=()");
        ctx.header("Cache-Control", "no-store");
    }

    private void check(Context ctx) {
        String host = ctx.header("Host");
        if (host == null || !hosts.contains(host)) {
            throw new PageError(
                    403,
                    "This address is not answered",
                    "Open the address that was printed when the server started, with 127.0.0.1 or localhost in it.");
        }
        if (READING.contains(ctx.method().name())) {
            return;
        }
        String origin = ctx.header("Origin");
        String site = ctx.header("Sec-Fetch-Site");
        if (origin != null && !origin.equals("http://" + host)
                || site != null && !site.equals("same-origin") && !site.equals("none")) {
            throw new PageError(
                    403,
                    "A page of another site tried to change something here",
                    "Nothing was changed. If it was you, open the page from the list of cases and try again.");
        }
        if (ctx.contentLength() > MOST_FORM_BYTES && !ctx.path().equals("/import")) {
            drain(ctx);
            throw new PageError(
                    413,
                    "That is larger than any form here",
                    "Nothing was changed. To bring in a file, use Import on the list of cases.");
        }
    }

    /** Reads what is on its way, up to a bound: a browser that is cut off while it sends shows no answer at all. */
    private static void drain(Context ctx) {
        try (InputStream in = ctx.req().getInputStream()) {
            in.skip(CaseFolder.MOST_BYTES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
