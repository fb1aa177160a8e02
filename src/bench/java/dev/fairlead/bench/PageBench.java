package dev.fairlead.bench;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import dev.fairlead.check.Checker;
import dev.fairlead.rules.verdict.Rulebase;
import dev.fairlead.web.ServerSettings;
import dev.fairlead.web.WebServer;
import dev.fairlead.web.page.Checks;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How quick the local page is: from the start of the program to the first page, and in a browser from a keystroke, or
 * from leaving a field, to findings that stand on the page.
 *
 * <p>Run it with the folder of cases: {@code mvn -Pbench test-compile exec:exec@page}.
 */
public final class PageBench {
    private static final int STARTS = 7;
    private static final int EDITS = 120;
    /** A case with visits, where all criteria and the beam model are at work. */
    private static final String CASE = "stilt-10-gauge-overrides.yaml";

    private static final String WATCH =
            "() => { window.took = []; let from = null; const start = () => { from = performance.now(); };"
                    + " document.addEventListener('input', start, true); document.addEventListener('change', start, true);"
                    + " new MutationObserver(() => { if (from !== null) { window.took.push(performance.now() - from); from = null; } })"
                    + ".observe(document.getElementById('findings'), { childList: true, subtree: true }); }";

    private PageBench() {}

    public static void main(String[] args) throws Exception {
        Path from = Path.of(args.length > 0 ? args[0] : "cases");
        Path folder = Files.createTempDirectory("page-bench");
        try (var files = Files.list(from)) {
            for (Path p : files.toList()) {
                Files.copy(p, folder.resolve(p.getFileName()));
            }
        }
        tell("first page after the start of the program", starts(folder));
        try (WebServer server = WebServer.start(new ServerSettings(
                folder,
                0,
                Checks.by(new Checker(Rulebase.load(null))),
                Optional.empty(),
                () -> LocalDate.of(2026, 3, 1),
                folder.resolveSibling(folder.getFileName() + "-secrets"),
                Optional.empty()))) {
            browser(server);
        }
    }

    private static List<Double> starts(Path folder) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newBuilder()
                .cookieHandler(new java.net.CookieManager())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        List<Double> took = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
            long start = System.nanoTime();
            Process p = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:+UseSerialGC",
                            "-XX:TieredStopAtLevel=1",
                            "-cp",
                            System.getProperty("java.class.path"),
                            "dev.fairlead.cli.Main",
                            "serve",
                            folder.toString(),
                            "--port",
                            "0")
                    .start();
            try (BufferedReader said =
                    new BufferedReader(new InputStreamReader(p.getErrorStream(), StandardCharsets.UTF_8))) {
                String line = said.readLine();
                URI address = URI.create(line.replaceAll(".*(http://\\S+).*", "$1"));
                if (client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString())
                                .statusCode()
                        != 200) {
                    throw new IllegalStateException("no page");
                }
                took.add((System.nanoTime() - start) / 1e6);
            } finally {
                p.destroyForcibly().waitFor();
            }
        }
        return took;
    }

    private static void browser(WebServer server) {
        try (Playwright playwright = Playwright.create(
                        new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
                Browser browser = playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(Path.of("/usr/bin/chromium"))
                                .setArgs(List.of("--disable-gpu")))) {
            Page page = browser.newPage();
            edits(page, server, "mouth", "#f_bite_overjet", 3, "overjet");
            edits(page, server, "arch", "#f_space_perimeter", 61, "perimeter");
            edits(
                    page,
                    server,
                    "visits",
                    "#f_visits_1_right_standOff",
                    0.6,
                    "stand-off at a visit, for which the beam model is solved anew");
        }
    }

    private static void edits(Page page, WebServer server, String section, String field, double first, String what) {
        page.navigate(server.link().toString());
        page.navigate(
                server.address().resolve("/cases/" + CASE + "/form/" + section).toString());
        page.evaluate(WATCH);
        Locator box = page.locator(field);
        List<Double> typed = new ArrayList<>();
        List<Double> left = new ArrayList<>();
        for (int i = 0; i < EDITS; i++) {
            box.fill(String.format(Locale.ROOT, "%.3f", first + 0.005 * (i + 1)));
            typed.add(next(page, 2 * i));
            box.press("Tab");
            left.add(next(page, 2 * i + 1));
        }
        tell(what + ": findings after a keystroke", typed);
        tell(what + ": findings and file after leaving the field", left);
    }

    private static double next(Page page, int index) {
        page.waitForFunction("n => window.took.length > n", index);
        return ((Number) page.evaluate("n => window.took[n]", index)).doubleValue();
    }

    private static void tell(String what, List<Double> ms) {
        List<Double> sorted = ms.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%-95s p50 %6.0f ms   p95 %6.0f ms   most %6.0f ms%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get((int) (sorted.size() * 0.95)),
                sorted.get(sorted.size() - 1));
    }
}
