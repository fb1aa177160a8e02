package dev.fairlead.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Phrases over which readers stumbled stand in no text of the program, no template and no report. */
class WordingTest {
    private static final Pattern LITERAL = Pattern.compile("\"(?:[^\"\\\\\n]|\\\\.)*\"");

    private static final List<String> TEXTS = texts();

    private static List<String> texts() {
        try (Stream<Path> all = Stream.of("src/main/java", "src/main/jte", "rules", "src/test/resources/expected")
                .flatMap(WordingTest::files)) {
            return Stream.concat(all, Stream.of(Path.of("README.md")))
                    .map(WordingTest::text)
                    .toList();
        }
    }

    @SuppressWarnings("StreamResourceLeak") // closed by the stream that it becomes part of
    private static Stream<Path> files(String folder) {
        try {
            return Files.walk(Path.of(folder))
                    .filter(p -> p.toString().matches(".*\\.(java|jte|json|txt|html)"))
                    .filter(p -> !p.endsWith("base-facts.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a reader may see of a file, in one line behind its name: of Java the texts in quotes. */
    private static String text(Path file) {
        try {
            String all = Files.readString(file);
            if (file.toString().endsWith(".java")) {
                StringBuilder out = new StringBuilder();
                Matcher m = LITERAL.matcher(all);
                while (m.find()) {
                    out.append(m.group(), 1, m.group().length() - 1).append(' ');
                }
                all = out.toString();
            }
            return file + ": " + all.replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void thereIsMuchToRead() {
        assertThat(TEXTS).hasSizeGreaterThan(500).anyMatch(t -> t.contains("licensed clinician"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "expected to be otherwise",
                "REPEAT FIRST",
                "makes that fewer",
                "chance of another outcome",
                "weeks since does not apply",
                "even the (high|low) end",
                "a model's band, unless",
                "From cementing to",
                "overjet of only",
                "(?<![\\w.])[-−]\\d+(\\.\\d+)?( ± [\\d.]+)? mm to spare",
                "(\\d+( ± \\d+)? gf) to \\1",
                "(?<![\\d.])0\\.0( ± [\\d.]+)? mm (over|short of)",
                "negative is|is negative\\)",
                "over its planned height",
                "Bends taken back",
                "bears nickel",
                "pain has lasted",
                "is the most: the wire",
                "\\bon course\\b",
                "are looked at every",
                "\\bis no plan\\b",
                "\\brests on (the image|image)",
                "findings end otherwise|cases end otherwise",
                "no waiver answers for",
                "makes no pass of",
                "\\bMend\\b",
                "\\bmend (it|this|those)",
                "for want of",
                "[Nn]earest to another outcome",
                "\\bhead film",
                "no permission",
                "moment that tips"
            })
    void isNotWritten(String phrase) {
        Pattern pattern = Pattern.compile(phrase);
        assertThat(TEXTS.stream().filter(t -> pattern.matcher(t).find()).map(t -> {
                    Matcher m = pattern.matcher(t);
                    m.find();
                    return t.substring(0, t.indexOf(':')) + ": …"
                            + t.substring(Math.max(0, m.start() - 30), Math.min(t.length(), m.end() + 30));
                }))
                .isEmpty();
    }
}
