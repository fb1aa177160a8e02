package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which cases the list shows, and in which order: one demo case for each heaviest outcome, and a torn file. */
class ListOrderTest {
    private static final List<String> CASES =
            List.of("snipe-14-ends-left-long", "curlew-09-fold-digs-in", "knot-08-half-missing", "heron-07-clean");
    private static final Pattern NAME = Pattern.compile("class=\"case-link\"[^>]*>([^<]+)<");

    @TempDir
    Path folder;

    @BeforeEach
    void cases() throws IOException {
        for (String name : CASES) {
            Files.copy(Path.of("cases", name + ".yaml"), folder.resolve(name.replaceAll("-[a-z].*", "") + ".yaml"));
        }
        Files.writeString(folder.resolve("torn.json"), "{\"fairlead\": 1, ");
        Instant time = Instant.parse("2026-03-01T10:00:00Z");
        for (String earlier :
                List.of("heron-07.yaml", "torn.json", "snipe-14.yaml", "curlew-09.yaml", "knot-08.yaml")) {
            Files.setLastModifiedTime(folder.resolve(earlier), FileTime.from(time));
            time = time.minusSeconds(60);
        }
    }

    private static String part(Pages pages, String query) throws Exception {
        for (int i = 0; i < 100; i++) {
            String list = pages.send(HttpRequest.newBuilder(pages.at("/cases?more=yes&" + query))
                            .header("HX-Request", "true")
                            .build())
                    .body();
            if (!list.contains("hx-trigger=\"load\"")) {
                return list;
            }
        }
        throw new AssertionError("the list is never whole");
    }

    private static List<String> shown(Pages pages, String query) throws Exception {
        List<String> names = new ArrayList<>();
        for (Matcher m = NAME.matcher(part(pages, query)); m.find(); ) {
            names.add(m.group(1));
        }
        return names;
    }

    @Test
    void eachFilterShowsTheCasesThatItNames() throws Exception {
        try (Pages pages = Pages.over(folder)) {
            assertThat(shown(pages, "outcome=stop")).containsExactly("snipe-14");
            assertThat(shown(pages, "outcome=caution")).containsExactly("curlew-09");
            assertThat(shown(pages, "outcome=not-assessed")).containsExactly("knot-08");
            assertThat(shown(pages, "outcome=pass")).containsExactly("heron-07");
            assertThat(shown(pages, "resident=r09")).containsExactly("curlew-09");
            assertThat(shown(pages, "stage=insertion")).containsExactly("snipe-14");
            assertThat(shown(pages, "stage=insertion&outcome=pass")).isEmpty();
            assertThat(shown(pages, "q=r14")).containsExactly("snipe-14");
        }
    }

    @Test
    void eachOrderIsWhatItSays() throws Exception {
        try (Pages pages = Pages.over(folder)) {
            assertThat(shown(pages, "sort=heaviest"))
                    .containsExactly("torn.json", "snipe-14", "curlew-09", "knot-08", "heron-07");
            assertThat(shown(pages, "sort=changed"))
                    .containsExactly("heron-07", "torn.json", "snipe-14", "curlew-09", "knot-08");
            assertThat(shown(pages, "sort=title"))
                    .containsExactly("curlew-09", "heron-07", "knot-08", "snipe-14", "torn.json");
            assertThat(shown(pages, "sort=due"))
                    .as("the visit before the recall, then what waits for nothing")
                    .containsExactly("snipe-14", "heron-07", "curlew-09", "knot-08", "torn.json");
        }
    }

    /** The page is there before its lines are: whoever waits for them is told then which residents there are. */
    @Test
    void residentsCanBeChosenOnceTheLinesAreThere() throws Exception {
        try (Pages pages = Pages.over(folder)) {
            assertThat(part(pages, "sort=title"))
                    .contains("id=\"residents\" hx-swap-oob", "<option value=\"r09\"", "<option value=\"r14\"");
            assertThat(pages.get("/cases").body()).contains("<span id=\"residents\"><select name=\"resident\"");
        }
    }
}
