package dev.fairlead.cli;

import dev.fairlead.base.PrivateFiles;
import dev.fairlead.check.Checker;
import dev.fairlead.web.ServerSettings;
import dev.fairlead.web.WebServer;
import dev.fairlead.web.access.ShareCertificate;
import dev.fairlead.web.page.Checks;
import dev.fairlead.web.store.StoreException;
import java.io.IOException;
import java.io.InputStream;
import java.net.CookieHandler;
import java.net.CookieManager;
import java.net.HttpURLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Serves the local page until it is stopped. */
@Command(
        name = "serve",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Open the local page over a folder of cases. Only browsers that opened the printed link are answered, and without --share only on this machine.")
final class ServeCommand implements Callable<Integer> {
    private static final int USUAL_PORT = 8573;
    private static final int LAST_PORT = 65_535;
    private static final String USUAL_FOLDER = "cases";

    private final Console console;

    @Parameters(
            arity = "0..1",
            paramLabel = "FOLDER",
            defaultValue = USUAL_FOLDER,
            description = "Folder of case files (default ${DEFAULT-VALUE}); made when it is not there.")
    private Path folder;

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = "" + USUAL_PORT,
            description = "Port on the loopback address (default ${DEFAULT-VALUE}); 0 takes a free one.")
    private int port;

    @Option(
            names = "--once",
            hidden = true,
            description =
                    "Ask for the first page oneself, and stop: so that the classes that a start needs can be noted.")
    private boolean once;

    @Option(
            names = "--share",
            paramLabel = "ADDRESS",
            description =
                    "Serve other devices of the clinic's own network too, by TLS on this address of this machine alone, such as 192.168.1.20;"
                            + " each is let in by a code under Devices, with a role.")
    private String share;

    @Option(
            names = "--certificate",
            paramLabel = "FILE.p12",
            description =
                    "Certificate and key (PKCS#12) for --share instead of one made at first use; its password is asked for"
                            + " in the environment variable FAIRLEAD_CERTIFICATE_PASSWORD.")
    private Path certificate;

    @Mixin
    private RulesOption rules = new RulesOption();

    ServeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (port < 0 || port > LAST_PORT) {
            throw new Main.Stop(ExitCode.USAGE, "--port takes 0 (a free one) to " + LAST_PORT + ", not " + port + ".");
        }
        // the page is there while the rules are still on their way
        Checks checks = Checks.loading(() -> new Checker(rules.load()));
        boolean there = Files.exists(folder);
        WebServer server = start(checks);
        if (!there) {
            console.err().println("The folder " + folder + " was not there: an empty one was made.");
        }
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.close();
            stopped.countDown();
        }));
        console.err()
                .println("Open " + server.link() + " in a browser"
                        + (share == null
                                ? " on this machine. Stop with Ctrl-C."
                                : ", and let tablets in under Devices. Stop with Ctrl-C."));
        console.flush();
        try {
            checks.checker();
        } catch (RuntimeException e) {
            server.close();
            throw e;
        }
        if (once) {
            boolean answered = answers(server);
            server.close();
            return answered ? ExitCode.CLEAN : ExitCode.OWN_ERROR;
        }
        stopped.await();
        return ExitCode.CLEAN;
    }

    private static boolean answers(WebServer server) throws IOException {
        // the link opens a session, which the page behind it asks for
        CookieHandler.setDefault(new CookieManager());
        HttpURLConnection page = (HttpURLConnection) server.link().toURL().openConnection();
        try (InputStream in = page.getInputStream()) {
            return page.getResponseCode() == HttpURLConnection.HTTP_OK && in.readAllBytes().length > 0;
        }
    }

    private Optional<ServerSettings.Share> shared() throws IOException {
        if (share == null) {
            return Optional.empty();
        }
        try {
            ShareCertificate used = certificate == null
                    ? ShareCertificate.own(PrivateFiles.settings(), share)
                    : ShareCertificate.read(
                            certificate,
                            Objects.requireNonNullElse(System.getenv("FAIRLEAD_CERTIFICATE_PASSWORD"), ""));
            return Optional.of(new ServerSettings.Share(share, used));
        } catch (IOException | GeneralSecurityException e) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "There is no certificate for " + share + ": " + e.getMessage()
                            + ". Look at --certificate and its password, or leave it out to have one made.");
        }
    }

    private WebServer start(Checks checks) throws IOException {
        try {
            return WebServer.start(new ServerSettings(
                    folder,
                    port,
                    checks,
                    Optional.of(new Printing()),
                    LocalDate::now,
                    PrivateFiles.settings(),
                    shared()));
        } catch (StoreException e) {
            throw new Main.Stop(ExitCode.USAGE, e.getMessage() + ". " + e.mend());
        } catch (RuntimeException e) {
            for (Throwable cause = e; cause != null; cause = cause.getCause()) {
                if (cause instanceof java.net.BindException) {
                    throw new Main.Stop(
                            ExitCode.USAGE,
                            "Port " + port
                                    + " is taken: something else listens there. Choose another with --port, or 0 for a free one.");
                }
            }
            throw e;
        }
    }
}
