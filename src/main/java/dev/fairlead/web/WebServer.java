package dev.fairlead.web;

import dev.fairlead.check.Background;
import dev.fairlead.web.edit.Desk;
import dev.fairlead.web.page.Pages;
import dev.fairlead.web.page.Reports;
import dev.fairlead.web.store.CaseFolder;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The local web page. It is bound to the loopback address, so that no other machine reaches it. */
public final class WebServer implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";
    private static final Logger JETTY = Logger.getLogger("org.eclipse.jetty");
    /** What Javalin logs it also throws; {@link Errors} and the caller of {@link #start} tell of it. */
    private static final Logger JAVALIN = Logger.getLogger("io.javalin");

    private final Javalin app;
    private final Runnable warmUp;

    private WebServer(Javalin app, Runnable warmUp) {
        this.app = app;
        this.warmUp = warmUp;
    }

    /** Starts serving; returns when pages are answered. */
    public static WebServer start(Settings settings) throws IOException {
        JETTY.setLevel(Level.WARNING);
        JAVALIN.setLevel(Level.OFF);
        hastenJetty();
        Desk desk = new Desk(CaseFolder.open(settings.folder()));
        Assets assets = new Assets();
        Views views = new Views(desk.folder().label(), assets.hash());
        Guard guard = new Guard();
        Site site = new Site(
                desk, views, new Reports(settings.checks(), settings.today()), settings.prints(), settings.today());
        AtomicReference<Runnable> warmUp = new AtomicReference<>();
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
            warmUp.set(Pages.install(config.routes, site));
        });
        app.start();
        guard.port(app.port());
        return new WebServer(app, warmUp.get());
    }

    /** Spares Jetty what takes long when it starts. */
    private static void hastenJetty() {
        // how many references a line of the processor's cache holds: only a hint, but Jetty would start Java's
        // management to ask for it
        System.getProperties().putIfAbsent("org.eclipse.jetty.util.referencesPerCacheLine", "16");
        // Jetty looks at every locale, for which Java has to find them all
        Background.start("locales", Locale::getAvailableLocales);
    }

    /**
     * Makes the pages quick before they are asked for; whoever asks for the list of cases at once is answered first.
     */
    public void warmUp() {
        warmUp.run();
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
