package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two programs on machines of different names over one folder: the second is turned away, the first goes on. */
class TwoMachinesTest {
    private static final Pattern LINK = Pattern.compile("http://127\\.0\\.0\\.1:[0-9]+/open/[-_A-Za-z0-9]+");

    @TempDir
    Path dir;

    /** A program that believes itself on a machine of that name: Linux gives a process a name of its own. */
    private Process serve(String machine) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                "unshare",
                "--user",
                "--map-root-user",
                "--uts",
                "sh",
                "-c",
                "hostname \"$0\" && exec \"$@\"",
                machine));
        command.addAll(List.of(
                KilledTest.java(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                KilledTest.classPath(),
                "dev.fairlead.cli.Main",
                "serve",
                dir.resolve("cases").toString(),
                "--port",
                "0"));
        ProcessBuilder program =
                new ProcessBuilder(command).redirectErrorStream(true).redirectInput(ProcessBuilder.Redirect.PIPE);
        program.environment()
                .put("XDG_CONFIG_HOME", dir.resolve("config-" + machine).toString());
        return program.start();
    }

    private static boolean namesCanBeGiven() throws Exception {
        try {
            Process p = new ProcessBuilder("unshare", "--user", "--map-root-user", "--uts", "hostname", "elsewhere")
                    .start();
            return p.waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void theSecondIsTurnedAwayAndTheFirstGoesOn() throws Exception {
        assumeTrue(namesCanBeGiven(), "a process can be given a host name of its own");
        Files.createDirectories(dir.resolve("cases"));
        Files.writeString(dir.resolve("cases/a.json"), "{\"fairlead\": 1, \"id\": \"a-1\", \"stage\": \"records\"}");
        Process first = serve("north-room");
        try (BufferedReader said = reader(first)) {
            String link = link(said);
            Process second = serve("south-room");
            try (BufferedReader answer = reader(second)) {
                assertThat(second.waitFor(60, TimeUnit.SECONDS)).isTrue();
                assertThat(answer.lines().toList().toString())
                        .contains("being served by another machine, north-room")
                        .contains("Stop the other server")
                        .doesNotContain("\tat ");
                assertThat(second.exitValue())
                        .as("wrong use, no fault of the program")
                        .isEqualTo(2);
            } finally {
                second.destroyForcibly();
            }
            HttpClient client = HttpClient.newHttpClient();
            HttpResponse<Void> let = client.send(
                    HttpRequest.newBuilder(URI.create(link)).build(), HttpResponse.BodyHandlers.discarding());
            assertThat(client.send(
                                    HttpRequest.newBuilder(URI.create(link).resolve("/cases/a.json/form/child"))
                                            .header("Cookie", Pages.cookie(let))
                                            .build(),
                                    HttpResponse.BodyHandlers.ofString())
                            .body())
                    .contains("a-1");
            assertThat(Files.readString(dir.resolve("cases/.history/served-by.txt")))
                    .startsWith("north-room");
        } finally {
            first.destroyForcibly();
        }
    }

    private static BufferedReader reader(Process p) {
        return new BufferedReader(new InputStreamReader(p.getInputStream(), StandardCharsets.UTF_8));
    }

    private static String link(BufferedReader said) throws IOException {
        for (String line; (line = said.readLine()) != null; ) {
            Matcher at = LINK.matcher(line);
            if (at.find()) {
                return at.group();
            }
        }
        throw new AssertionError("the server ended before it said where it is");
    }
}
