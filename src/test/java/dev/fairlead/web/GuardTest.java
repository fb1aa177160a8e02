package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a page of another site, or a hand-made request, can and cannot do. */
class GuardTest {
    @TempDir
    static Path folder;

    static Pages pages;

    @BeforeAll
    static void start() throws IOException {
        Files.writeString(folder.resolveSibling("secret.json"), "{\"secret\": 1}");
        pages = Pages.withSample(folder);
    }

    @AfterAll
    static void stop() throws IOException {
        pages.close();
        Files.deleteIfExists(folder.resolveSibling("secret.json"));
    }

    /** Sends a request byte by byte, since no client library sends a false Host header. */
    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), pages.server.port())) {
            socket.setSoTimeout(10_000);
            OutputStream out = socket.getOutputStream();
            out.write(request.getBytes(StandardCharsets.ISO_8859_1));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aNameThatAForeignSiteGaveToThisAddressIsNotAnswered() throws IOException {
        assertThat(raw("GET /cases HTTP/1.1\r\nHost: rebound.example:" + pages.server.port()
                        + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403")
                .doesNotContain("sample.json");
        assertThat(raw("GET /cases HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("GET /cases HTTP/1.1\r\nHost: localhost:" + pages.server.port() + "\r\nCookie: " + pages.cookie
                        + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    /** A loopback address is open to every program of every user of the machine. */
    @Test
    void whoDidNotOpenThePrintedLinkSeesAndChangesNothing() throws Exception {
        String before = pages.file("sample.json");
        String version = pages.version("/cases/sample.json/form/arch");
        for (String path : List.of(
                "/",
                "/cases",
                "/cases/sample.json/download",
                "/cases/sample.json/report.pdf",
                "/book",
                "/alive",
                "/assets/app.js",
                "/favicon.ico",
                "/nowhere",
                "/pair",
                "/open/" + "A".repeat(43))) {
            HttpResponse<String> r =
                    pages.stranger(HttpRequest.newBuilder(pages.at(path)).build());
            assertThat(r.statusCode()).as(path).isEqualTo(401);
            assertThat(r.body()).as(path).doesNotContain("sample").contains("printed");
            assertThat(r.headers().firstValue("Set-Cookie")).as(path).isEmpty();
        }
        HttpResponse<String> posted =
                pages.stranger(HttpRequest.newBuilder(pages.at("/cases/sample.json/form/arch?changed=/space/left"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .header("Cookie", pages.cookie.replaceAll("=.*", "=guessed"))
                        .POST(HttpRequest.BodyPublishers.ofString("version=" + version + "&/space/left=12.3"))
                        .build());
        assertThat(posted.statusCode()).isEqualTo(401);
        assertThat(pages.file("sample.json")).isEqualTo(before);
        String cookie = pages.stranger(
                        HttpRequest.newBuilder(pages.server.link()).build())
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow();
        assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Path=/");
    }

    @Test
    void aPageOfAnotherSiteChangesNothing() throws Exception {
        String before = pages.file("sample.json");
        String version = pages.version("/cases/sample.json/form/arch");
        Map<String, String> form = Map.of("version", version, "/space/left", "12.3");
        for (String[] headers : List.of(
                new String[] {"Origin", "http://evil.example"},
                new String[] {"Origin", "null"},
                new String[] {"Sec-Fetch-Site", "cross-site"},
                new String[] {"Sec-Fetch-Site", "same-site"},
                new String[] {"Origin", "http://127.0.0.1:1"})) {
            assertThat(pages.post("/cases/sample.json/form/arch?changed=/space/left", form, headers)
                            .statusCode())
                    .as(headers[1])
                    .isEqualTo(403);
        }
        assertThat(pages.file("sample.json")).isEqualTo(before);
    }

    @Test
    void onlyThisMachineCanConnect() throws Exception {
        for (NetworkInterface nic : java.util.Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : java.util.Collections.list(nic.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    try (Socket socket = new Socket()) {
                        org.assertj.core.api.Assertions.assertThatThrownBy(
                                        () -> socket.connect(new InetSocketAddress(address, pages.server.port()), 2000))
                                .isInstanceOf(IOException.class);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/cases",
                "/cases/sample.json/form/teeth",
                "/cases/sample.json/findings",
                "/book",
                "/cases/nothing.json/findings",
                "/nowhere",
                "/favicon.ico"
            })
    void everyAnswerBindsTheBrowser(String path) throws Exception {
        HttpResponse<String> r = pages.get(path);
        String policy = r.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy)
                .contains(
                        "default-src 'none'",
                        "script-src 'self'",
                        "style-src 'self'",
                        "frame-ancestors 'none'",
                        "base-uri 'none'",
                        "form-action 'self'")
                .doesNotContain("unsafe");
        assertThat(r.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(r.headers().firstValue("Server")).isEmpty();
        if (!path.equals("/favicon.ico")) {
            assertThat(r.headers().firstValue("Cache-Control")).contains("no-store");
            // what the policy forbids would silently not work
            assertThat(r.body())
                    .doesNotContain("style=\"")
                    .doesNotContain("<style")
                    .doesNotContain("onclick=")
                    .doesNotContainPattern("<script(?![^>]*src=)")
                    .doesNotContainPattern("(?:src|href)=\"(?:https?:)?//");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/cases/..%2Fsecret.json/download",
                "/cases/%2e%2e%2fsecret.json/download",
                "/cases/..%5Csecret.json/download",
                "/cases/secret.json/download",
                "/cases/.history/download",
                "/cases/%2Fetc%2Fpasswd/download",
                "/assets/..%2f..%2fapp.css",
                "/cases/sample.json%00.json/download"
            })
    void nothingOutsideTheFolderCanBeNamed(String path) throws Exception {
        HttpResponse<String> r = pages.get(path);
        assertThat(r.statusCode()).isBetween(400, 404);
        assertThat(r.body()).doesNotContain("secret\":").doesNotContain("root:");
    }

    @Test
    void aLinkInTheFolderIsNotFollowed() throws Exception {
        Path link = folder.resolve("link.json");
        Files.createSymbolicLink(link, folder.resolveSibling("secret.json"));
        try {
            assertThat(pages.get("/cases/link.json/download").statusCode()).isEqualTo(404);
        } finally {
            Files.delete(link);
        }
    }

    @Test
    void tooMuchIsRefusedAndNothingIsWritten() throws Exception {
        String before = pages.file("sample.json");
        Map<String, String> form =
                Map.of("version", pages.version("/cases/sample.json/form/arch"), "/space/left", "9".repeat(400_000));
        assertThat(pages.post("/cases/sample.json/form/arch", form).statusCode())
                .isEqualTo(413);
        assertThat(pages.file("sample.json")).isEqualTo(before);
    }

    @Test
    void errorsSayWhatToDo() throws Exception {
        assertThat(pages.get("/cases/nothing.json/findings")).satisfies(r -> {
            assertThat(r.statusCode()).isEqualTo(404);
            assertThat(r.body()).contains("no case file of that name", "Go to the list of cases");
        });
        assertThat(pages.post("/cases/sample.json/form/arch", Map.of("/space/left", "20"))
                        .body())
                .contains("Load the page again");
    }

    @Test
    void whatIsTypedIsShownAsTextAndNeverAsMarkup() throws Exception {
        String hostile = "<img src=x onerror=alert(1)>\"'><script>alert(2)</script>";
        String version = pages.version("/cases/sample.json/form/arch");
        pages.post(
                "/cases/sample.json/form/arch?changed=/space/right",
                Map.of("version", version, "/space/right", hostile.substring(0, 38)));
        String page = pages.get("/cases/sample.json/form/arch").body();
        assertThat(page).doesNotContain("<img src=x").contains("&lt;img src=x");
        assertThat(pages.get("/cases?q=" + java.net.URLEncoder.encode(hostile, StandardCharsets.UTF_8))
                        .body())
                .doesNotContain("<script>alert")
                .doesNotContain("<img src=x");
    }

    /** A form that does not say how large it is. */
    @Test
    void tooMuchInPiecesIsRefusedToo() throws Exception {
        String before = pages.file("sample.json");
        var body = HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(
                ("/space/left=" + "9".repeat(3_000_000)).getBytes(StandardCharsets.UTF_8)));
        try {
            HttpResponse<String> r = pages.send(HttpRequest.newBuilder(pages.at("/cases/sample.json/form/arch"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(body)
                    .build());
            assertThat(r.statusCode()).isBetween(400, 413);
        } catch (java.io.IOException e) {
            // who goes on sending after the refusal may be cut off before he reads it (RFC 9110, 15.5.14)
            assertThat(pages.get("/cases").statusCode()).isEqualTo(200);
        }
        assertThat(pages.file("sample.json")).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rules.drl", "rulebase.json", "x.exe", "../up.json", "big.json"})
    void aFileThatIsNoCaseIsNotBroughtIn(String name) throws Exception {
        // a DRL text that would be code if anything ran it; the last is larger than any case
        String text = name.equals("big.json")
                ? "{\"fairlead\":1,\"id\":\"" + "x".repeat(2_050_000) + "\"}"
                : "package evil; rule \"r\" when then System.exit(1); end";
        String form = "--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n" + text + "\r\n--b--\r\n";
        HttpResponse<String> r = pages.send(HttpRequest.newBuilder(pages.at("/import"))
                .header("Content-Type", "multipart/form-data; boundary=b")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build());
        assertThat(r.statusCode()).isBetween(400, 422);
        assertThat(r.body()).contains("<h1>");
        String last = name.replaceAll(".*/", "");
        assertThat(folder.resolve(last)).doesNotExist();
        assertThat(folder.resolveSibling(last)).doesNotExist();
    }

    /** Whatever goes wrong, the log says where in the program, and nothing of the case. */
    @Test
    void nothingOfACaseIsLogged() throws Exception {
        List<java.util.logging.LogRecord> records = java.util.Collections.synchronizedList(new java.util.ArrayList<>());
        var listening = new java.util.logging.Handler() {
            @Override
            public void publish(java.util.logging.LogRecord record) {
                records.add(record);
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        var root = java.util.logging.Logger.getLogger("");
        root.addHandler(listening);
        String secret = "zq-secret-pseudonym-7";
        String page = "/cases/sample.json/form/child";
        try (Pages broken = Pages.broken(folder.resolve("broken"), secret)) {
            assertThat(broken.get("/cases/hidden.json/findings")).satisfies(r -> {
                assertThat(r.statusCode()).isEqualTo(500);
                assertThat(r.body())
                        .contains("Something went wrong in the program", "Load the page again")
                        .doesNotContain("IllegalStateException");
            });
            pages.post(page + "?changed=/id", Map.of("version", pages.version(page), "/id", secret + " !"));
            pages.get("/cases/" + secret + ".json/findings");
        } finally {
            root.removeHandler(listening);
        }
        assertThat(records)
                .as("the failure is logged")
                .anyMatch(r -> String.valueOf(r.getMessage()).contains("failed"));
        assertThat(records).allSatisfy(r -> {
            assertThat(new java.util.logging.SimpleFormatter().format(r))
                    .doesNotContain(secret)
                    .doesNotContain("hidden.json");
            assertThat(r.getThrown()).isNull();
        });
    }
}
