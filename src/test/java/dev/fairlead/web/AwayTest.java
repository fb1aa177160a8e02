package dev.fairlead.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.SampleCase;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The program is killed while somebody types, and started again: nothing typed is lost. */
@ExtendWith(WithBrowser.class)
class AwayTest {
    private static final List<String> FIELDS = List.of(
            "/arch/molarWidth", "/arch/molarDepth", "/arch/canineWidth", "/arch/canineDepth", "/space/perimeter");

    @TempDir
    Path dir;

    private Process program;

    /** Starts the whole program; gives the link that it prints. */
    private String start(int port) throws Exception {
        ProcessBuilder b = new ProcessBuilder(
                        KilledTest.java(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        KilledTest.classPath(),
                        "dev.fairlead.cli.Main",
                        "serve",
                        dir.resolve("cases").toString(),
                        "--port",
                        Integer.toString(port))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        b.environment().put("XDG_CONFIG_HOME", dir.resolve("config").toString());
        program = b.start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(program.getErrorStream(), StandardCharsets.UTF_8));
        for (String line; (line = said.readLine()) != null; ) {
            Matcher m = Pattern.compile("http://\\S+/open/\\S+").matcher(line);
            if (m.find()) {
                return m.group();
            }
        }
        throw new AssertionError("the program printed no link");
    }

    @Test
    void fiveFieldsEditedWhileTheServerIsKilledAreSentInOrderWhenItIsBack(Browsing browsing) throws Exception {
        Files.createDirectories(dir.resolve("cases"));
        Files.writeString(
                dir.resolve("cases/k.json"), CaseWriter.json(SampleCase.full().build()));
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        String link = start(port);
        try (BrowserContext c = browsing.desktop()) {
            Page page = c.newPage();
            page.navigate(link);
            page.navigate("http://127.0.0.1:" + port + "/cases/k.json/form/arch");
            type(page, 0);
            type(page, 1);
            program.destroyForcibly().waitFor();
            type(page, 2);
            type(page, 3);
            type(page, 4);
            assertThat(page.locator("#offline")).isVisible();
            assertThat(page.locator("#unsaved-count")).containsText("not saved yet");
            assertThat(page.locator(".field.unsaved #f_space_perimeter")).isVisible();
            assertThat(
                            (Boolean)
                                    page.evaluate(
                                            "() => { const e = new Event('beforeunload', { cancelable: true }); return !window.dispatchEvent(e); }"))
                    .as("leaving the page warns")
                    .isTrue();
            start(port);
            assertThat(page.locator("#offline")).isHidden();
            assertThat(page.locator(".field.unsaved")).hasCount(0);
            assertThat(page.locator("#saved-at")).containsText("saved ");
        } finally {
            program.destroyForcibly();
        }
        String there = Files.readString(dir.resolve("cases/k.json"));
        for (int i = 0; i < FIELDS.size(); i++) {
            assertThat(there).as(FIELDS.get(i)).contains(value(i));
        }
        String log = Files.readString(dir.resolve("cases/.history/k.json/log.ndjson"));
        int last = -1;
        for (int i = 2; i < FIELDS.size(); i++) {
            int at = log.indexOf(value(i));
            assertThat(at).as("in the order of typing: " + FIELDS.get(i)).isGreaterThan(last);
            last = at;
        }
    }

    private static String value(int i) {
        return List.of("44.31", "24.32", "26.33", "6.34", "62.35").get(i);
    }

    private static void type(Page page, int i) {
        String id = "#f" + FIELDS.get(i).replace('/', '_');
        page.locator(id).fill(value(i));
        page.locator(id).press("Tab");
    }
}
