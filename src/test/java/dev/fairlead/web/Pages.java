package dev.fairlead.web;

import dev.fairlead.check.Checker;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.web.page.Checks;
import dev.fairlead.web.page.Prints;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A running server over a folder of invented cases, and a plain client that knows no script. */
final class Pages implements AutoCloseable {
    static final LocalDate TODAY = LocalDate.of(2026, 3, 1);
    private static final Checks CHECKS = Checks.by(new Checker(Rulebase.load(null)));

    /** Reports by other means than the program's own, which has tests of its own. */
    private static final Prints PRINTS = new Prints() {
        @Override
        public String html(
                dev.fairlead.check.Checked checked, java.util.List<dev.fairlead.report.html.LoggedChange> changes) {
            return "<p>report on " + checked.subject().id() + ", " + changes;
        }

        @Override
        public byte[] pdf(
                dev.fairlead.check.Checked checked, java.util.List<dev.fairlead.report.html.LoggedChange> changes) {
            return "%PDF-report".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        }

        @Override
        public byte[] firstPage(dev.fairlead.check.Checked checked) {
            return "%PDF-first".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        }

        @Override
        public byte[] sheet(dev.fairlead.check.Checked checked, dev.fairlead.report.sheet.Paper paper) {
            return ("%PDF-sheet " + paper).getBytes(java.nio.charset.StandardCharsets.UTF_8);
        }

        @Override
        public byte[] family(dev.fairlead.check.Checked checked, dev.fairlead.report.sheet.Paper paper) {
            return ("%PDF-family " + paper).getBytes(java.nio.charset.StandardCharsets.UTF_8);
        }

        @Override
        public java.util.List<dev.fairlead.findings.Missing> noSheet(dev.fairlead.check.Checked checked) {
            return checked.subject().wire().size().known()
                    ? java.util.List.of()
                    : java.util.List.of(dev.fairlead.findings.Missing.of("/wire/size"));
        }
    };

    final Path folder;
    final WebServer server;
    final String cookie;
    private int samples;
    private final HttpClient client =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

    /** Beside the folder, so that a server that is started anew over it knows its browsers. */
    private static Path secrets(Path folder) {
        return folder.resolveSibling(folder.getFileName() + "-secrets");
    }

    /** The cookie that an answer gives, as it is sent back. */
    static String cookie(HttpResponse<?> answer) {
        return answer.headers().firstValue("Set-Cookie").orElseThrow().replaceAll(";.*", "");
    }

    private Pages(Path folder, Checks checks) throws IOException {
        this.folder = folder;
        server = WebServer.start(new ServerSettings(
                folder, 0, checks, Optional.of(PRINTS), () -> TODAY, secrets(folder), Optional.empty()));
        cookie = cookie(stranger(HttpRequest.newBuilder(server.link()).build()));
    }

    /** A server over one case of that pseudonym, whose checks fail with a message that holds it. */
    static Pages broken(Path folder, String id) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(
                folder.resolve("hidden.json"), "{\"fairlead\": 1, \"id\": \"" + id + "\", \"stage\": \"records\"}");
        return new Pages(folder, Checks.loading(() -> {
            throw new IllegalStateException("cannot check " + id);
        }));
    }

    static Pages over(Path folder) throws IOException {
        return new Pages(folder, CHECKS);
    }

    /** A server with one full case, {@code sample.json}. */
    static Pages withSample(Path folder) throws IOException {
        Files.writeString(
                folder.resolve("sample.json"), CaseWriter.json(SampleCase.full().build()));
        return new Pages(folder, CHECKS);
    }

    /** Writes one more full case; gives the name of its file. */
    String sample() throws IOException {
        String name = "sample-" + samples++ + ".json";
        Files.writeString(
                folder.resolve(name), CaseWriter.json(SampleCase.full().build()));
        return name;
    }

    String file(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    URI at(String path) {
        return server.address().resolve(path);
    }

    HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(request, (name, value) -> true)
                        .header("Cookie", cookie)
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** A request of somebody who was not let in. */
    HttpResponse<String> stranger(HttpRequest request) throws IOException {
        try {
            return client.send(request, HttpResponse.BodyHandlers.ofString());
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(at(path)).build());
    }

    HttpResponse<String> post(String path, Map<String, String> form, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(encoded(form)));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return send(request.build());
    }

    /** The bytes of a file that is taken away. */
    byte[] bytes(String path) throws IOException, InterruptedException {
        return client.send(
                        HttpRequest.newBuilder(at(path))
                                .header("Cookie", cookie)
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    /** The page that answers when a file of that name is brought in. */
    String upload(String name, byte[] file) throws IOException, InterruptedException {
        var body = new java.io.ByteArrayOutputStream();
        body.write(("--b\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + name
                        + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.write(file);
        body.write("\r\n--b--\r\n".getBytes(StandardCharsets.UTF_8));
        return send(HttpRequest.newBuilder(at("/import"))
                        .header("Content-Type", "multipart/form-data; boundary=b")
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                        .build())
                .body();
    }

    static String encoded(Map<String, String> form) {
        return form.entrySet().stream()
                .map(e -> enc(e.getKey()) + "=" + enc(e.getValue()))
                .collect(Collectors.joining("&"));
    }

    /** The version that a page says it was made from. */
    String version(String page) throws IOException, InterruptedException {
        Matcher m = Pattern.compile("name=\"version\" id=\"version\" value=\"([0-9a-f]+)\"")
                .matcher(get(page).body());
        if (!m.find()) {
            throw new AssertionError(page + " names no version");
        }
        return m.group(1);
    }

    private static String enc(String s) {
        return URLEncoder.encode(s, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
    }
}
