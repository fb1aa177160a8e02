package dev.fairlead.web.page;

import dev.fairlead.web.Site;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Does once what pages will do often, so that the first person to type does not wait for the program to become quick.
 */
final class WarmUp implements Runnable {
    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final int ROUNDS = 30;
    /** So long the machine is left to whoever opens the list as soon as the server is there. */
    private static final long HEAD_START_MILLIS = 500;

    private final Site site;
    private final CaseList cases;
    private final CountDownLatch listed = new CountDownLatch(1);

    WarmUp(Site site, CaseList cases) {
        this.site = site;
        this.cases = cases;
    }

    void install(RoutesConfig routes) {
        routes.after("/cases", ctx -> listed.countDown());
    }

    @Override
    public void run() {
        cases.warmUp(this::awaitList, LONGEST);
        Optional<Opened> some = site.desk().folder().names().stream()
                .flatMap(n -> site.desk().open(n).stream())
                .filter(o -> o.reading().read())
                .findFirst();
        some.ifPresent(opened -> {
            site.reports().whole(opened);
            for (int i = 0; i < ROUNDS; i++) {
                site.views()
                        .text("web/findings.jte", Map.of("panel", site.reports().preview(opened, opened.reading())));
            }
        });
    }

    private void awaitList() {
        site.reports().checks().checker();
        try {
            listed.await(HEAD_START_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
