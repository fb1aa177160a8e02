package dev.fairlead.web;

import dev.fairlead.web.access.Session;
import dev.fairlead.web.access.Sessions;
import dev.fairlead.web.page.PageError;
import dev.fairlead.web.page.Visitor;
import dev.fairlead.web.store.CaseFolder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.Set;

/**
 * Lets only those in who opened the printed link or were paired, and only pages of this server talk to it: any program
 * of this machine can send requests to a loopback address, and so can a page of another site, under a name of its own
 * (DNS rebinding) or across sites; the cookie, and the Host and Origin headers, tell them apart. Sets the headers that
 * bind the browser.
 */
final class Guard {
    /** A form of a case has a few kilobytes; only an import is larger. */
    static final long MOST_FORM_BYTES = 300_000;

    static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; font-src 'self'; "
                    + "base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
    private static final Set<String> READING = Set.of("GET", "HEAD");

    private final Sessions sessions;
    private final Optional<ServerSettings.Share> share;
    private volatile Set<String> hosts = Set.of();

    Guard(Sessions sessions, Optional<ServerSettings.Share> share) {
        this.sessions = sessions;
        this.share = share;
    }

    /** The port is known only when the socket is bound. */
    void port(int port) {
        hosts = share.map(s -> Set.of(host(s.address()) + ":" + port))
                .orElse(Set.of("127.0.0.1:" + port, "localhost:" + port));
    }

    /** An address as it stands in a link. */
    static String host(String address) {
        return address.indexOf(':') >= 0 ? "[" + address + "]" : address;
    }

    void install(RoutesConfig routes) {
        routes.before(this::headers);
        routes.before(this::check);
        routes.before(this::session);
        routes.get("/open/{token}", this::open);
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
                    403, "This address is not answered", "Open the address that was printed when the server started.");
        }
        if (READING.contains(ctx.method().name())) {
            return;
        }
        String origin = ctx.header("Origin");
        String site = ctx.header("Sec-Fetch-Site");
        String own = (share.isPresent() ? "https://" : "http://") + host;
        if (origin != null && !origin.equals(own)
                || site != null && !site.equals("same-origin") && !site.equals("none")) {
            throw new PageError(
                    403,
                    "A page of another site tried to change something here",
                    "Nothing was changed. If it was you, open the page from the list of cases and try again.");
        }
    }

    private void session(Context ctx) {
        Optional<Session> session = sessions.of(ctx.cookie(Visitor.cookie(ctx)));
        session.ifPresent(s -> Visitor.is(ctx, s));
        if (session.isEmpty() && !open(ctx.path())) {
            throw new PageError(
                    401,
                    "This browser was not let in yet",
                    share.isPresent()
                            ? "On a tablet, open the pairing page and type the code that the clinician shows."
                            : "Open the link that was printed in the terminal window when the server was started.");
        }
        if (READING.contains(ctx.method().name())) {
            return;
        }
        if (session.isPresent() && !session.get().role().mayChange()) {
            throw new PageError(
                    403,
                    "From this device cases are read, not changed",
                    "Ask the clinician to pair it in another role.");
        }
        if (ctx.contentLength() > MOST_FORM_BYTES && !ctx.path().equals("/import") && !picture(ctx.path())) {
            drain(ctx);
            throw new PageError(
                    413,
                    "That is larger than any form here",
                    "Nothing was changed. To bring in a file, use Import on the list of cases.");
        }
    }

    /** Pictures are read within bounds of their own. */
    private static boolean picture(String path) {
        return path.matches("/cases/[^/]+/measure/(picture|scan|keep)");
    }

    /** What is answered to strangers: the way in, and on a network how the way in looks. */
    private boolean open(String path) {
        return path.startsWith("/open/")
                || share.isPresent()
                        && (path.equals("/pair") || path.startsWith("/assets/") || path.equals("/favicon.ico"));
    }

    private void open(Context ctx) {
        String cookie = sessions.open(ctx.pathParam("token"))
                .orElseThrow(() -> new PageError(
                        401,
                        "This link is not from the server that runs now",
                        "Each start prints a new link. Open the one that was printed last in the terminal window."));
        Visitor.let(ctx, cookie, share.isPresent(), false);
        ctx.redirect("/cases", HttpStatus.SEE_OTHER);
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
