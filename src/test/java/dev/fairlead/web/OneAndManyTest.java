package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One is one and two are two, in every page of every demo case and in every report that is kept. */
class OneAndManyTest {
    private static final String NOT_THINGS =
            "is|was|has|does|stands|lies|this|its|as|less|passes|needs|ends|says|gains|reads|moves|across|mass|gauss";
    /** {@code 1 criteria}, {@code 1 more visits}; no number that has digits or a dash before it, no place of a list. */
    private static final Pattern ONE_OF_MANY =
            Pattern.compile("(?<![\\w.,/–-])(?<!visit |image |tooth |reading |waiver |stage |class |sheet |page )1 "
                    + "(?:(?:more|other|open|earlier|further|missing) )?(?!(?:" + NOT_THINGS
                    + ")\\b)(?:criteria|teeth|[a-z]{2,}s)\\b");

    private static final Pattern MANY_OF_ONE = Pattern.compile("(?<![\\w.,–-])(?:0|[2-9]|[1-9]\\d+) "
            + "(?:criterion|warning|visit|stop|caution|question|finding|case|fact|number|value|version|change|tooth|reading|day|week|month|year|minute|device|waiver)"
            + "\\b(?![- ](?:open|interval|of))");

    private static final List<String> PAGES = List.of(
            "findings",
            "numbers",
            "visits",
            "wire",
            "chair",
            "chair?part=bench",
            "report",
            "consult",
            "form/plan",
            "form/teeth",
            "pictures",
            "versions");

    @TempDir
    Path folder;

    @Test
    void everyPageOfEveryDemoCase() throws Exception {
        try (Stream<Path> all = Files.list(Path.of("cases"))) {
            for (Path p : (Iterable<Path>) all::iterator) {
                Files.copy(p, folder.resolve(p.getFileName().toString()));
            }
        }
        TreeSet<String> faults = new TreeSet<>();
        int seen = 0;
        try (Pages pages = Pages.over(folder);
                Stream<Path> all = Files.list(Path.of("cases"))) {
            for (Path p : (Iterable<Path>) all::iterator) {
                for (String page : PAGES) {
                    String path = "/cases/" + p.getFileName() + "/" + page;
                    read(path, words(pages.get(path).body()), faults);
                    seen++;
                }
            }
            for (String path : List.of("/cases?more=yes", "/book", "/help", "/devices")) {
                read(path, words(pages.get(path).body()), faults);
            }
        }
        assertThat(seen).isGreaterThan(300);
        assertThat(faults).isEmpty();
    }

    @Test
    void everyReportThatIsKept() throws IOException {
        TreeSet<String> faults = new TreeSet<>();
        int seen = 0;
        try (Stream<Path> all = Files.walk(Path.of("src/test/resources"))) {
            for (Path p :
                    (Iterable<Path>) all.filter(f -> f.toString().matches(".*/expected.*\\.(txt|html)"))::iterator) {
                String text = Files.readString(p);
                read(p.getFileName().toString(), p.toString().endsWith("html") ? words(text) : text, faults);
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(20);
        assertThat(faults).isEmpty();
    }

    @Test
    void theTestItselfSeesWhatItLooksFor() {
        TreeSet<String> faults = new TreeSet<>();
        read("a", "1 criteria wait; 1 more visits; 0 stop; 12 caution", faults);
        assertThat(faults).hasSize(4);
        faults.clear();
        read("b", "1 criterion waits; 31 visits; 0.1 days; visit 1 has; 1 is; 2 stops; image 1 lies; 4-1 days", faults);
        assertThat(faults).isEmpty();
    }

    private static void read(String where, String text, Set<String> faults) {
        for (Pattern p : List.of(ONE_OF_MANY, MANY_OF_ONE)) {
            for (Matcher m = p.matcher(text); m.find(); ) {
                faults.add(where + ": "
                        + text.substring(Math.max(0, m.start() - 30), Math.min(text.length(), m.end() + 30))
                                .replace('\n', ' '));
            }
        }
    }

    /** What a person reads of a page: text of one line together, what stands in another place apart. */
    private static String words(String html) {
        return html.replace("<span class=\"name\"", "<p") // set apart by the layout
                .replaceAll("(?s)<(style|script|title|head)\\b.*?</\\1>", "")
                .replaceAll(
                        "(?s)<(/?(h\\d|summary|t[dhr]|p|li|div|d[dt]|text|option|label|button|a|section|figure|svg)\\b|br)[^>]*>",
                        " | ")
                .replaceAll("<[^>]*>", "")
                .replaceAll("&[a-z]+;|&#\\d+;", " ")
                .replaceAll("\\s+", " ");
    }
}
