package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.UnixOperatingSystemMXBean;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.testing.Damage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged requests of somebody who was let in: each is answered, none by an error of the program; the case stays one
 * that can be read, and neither memory nor files grow with their number. Of a million inputs they are as many as a
 * clinic's page gets in three days of eight hours, one every two seconds.
 */
class RequestFuzzTest {
    private static final List<String> PATHS = List.of(
            "/cases",
            "/cases?q=a&stage=records&sort=name&more=1",
            "/cases/sample.json/form/arch",
            "/cases/sample.json/form/arch?changed=/space/left",
            "/cases/sample.json/form/teeth?next=/teeth/42/width",
            "/cases/sample.json/report",
            "/cases/sample.json/chair?part=0&q=1",
            "/cases/sample.json/versions",
            "/cases/sample.json/wire",
            "/cases/sample.json/visits",
            "/cases/sample.json/waive?criterion=overjet-after",
            "/cases/sample.json/numbers",
            "/cases/sample.json/plans",
            "/cases/sample.json/measure",
            "/cases/sample.json/download",
            "/cases/sample.json/rename",
            "/book",
            "/book/overjet-after",
            "/pair",
            "/import",
            "/restore");
    private static final List<String> FIELDS = List.of(
            "/space/left=12.3",
            "/bite/overjet=3.5 mm",
            "/date=2026-03-01",
            "/child/age=11.4 y",
            "/teeth/42/width=5.8; 5.9",
            "/waivers/0/reason=seen",
            "name=sample.json",
            "to=other.json",
            "id=a-1",
            "entry=/visits/0",
            "criterion=overjet-after",
            "set=plan.standOff=1.5",
            "version=0123456789abcdef");

    @TempDir
    Path folder;

    private final Damage damage = new Damage(31);

    @Test
    void everyRequestIsAnsweredAndNothingGrows() throws Exception {
        int all = Damage.Kind.REQUEST.inputs();
        Map<Integer, Integer> answers = new TreeMap<>();
        try (Pages pages = Pages.withSample(folder)) {
            String whole = Files.readString(folder.resolve("sample.json"));
            String version = "";
            long before = 0;
            long open = 0;
            for (int i = 0; i < all; i++) {
                // some requests rename the case, delete it or save it: without one at hand the rest would ask for
                // nothing
                if (i % 20 == 0) {
                    Files.writeString(folder.resolve("sample.json"), whole);
                    version = pages.version("/cases/sample.json/form/arch");
                }
                String request = request(pages, version);
                int status = status(pages, request);
                answers.merge(status, 1, Integer::sum);
                // a line without a path is no request of this version of HTTP, says the server before it is ours
                assertThat(status == 505 ? 400 : status)
                        .as("input %d:\n%s", i, request)
                        .isBetween(200, 499);
                if (i == all / 4) {
                    before = used();
                    open = openFiles();
                }
            }
            assertThat(used() - before)
                    .as("memory that later requests left behind")
                    .isLessThan(48L << 20);
            assertThat(openFiles() - open).as("files that were left open").isLessThan(50);
            assertThat(pages.get("/cases").statusCode()).isEqualTo(200);
        }
        System.out.printf("Fuzz: %d requests, answers by status %s%n", all, answers);
        assertThat(answers.entrySet().stream()
                        .filter(a -> a.getKey() < 400)
                        .mapToInt(Map.Entry::getValue)
                        .sum())
                .as("requests that were taken")
                .isGreaterThan(all / 10);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(CaseReader.read(
                                        Files.readAllBytes(file),
                                        file.getFileName().toString(),
                                        CaseFormat.BY_NAME)
                                .read())
                        .as(file.toString())
                        .isTrue();
            }
        }
        try (Stream<Path> files = Files.walk(folder)) {
            assertThat(files.count())
                    .as("files, of which a case keeps a hundred versions")
                    .isLessThan(1000);
        }
    }

    private String request(Pages pages, String version) {
        boolean post = damage.below(3) > 0;
        String target = damage.pick(PATHS);
        StringBuilder body = new StringBuilder("version=" + version);
        for (int n = damage.below(4); n >= 0; n--) {
            String field = damage.pick(FIELDS);
            int cut = field.indexOf('=');
            String value = damage.below(2) == 0 ? field.substring(cut + 1) : damage.of(field.substring(cut + 1));
            body.append('&').append(enc(field.substring(0, cut))).append('=').append(enc(value));
        }
        String sent = damage.below(3) == 0 ? damage.of(body.toString()) : body.toString();
        int length = sent.getBytes(StandardCharsets.UTF_8).length;
        String asked = damage.below(2) == 0 ? target : damage.of(target);
        // a line that is no request line ends the connection before anything of this program sees it
        asked = asked.replaceAll("[\\s\\p{Cntrl}]", "+");
        return (post ? "POST " : "GET ") + asked + " HTTP/1.1\r\nHost: localhost:" + pages.server.port()
                + "\r\nCookie: "
                + pages.cookie + "\r\nConnection: close\r\nContent-Type: "
                + (damage.below(8) == 0
                        ? damage.of("multipart/form-data; boundary=b").replaceAll("\\p{Cntrl}", "+")
                        : "application/x-www-form-urlencoded")
                + "\r\n"
                + (damage.below(2) == 0 ? "HX-Request: true\r\n" : "")
                + (post ? "Content-Length: " + length + "\r\n\r\n" + sent : "\r\n");
    }

    private static String enc(String s) {
        return URLEncoder.encode(s, StandardCharsets.UTF_8);
    }

    private static int status(Pages pages, String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), pages.server.port())) {
            socket.setSoTimeout(30_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
            assertThat(answer).as(request).startsWith("HTTP/1.1 ");
            return Integer.parseInt(answer.substring(9, 12));
        } catch (SocketTimeoutException e) {
            throw new AssertionError("no answer within half a minute:\n" + request, e);
        }
    }

    private static long used() {
        System.gc();
        Runtime r = Runtime.getRuntime();
        return r.totalMemory() - r.freeMemory();
    }

    /** Sockets are among them; 0 where the system does not tell. */
    private static long openFiles() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof UnixOperatingSystemMXBean unix
                ? unix.getOpenFileDescriptorCount()
                : 0;
    }
}
