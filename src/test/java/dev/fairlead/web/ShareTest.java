package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import dev.fairlead.check.Checker;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.web.access.ShareCertificate;
import dev.fairlead.web.page.Checks;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The pages over a clinic's own network: by TLS, to paired devices, each in its role. */
class ShareTest {
    private static final String CASE = "/cases/sample.json";

    @TempDir
    Path dir;

    private WebServer server;
    private HttpClient client;
    private String owner;

    @BeforeEach
    void start() throws Exception {
        Path folder = Files.createDirectories(dir.resolve("cases"));
        Files.writeString(
                folder.resolve("sample.json"), CaseWriter.json(SampleCase.full().build()));
        ShareCertificate own = ShareCertificate.own(dir.resolve("secrets"), "127.0.0.1");
        server = WebServer.start(new ServerSettings(
                folder,
                0,
                Checks.by(new Checker(Rulebase.load(null))),
                Optional.empty(),
                () -> Pages.TODAY,
                dir.resolve("secrets"),
                Optional.of(new ServerSettings.Share("127.0.0.1", own))));
        // the client trusts this certificate and checks that it is made for the address
        KeyStore trusted = KeyStore.getInstance(KeyStore.getDefaultType());
        trusted.load(null, null);
        trusted.setCertificateEntry("own", own.store().getCertificate("fairlead"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext tls = SSLContext.getInstance("TLS");
        tls.init(null, trust.getTrustManagers(), null);
        client = HttpClient.newBuilder().sslContext(tls).build();
        owner = Pages.cookie(send("GET", server.link().getPath(), Map.of(), ""));
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private HttpResponse<String> send(String method, String path, Map<String, String> form, String cookie)
            throws Exception {
        HttpRequest.Builder b = HttpRequest.newBuilder(server.address().resolve(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .method(method, HttpRequest.BodyPublishers.ofString(Pages.encoded(form)));
        return client.send(
                cookie.isEmpty() ? b.build() : b.header("Cookie", cookie).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    private String pair(String name, String role) throws Exception {
        send("POST", "/devices", Map.of("name", name, "role", role), owner);
        Matcher code = Pattern.compile("pair-code number\">([0-9]{6})<")
                .matcher(send("GET", "/devices", Map.of(), owner).body());
        assertThat(code.find()).isTrue();
        HttpResponse<String> paired = send("POST", "/pair", Map.of("code", code.group(1)), "");
        assertThat(paired.headers().firstValue("Set-Cookie").orElseThrow())
                .contains("Secure", "HttpOnly", "SameSite=Strict");
        return Pages.cookie(paired);
    }

    private String version(String cookie) throws Exception {
        Matcher m = Pattern.compile("name=\"version\" id=\"version\" value=\"([0-9a-f]+)\"")
                .matcher(send("GET", CASE + "/form/arch", Map.of(), cookie).body());
        assertThat(m.find()).isTrue();
        return m.group(1);
    }

    private int change(String cookie, String pointer, String value) throws Exception {
        return send("POST", CASE + "/form/arch", Map.of("version", version(owner), pointer, value), cookie)
                .statusCode();
    }

    @Test
    void eachDeviceMayDoWhatItsRoleMayUntilItIsSentAway() throws Exception {
        assertThat(server.address().getScheme()).isEqualTo("https");
        HttpResponse<String> stranger = send("GET", "/cases", Map.of(), "");
        assertThat(stranger.statusCode()).isEqualTo(401);
        assertThat(stranger.body()).as("the way in").contains("href=\"/pair\"").doesNotContain("k.json");
        assertThat(send("GET", "/pair", Map.of(), "").body()).contains("Pair this device");
        String reader = pair("Hall", "reader");
        String assistant = pair("Chair 2", "assistant");
        String resident = pair("Desk", "resident");
        String clinician = pair("Office", "clinician");
        assertThat(send("GET", CASE + "/findings", Map.of(), reader).statusCode())
                .isEqualTo(200);
        assertThat(change(reader, "/space/left", "19.1")).isEqualTo(403);
        assertThat(change(assistant, "/space/left", "19.2")).isLessThan(400);
        assertThat(change(assistant, "/insertion/answeredBy", "director")).isEqualTo(403);
        assertThat(change(assistant, "/insertion/answeredBy", "assistant")).isLessThan(400);
        Map<String, String> waiver = Map.of(
                "version",
                version(owner),
                "reason",
                "The models were taken the same day.",
                "by",
                "clinician",
                "date",
                "2026-03-01",
                "expires",
                "2026-06-01");
        assertThat(send("POST", CASE + "/waive/records-fresh", waiver, assistant)
                        .statusCode())
                .isEqualTo(403);
        assertThat(send("GET", "/devices", Map.of(), resident).statusCode()).isEqualTo(403);
        assertThat(send("GET", "/devices", Map.of(), clinician).body())
                .contains("Hall", "Chair 2")
                .contains("Office");
        assertThat(send("POST", "/devices", Map.of("name", "x", "role", "director"), clinician)
                        .statusCode())
                .isEqualTo(403);
        Matcher id = Pattern.compile("value=\"([^\"]+)\">Send Chair 2 away")
                .matcher(send("GET", "/devices", Map.of(), clinician).body());
        assertThat(id.find()).isTrue();
        send("POST", "/devices/revoke", Map.of("id", id.group(1)), clinician);
        assertThat(send("GET", "/cases", Map.of(), assistant).statusCode()).isEqualTo(401);
        assertThat(Files.readString(dir.resolve("cases/.history/sample.json/log.ndjson")))
                .contains("Chair 2", "19.2")
                .doesNotContain("19.1");
        for (String secret : new String[] {"sessions.json", "share.secret", "share-127.0.0.1.p12"}) {
            assertThat(PosixFilePermissions.toString(
                            Files.getPosixFilePermissions(dir.resolve("secrets").resolve(secret))))
                    .as(secret)
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void fiveWrongCodesLockPairing() throws Exception {
        send("POST", "/devices", Map.of("name", "Chair 2", "role", "assistant"), owner);
        String first = send("POST", "/pair", Map.of("code", "none"), "").body();
        assertThat(first).contains("4 tries are left");
        assertThat(send("POST", "/pair", Map.of("code", "none"), "").body()).contains("Too soon");
        assertThat(send("POST", "/pair", Map.of("code", "none"), "").statusCode())
                .isEqualTo(429);
    }

    /** The page by which a device comes in, with a wrong code too, and the one that shows the code. */
    @Test
    @ExtendWith(WithBrowser.class)
    void thePagesOfPairingStandInNobodysWay(Browsing browsing) throws Exception {
        send("POST", "/devices", Map.of("name", "Chair 2", "role", "assistant"), owner);
        List<String> faults = new ArrayList<>();
        // the browser does not know the certificate either
        try (BrowserContext c = browsing.context(new Browser.NewContextOptions().setIgnoreHTTPSErrors(true))) {
            Page page = c.newPage();
            page.navigate(server.address().resolve("/cases").toString());
            assertThat(page.content()).contains("href=\"/pair\"");
            Axe.look(page, "not let in", faults);
            page.navigate(server.address().resolve("/pair").toString());
            Axe.look(page, "pair", faults);
            page.fill("[name=code]", "000 000");
            page.click("button");
            page.waitForSelector("[role=alert]");
            Axe.look(page, "wrong code", faults);
            page.navigate(server.link().toString());
            page.navigate(server.address().resolve("/devices").toString());
            assertThat(page.locator(".pair-code").count()).isEqualTo(1);
            Axe.look(page, "devices", faults);
        }
        assertThat(faults).isEmpty();
        browsing.assertQuiet();
    }
}
