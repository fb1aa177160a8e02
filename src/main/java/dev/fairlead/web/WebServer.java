package dev.fairlead.web;

import dev.fairlead.base.Background;
import dev.fairlead.web.access.Access;
import dev.fairlead.web.access.Pairing;
import dev.fairlead.web.access.Sessions;
import dev.fairlead.web.edit.CaseEditor;
import dev.fairlead.web.page.Pages;
import dev.fairlead.web.page.Reports;
import dev.fairlead.web.page.Site;
import dev.fairlead.web.page.Views;
import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.ServedBy;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * Serves the pages: on the loopback address, so that no other machine reaches them, or by TLS on one named address of a
 * clinic's own network.
 */
public final class WebServer implements AutoCloseable {
    private static final String LOOPBACK = "127.0.0.1";
    private static final Logger JETTY = Logger.getLogger("org.eclipse.jetty");
    /** What Javalin logs it also throws; {@link Errors} and the caller of {@link #start} tell of it. */
    private static final Logger JAVALIN = Logger.getLogger("io.javalin");

    private final Javalin app;
    private final URI address;
    private final String token;
    private final ServedBy served;

    private WebServer(Javalin app, URI address, String token, ServedBy served) {
        this.app = app;
        this.address = address;
        this.token = token;
        this.served = served;
    }

    /** Starts serving; returns when pages are answered. */
    public static WebServer start(ServerSettings settings) throws IOException {
        JETTY.setLevel(Level.WARNING);
        JAVALIN.setLevel(Level.OFF);
        hastenJetty();
        CaseEditor editor = new CaseEditor(CaseFolder.open(settings.folder()));
        ServedBy served = editor.folder().serve();
        try {
            return start(settings, editor, served);
        } catch (IOException | RuntimeException e) {
            served.close();
            throw e;
        }
    }

    private static WebServer start(ServerSettings settings, CaseEditor editor, ServedBy served) throws IOException {
        Optional<ServerSettings.Share> share = settings.share();
        String[] address = new String[1];
        Sessions sessions = new Sessions(settings.secrets(), settings.today());
        Access access = new Access(
                sessions, new Pairing(Clock.systemUTC()), share.isPresent(), () -> address[0], fingerprint(share));
        Assets assets = new Assets();
        Views views = new Views(editor.folder().label(), assets.hash(), share.isPresent());
        Guard guard = new Guard(sessions, share);
        Site site = new Site(
                editor,
                views,
                new Reports(settings.checks(), settings.today()),
                settings.prints(),
                settings.today(),
                access);
        Javalin app = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.showOldJavalinVersionWarning = false;
            config.jetty.host = LOOPBACK;
            config.jetty.port = settings.port();
            share.ifPresent(s -> config.jetty.addConnector((server, http) -> secure(server, http, s, settings.port())));
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
        address[0] =
                share.map(s -> "https://" + Guard.host(s.address())).orElse("http://" + LOOPBACK) + ":" + app.port();
        guard.port(app.port());
        return new WebServer(app, URI.create(address[0] + "/"), sessions.token(), served);
    }

    private static Connector secure(Server server, HttpConfiguration http, ServerSettings.Share share, int port) {
        SslContextFactory.Server tls = new SslContextFactory.Server();
        tls.setKeyStore(share.certificate().store());
        tls.setKeyStorePassword(share.certificate().password());
        // a clinic's address is seldom a name that a certificate could be asked for by
        tls.setSniRequired(false);
        HttpConfiguration secure = new HttpConfiguration(http);
        secure.addCustomizer(new SecureRequestCustomizer(false));
        ServerConnector connector = new ServerConnector(server, tls, new HttpConnectionFactory(secure));
        connector.setHost(share.address());
        connector.setPort(port);
        return connector;
    }

    private static String fingerprint(Optional<ServerSettings.Share> share) {
        try {
            return share.isPresent() ? share.get().certificate().fingerprint() : "";
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a certificate that was read has a fingerprint", e);
        }
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

    /** The address below which all pages stand. */
    public URI address() {
        return address;
    }

    /** The link that lets a browser in. */
    public URI link() {
        return address.resolve("/open/" + token);
    }

    /** Stops answering; requests that are being answered are finished first. */
    @Override
    public void close() {
        app.stop();
        served.close();
    }
}
