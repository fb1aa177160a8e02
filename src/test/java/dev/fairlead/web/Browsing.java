package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.FutureTask;

/** A real browser that may talk to this machine only, and whose every complaint is kept. */
final class Browsing implements AutoCloseable {
    static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    /** Generous, since the machine may be busy; no test waits this long when all is well. */
    static final double PATIENCE_MS = 90_000;

    /** What is looked at by one browser; what it complains of is added to the list. */
    interface Look<T> {
        void at(Browsing browsing, T what, List<String> faults) throws Exception;
    }

    private Browsing second;
    private final Playwright playwright;
    private final Browser browser;
    private final List<String> complaints = Collections.synchronizedList(new ArrayList<>());
    private final List<String> abroad = Collections.synchronizedList(new ArrayList<>());

    Browsing() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(CHROMIUM)
                        .setHeadless(true)
                        .setArgs(List.of(
                                "--disable-gpu",
                                // scans are drawn by software, as on a machine without a graphics card
                                "--use-angle=swiftshader",
                                "--enable-unsafe-swiftshader",
                                "--disable-dev-shm-usage",
                                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1")));
    }

    /** Without smooth scrolling: every step of it is a picture to draw, and with the keyboard each key scrolls. */
    BrowserContext context(Browser.NewContextOptions options) {
        BrowserContext c = browser.newContext(options.setReducedMotion(ReducedMotion.REDUCE));
        c.setDefaultTimeout(PATIENCE_MS);
        c.setDefaultNavigationTimeout(PATIENCE_MS);
        c.onRequest(r -> {
            if (!r.url().matches("https?://127\\.0\\.0\\.1:.*")) {
                abroad.add(r.url());
            }
        });
        return c;
    }

    BrowserContext desktop() {
        return context(
                new Browser.NewContextOptions().setViewportSize(1280, 900).setLocale("en-US"));
    }

    Page open(BrowserContext context, Pages pages, String path) {
        Page page = context.newPage();
        page.onConsoleMessage(m -> {
            // a refused request that a test provokes shows as a failed resource; it is not a fault of the page
            if ((m.type().equals("error") || m.type().equals("warning"))
                    && !m.text().contains("status of 4")
                    // the software that draws in place of a graphics card tells how it fares
                    && !m.text().contains("GL Driver Message")) {
                complaints.add(m.type() + ": " + m.text());
            }
        });
        page.onPageError(complaints::add);
        if (context.cookies().isEmpty()) {
            page.navigate(pages.server.link().toString());
        }
        page.navigate(pages.at(path).toString());
        return page;
    }

    /** Waits until nothing is on its way between page and server. */
    static void settle(Page page) {
        page.waitForFunction("() => !document.querySelector('.htmx-request')");
    }

    void assertQuiet() {
        List<String> foreign = List.copyOf(abroad);
        List<String> said = List.copyOf(complaints);
        abroad.clear();
        complaints.clear();
        assertThat(foreign).as("requests to other machines").isEmpty();
        assertThat(said).as("complaints of the browser").isEmpty();
    }

    /**
     * Looks at many things by two browsers beside each other, this one and another that is kept for the next time;
     * gives all complaints.
     */
    <T> List<String> lookAt(List<T> all, Look<T> look) throws Exception {
        List<String> faults = Collections.synchronizedList(new ArrayList<>());
        Queue<T> queue = new ConcurrentLinkedQueue<>(all);
        FutureTask<Void> beside = new FutureTask<>(() -> {
            second = second == null ? new Browsing() : second;
            second.drain(queue, look, faults);
            return null;
        });
        Thread thread = new Thread(beside, "second browser");
        thread.start();
        drain(queue, look, faults);
        beside.get();
        return List.copyOf(faults);
    }

    private <T> void drain(Queue<T> queue, Look<T> look, List<String> faults) throws Exception {
        for (T what; (what = queue.poll()) != null; ) {
            look.at(this, what, faults);
        }
        assertQuiet();
    }

    static String axe() throws IOException {
        try (var in = Browsing.class.getResourceAsStream("/web/axe.min.js")) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }

    @Override
    public void close() {
        if (second != null) {
            second.close();
        }
        browser.close();
        playwright.close();
    }
}
