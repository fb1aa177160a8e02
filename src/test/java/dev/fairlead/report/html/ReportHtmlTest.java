package dev.fairlead.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.Checked;
import dev.fairlead.findings.Finding;
import dev.fairlead.report.Demo;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The report as HTML, read back by the XML parser of the platform: the pages are written so that they are both. */
class ReportHtmlTest {
    private static final Path EXPECTED = Path.of("src/test/resources/expected/html");

    static List<Path> files() throws IOException {
        return Demo.files();
    }

    private static final Map<Path, String> PAGES = new ConcurrentHashMap<>();

    /** With what does not apply; made once a case. */
    private static String page(Path file) {
        return PAGES.computeIfAbsent(file, f -> ReportHtml.of(Demo.checked(f), true));
    }

    private static Document parsed(String html) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(html)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    private static List<Element> all(Document d, String name) {
        List<Element> found = new ArrayList<>();
        NodeList nodes = d.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    private static List<String> ids(Document d) {
        return all(d, "*").stream()
                .map(e -> e.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
    }

    /** After a change that is meant, run with {@code -Dfairlead.accept=true} and read the difference. */
    @ParameterizedTest
    @ValueSource(strings = {"avocet-03", "knot-08"})
    void tellsTheSameStory(String id) throws IOException {
        String html = ReportHtml.of(Demo.checked(id)).replaceFirst("(?s)<style>.*?</style>", "<style/>");
        Path expected = EXPECTED.resolve(id + ".html");
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(expected, html);
        }
        assertThat(html).isEqualTo(Files.readString(expected));
        assertThat(html.toLowerCase(java.util.Locale.ROOT)).doesNotContainPattern("\\bsafe\\b");
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyFindingStandsThereOnceWithItsOutcomeInWords(Path file) {
        Checked checked = Demo.checked(file);
        Document d = parsed(page(file));
        List<Element> blocks = all(d, "details").stream()
                .filter(e -> e.getAttribute("id").startsWith("f-"))
                .toList();
        assertThat(blocks).hasSameSizeAs(checked.report().findings().all());
        for (Finding f : checked.report().findings().all()) {
            List<Element> its = blocks.stream()
                    .filter(e -> e.getAttribute("id").equals("f-" + f.id()))
                    .toList();
            assertThat(its).as(f.id()).hasSize(1);
            String word = switch (f.outcome()) {
                case WARN -> f.weight() == dev.fairlead.findings.Weight.STOP ? "Stop" : "Caution";
                case NOT_ASSESSED -> "Not assessed";
                case PASS -> f.onTheLimit() ? "On the limit" : "Pass";
                case DOES_NOT_APPLY -> "Does not apply";
            };
            Element outcome = (Element) its.get(0).getElementsByTagName("span").item(0);
            assertThat(outcome.getTextContent().strip()).isEqualTo(word);
            assertThat(outcome.getElementsByTagName("use").getLength())
                    .as("a shape beside the word")
                    .isOne();
            assertThat(its.get(0).getTextContent()).contains(f.asks(), f.why());
            f.missing().forEach(m -> assertThat(its.get(0).getTextContent()).contains(m.words(), m.pointer()));
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void needsNothingElseAndEveryLinkLeadsSomewhere(Path file) {
        String html = page(file);
        Document d = parsed(html);
        List<String> ids = ids(d);
        assertThat(ids).doesNotHaveDuplicates();
        for (String attribute : List.of("href", "src", "action", "data", "poster", "srcset")) {
            all(d, "*").stream()
                    .filter(e -> e.hasAttribute(attribute))
                    .map(e -> e.getAttribute(attribute))
                    .forEach(link -> {
                        assertThat(link).startsWith("#");
                        assertThat(ids).contains(link.substring(1));
                    });
        }
        assertThat(all(d, "style").get(0).getTextContent()).doesNotContain("url(", "@import");
        assertThat(all(d, "script")).isEmpty();
        assertThat(all(d, "*").stream()
                        .flatMap(e -> java.util.stream.IntStream.range(
                                        0, e.getAttributes().getLength())
                                .mapToObj(i -> e.getAttributes().item(i).getNodeName()))
                        .filter(n -> n.startsWith("on")))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyDrawingHasTitleWordsAndATable(Path file) {
        Document d = parsed(page(file));
        List<Element> drawings = all(d, "svg").stream()
                .filter(e -> e.getAttribute("role").equals("img"))
                .toList();
        assertThat(drawings).isNotEmpty();
        List<String> ids = ids(d);
        for (Element svg : drawings) {
            String[] named = svg.getAttribute("aria-labelledby").split(" ");
            assertThat(named).hasSize(2);
            assertThat(ids).contains(named);
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                    .isNotBlank();
            assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                    .isNotBlank();
            Element plate = all(d, "div").stream()
                    .filter(e -> e.getAttribute("id").equals("picture-" + named[0].replace("-title", "")))
                    .findFirst()
                    .orElseThrow();
            assertThat(plate.getElementsByTagName("td").getLength()).isPositive();
            assertThat(svg.getAttribute("style")).isEmpty();
        }
    }

    @Test
    void whatACaseSaysStaysText() throws IOException {
        String evil = "</style><script>alert(1)</script> & \\\"'><img src=x onerror=alert(2)> seen by a periodontist";
        String text = Demo.text("lapwing-16");
        String hostile = text.replaceFirst(
                "reason: [^\\n]*(\\n {6,}[^\\n]*)*",
                java.util.regex.Matcher.quoteReplacement("reason: \"" + evil + "\""));
        assertThat(hostile).isNotEqualTo(text).contains("<script>");
        Checked checked = Demo.checked(hostile, "hostile.yaml");
        String html = ReportHtml.of(checked);
        assertThat(html).doesNotContain("<script", "<img").contains("&lt;script&gt;");
        Document d = parsed(html);
        assertThat(d.getDocumentElement().getTextContent()).contains(evil.replace("\\\"", "\""));
        assertThat(ReportPdf.pages(List.of(checked), List.of(), false)).doesNotContain("<script", "<img");
    }

    @Test
    void severalCasesShareOneFileWithoutSharingNames() throws IOException {
        List<Checked> two = List.of(Demo.checked("lapwing-16"), Demo.checked("knot-08"));
        UnreadCase refused = new UnreadCase("gull <13>.yaml", List.of("line 3: nothing of it can be read"));
        Document d = parsed(ReportHtml.of(two, List.of(refused), false));
        assertThat(ids(d)).doesNotHaveDuplicates();
        Element contents = all(d, "nav").get(0);
        assertThat(contents.getTextContent())
                .contains("lapwing-16", "knot-08", "gull <13>.yaml", "line 3: nothing of it can be read");
        assertThat(all(d, "article")).hasSize(2);
        assertThat(all(d, "h1")).hasSize(1);
    }

    @Test
    void sameCaseSameBytes() throws IOException {
        assertThat(ReportHtml.of(Demo.checked(Demo.text("avocet-03"), "a.yaml")))
                .isEqualTo(ReportHtml.of(Demo.checked(Demo.text("avocet-03"), "a.yaml")));
    }

    @Test
    void aMissingFactNamesTheCriteriaThatWaitForIt() throws IOException {
        Checked checked = Demo.checked("knot-08");
        Document d = parsed(ReportHtml.of(checked));
        Element open = all(d, "section").stream()
                .filter(e -> e.getAttribute("aria-labelledby").equals("open"))
                .findFirst()
                .orElseThrow();
        checked.report()
                .findings()
                .all()
                .forEach(f -> f.missing()
                        .forEach(m -> assertThat(open.getTextContent()).contains(m.words(), f.id())));
    }

    @Test
    void aWaivedWarningIsToldAsAWarningWithWhoAnswersForIt() throws IOException {
        Checked checked = Demo.checked("lapwing-16");
        Finding waived = checked.report().findings().all().stream()
                .filter(f -> f.waiver().isPresent())
                .findFirst()
                .orElseThrow();
        Document d = parsed(ReportHtml.of(checked));
        Element block = all(d, "details").stream()
                .filter(e -> e.getAttribute("id").equals("f-" + waived.id()))
                .findFirst()
                .orElseThrow();
        assertThat(block.getTextContent())
                .contains(
                        "waived",
                        waived.waiver().get().reason(),
                        waived.waiver().get().expires().toString());
    }

    @Test
    void workedNumbersStandOnlyWithFindingsThatRestOnThem() throws IOException {
        Checked checked = Demo.checked("lapwing-16");
        // keratinised gingiva of 1.5 ± 0.5 mm and a distance to A-Pog of 1.5 ± 0.5 mm: the same number, and nothing to
        // do with one another
        assertThat(checked.report().workingsOf(checked.report().findings().of("keratinised-width")))
                .isEmpty();
        assertThat(checked.report().workingsOf(checked.report().findings().of("incisor-to-a-pog-after")))
                .extracting(w -> w.id())
                .hasSize(1);
    }
}
