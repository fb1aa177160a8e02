package dev.fairlead.web.page;

import dev.fairlead.web.Site;
import dev.fairlead.web.edit.Opened;
import java.time.Duration;
import java.util.Optional;

/** Does once what pages will do often, so that the first person to type does not wait for the program to become quick. */
final class WarmUp {
    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final int ROUNDS = 30;

    private WarmUp() {}

    static void run(Site site, CaseList cases) {
        site.reports().checks().checker();
        cases.warmUp(LONGEST);
        Optional<Opened> some = site.desk().folder().names().stream().flatMap(n -> site.desk().open(n).stream()).filter(o -> o.reading().read()).findFirst();
        some.ifPresent(opened -> {
            site.reports().whole(opened);
            for (int i = 0; i < ROUNDS; i++) {
                site.views().text("web/findings.jte", java.util.Map.of("panel", site.reports().preview(opened, opened.reading())));
            }
        });
    }
}
