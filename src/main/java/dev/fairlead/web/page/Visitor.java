package dev.fairlead.web.page;

import dev.fairlead.web.access.Session;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Optional;

/** The session that a request belongs to, and the cookie by which it is known. */
public final class Visitor {
    /** A paired device comes back after a holiday; sessions of this machine end with the browser. */
    private static final int PAIRED_SECONDS = 180 * 24 * 3600;

    private static final String SESSION = "session";

    private Visitor() {}

    /** Cookies do not tell ports apart, so the name does: two servers of one machine have each their own. */
    public static String cookie(Context ctx) {
        return "fairlead-" + ctx.req().getServerPort();
    }

    /** Notes whose request it is. */
    public static void is(Context ctx, Session session) {
        ctx.attribute(SESSION, session);
    }

    /** Whose request it is; empty for a stranger's. */
    public static Optional<Session> of(Context ctx) {
        return Optional.ofNullable(ctx.attribute(SESSION));
    }

    /** Whose request it is, where strangers are turned away before. */
    static Session known(Context ctx) {
        return of(ctx).orElseThrow(() -> new IllegalStateException("strangers are turned away before"));
    }

    /** Gives a browser its cookie, which no script can read and no other site can have sent. */
    public static void let(Context ctx, String cookie, boolean secure, boolean lasting) {
        ctx.cookie(new Cookie(
                cookie(ctx), cookie, "/", lasting ? PAIRED_SECONDS : -1, secure, true, null, SameSite.STRICT));
    }
}
