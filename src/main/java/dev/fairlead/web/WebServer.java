package dev.fairlead.web;

import dev.fairlead.check.Background;
import dev.fairlead.web.edit.CaseEditor;
import dev.fairlead.web.page.Pages;
import dev.fairlead.web.page.Reports;
import dev.fairlead.web.page.Site;
import dev.fairlead.web.page.Views;
import dev.fairlead.web.store.CaseFolder;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The local web page. It is bound to the loopback address, so that no other machine reaches it. */
public final class WebServer implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";
    private static final Logger JETTY = Logger.getLogger("org.eclipse.jetty");
    /** What Javalin logs it also throws; {@link Errors} and the caller of {@link #start} tell of it. */
    private static final Logger JAVALIN = Logger.getLogger("io.javalin");

    private final Javalin app;

    private WebServer(Javalin app) {
        this.app = app;
    }

    /** Starts serving; returns when pages are answered. */
    public static WebServer start(ServerSettings settings) throws IOException {
        JETTY.setLevel(Level.WARNING);
        JAVALIN.setLevel(Level.OFF);
        hastenJetty();
        CaseEditor editor = new CaseEditor(CaseFolder.open(settings.folder()));
        Assets assets = new Assets();
        Views views = new Views(editor.folder().label(), assets.hash());
        Guard guard = new Guard();
        Site site = new Site(
                editor, views, new Reports(settings.checks(), settings.today()), settings.prints(), settings.today());
        Javalin app = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.jetty.host = LOOPBACK;
            config.jetty.port = settings.port();
            config.http.maxRequestSize = CaseFolder.MOST_BYTES + 100_000L;
            config.http.defaultContentType = "text/plain; charset=utf-8";
            config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
            config.jetty.modifyServer(server -> server.setStopTimeout(3000));
            guard.install(config.routes);
            new Errors(views).install(config.routes);
            assets.install(config.routes);
            Pages.install(config.routes, site);
        });
        app.start();
        guard.port(app.port());
        return new WebServer(app);
    }

    /** Spares Jetty what takes long when it starts. */
    private static void hastenJetty() {
        // how many references a line of the processor's cache holds: only a hint, but Jetty would start Java's
        // management to ask for it
        System.getProperties().putIfAbsent("org.eclipse.jetty.util.referencesPerCacheLine", "16");
        // Jetty looks at every locale, for which Java has to find them all
        Background.start("locales", Locale::getAvailableLocales);
    }

    public int port() {
        return app.port();
    }

    /** The address to open in a browser. */
    public URI address() {
        return URI.create("http://" + LOOPBACK + ":" + port() + "/");
    }

    /** Stops answering; requests that are being answered are finished first. */
    @Override
    public void close() {
        app.stop();
    }
}
