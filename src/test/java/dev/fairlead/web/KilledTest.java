package dev.fairlead.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.web.store.CaseFolder;
import dev.fairlead.web.store.Stored;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URLClassLoader;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program is killed (SIGKILL, 9: POSIX.1-2017, signal.h) while it saves. What it had confirmed is there, whole,
 * with what was before it.
 */
class KilledTest {
    private static final int KILLED = 128 + 9;
    private static final int KILLS = 25;
    private static final int LANES = 8;
    /** Earlier versions that a case keeps beside its first. */
    private static final int KEPT = 100;

    private static final Pattern NUMBERED = Pattern.compile("([0-9]{7})-[0-9a-f]+\\.txt");

    @TempDir
    Path dir;

    /** What stood at the moment of a kill, over all lanes and kills. */
    private int cutOff;

    private int confirmed;

    /**
     * Two hundred saves, each of a case of its own, eight under way at each of twenty-five kills. The moment is drawn
     * anew for each kill (seeded), once all eight are in the midst of saving.
     */
    @Test
    void killedInTwoHundredSavesLosesNothing() throws Exception {
        List<Path> lanes =
                IntStream.range(0, LANES).mapToObj(i -> dir.resolve("lane" + i)).toList();
        for (Path lane : lanes) {
            CaseFolder.open(lane);
            Files.writeString(lane.resolve("k.json"), SavesUntilKilled.text(0));
        }
        Random moment = new Random(20);
        for (int kill = 0; kill < KILLS; kill++) {
            int[] last = saveUntilKilled(lanes, 200_000L + moment.nextInt(30_000_000));
            for (int lane = 0; lane < LANES; lane++) {
                look(lanes.get(lane), last[lane]);
            }
        }
        assertThat(confirmed).as("saves that were confirmed before a kill").isGreaterThanOrEqualTo(KILLS * LANES);
        assertThat(cutOff).as("saves that a kill left unfinished, of 200").isGreaterThan(KILLS);
        for (Path lane : lanes) {
            // and work goes on: the locks of the dead programs do not stand in the way
            CaseFolder folder = CaseFolder.open(lane);
            Stored now = folder.read("k.json").orElseThrow();
            int there = SavesUntilKilled.number(now.text());
            Stored undone = folder.undo("k.json", now.version()).orElseThrow();
            assertThat(SavesUntilKilled.number(undone.text())).isEqualTo(there - 1);
            assertThat(folder.redo("k.json", undone.version()).orElseThrow().text())
                    .isEqualTo(now.text());
        }
    }

    /**
     * The last save of each lane that was confirmed by a program that is killed so many nanoseconds after all lanes
     * have begun.
     */
    private int[] saveUntilKilled(List<Path> lanes, long nanos) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                java(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx48m",
                "-XX:-UsePerfData",
                "-cp",
                where(SavesUntilKilled.class) + File.pathSeparator + where(CaseFolder.class),
                SavesUntilKilled.class.getName()));
        lanes.forEach(l -> command.add(l.toString()));
        Process p = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        CountDownLatch begun = new CountDownLatch(lanes.size());
        Thread killer = new Thread(() -> {
            try {
                begun.await();
                LockSupport.parkNanos(nanos);
                p.toHandle().destroyForcibly();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        killer.start();
        int[] last = new int[lanes.size()];
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(p.getInputStream(), StandardCharsets.UTF_8))) {
            // a line that the kill cut off is no confirmation
            for (String line; (line = out.readLine()) != null; ) {
                Matcher m = Pattern.compile("([0-9]+) ([0-9]+)").matcher(line);
                if (m.matches() && Integer.parseInt(m.group(2)) > last[Integer.parseInt(m.group(1))]) {
                    int lane = Integer.parseInt(m.group(1));
                    if (last[lane] == 0) {
                        begun.countDown();
                    }
                    last[lane] = Integer.parseInt(m.group(2));
                    confirmed++;
                }
            }
        }
        killer.join();
        assertThat(p.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(p.exitValue()).as("killed, not ended").isEqualTo(KILLED);
        return last;
    }

    /** The case and all its earlier versions are whole, without a gap, and nothing that was confirmed is missing. */
    private void look(Path lane, int last) throws IOException {
        String text = Files.readString(lane.resolve("k.json"));
        int there = SavesUntilKilled.number(text);
        assertThat(text).as("whole").isEqualTo(SavesUntilKilled.text(there));
        assertThat(there).as("confirmed saves are there").isBetween(last, last + 1);
        List<Integer> earlier = new ArrayList<>();
        try (Stream<Path> files = Files.list(lane.resolve(".history/k.json"))) {
            for (Path file : files.filter(
                            f -> NUMBERED.matcher(f.getFileName().toString()).matches())
                    .sorted()
                    .toList()) {
                String version = Files.readString(file);
                assertThat(version).as("whole").isEqualTo(SavesUntilKilled.text(SavesUntilKilled.number(version)));
                earlier.add(SavesUntilKilled.number(version));
            }
        }
        assertThat(earlier).as("the first is never lost").startsWith(0);
        // a kill between keeping the old version and putting the new one in its place leaves the present one among the
        // earlier, too
        boolean between = earlier.get(earlier.size() - 1) == there;
        List<Integer> distinct = earlier.stream().distinct().toList();
        int newest = between ? there : there - 1;
        int from = Math.max(1, newest - (distinct.size() - 2));
        assertThat(distinct.subList(1, distinct.size()))
                .as("no version in between is missing")
                .isEqualTo(IntStream.rangeClosed(from, newest).boxed().toList());
        assertThat(earlier).hasSizeLessThanOrEqualTo(KEPT + 2);
        boolean unfinished = between || there > last;
        try (Stream<Path> parts = Stream.of(lane.resolve(".history"), lane.resolve(".history/k.json"))
                .flatMap(KilledTest::parts)) {
            for (Path part : parts.toList()) {
                unfinished = true;
                Files.delete(part);
            }
        }
        cutOff += unfinished ? 1 : 0;
    }

    private static Stream<Path> parts(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(".part")).toList().stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static final Pattern VERSION = Pattern.compile("name=\"version\" id=\"version\" value=\"([0-9a-f]+)\"");

    /** The whole program with its rules and pages, killed while a window saves field by field. */
    @Test
    void theServerItselfLosesNothingWhenItIsKilled() throws Exception {
        Files.writeString(
                dir.resolve("k.json"), CaseWriter.json(SampleCase.full().build()));
        ProcessBuilder program = new ProcessBuilder(
                        java(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        classPath(),
                        "dev.fairlead.cli.Main",
                        "serve",
                        dir.toString(),
                        "--port",
                        "0")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        program.environment().put("XDG_CONFIG_HOME", dir.resolve("config").toString());
        Process p = program.start();
        int last = 0;
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(p.getErrorStream(), StandardCharsets.UTF_8))) {
            Matcher at = Pattern.compile("(http://127\\.0\\.0\\.1:[0-9]+)/open/[-_A-Za-z0-9]+")
                    .matcher("");
            for (String line; !at.find() && (line = said.readLine()) != null; ) {
                at.reset(line);
            }
            URI form = URI.create(at.group(1) + "/cases/k.json/form/arch");
            HttpClient client = HttpClient.newHttpClient();
            String cookie = Pages.cookie(client.send(
                    HttpRequest.newBuilder(URI.create(at.group())).build(), HttpResponse.BodyHandlers.discarding()));
            Matcher version = VERSION.matcher(client.send(
                            HttpRequest.newBuilder(form)
                                    .header("Cookie", cookie)
                                    .build(),
                            HttpResponse.BodyHandlers.ofString())
                    .body());
            assertThat(version.find()).isTrue();
            Thread killer = new Thread(() -> p.toHandle().destroyForcibly());
            String seen = version.group(1);
            Random moment = new Random(7);
            try {
                for (int i = 1; i < 10_000; i++) {
                    String body = "version=" + seen + "&/arch/molarWidth=" + (40 + i % 97 / 10.0);
                    HttpResponse<String> r = client.send(
                            HttpRequest.newBuilder(URI.create(form + "?changed=/arch/molarWidth"))
                                    .header("Content-Type", "application/x-www-form-urlencoded")
                                    .header("HX-Request", "true")
                                    .header("Cookie", cookie)
                                    .POST(HttpRequest.BodyPublishers.ofString(body))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
                    Matcher next = VERSION.matcher(r.body());
                    assertThat(r.statusCode() == 200 && next.find()).isTrue();
                    seen = next.group(1);
                    last = i;
                    if (i == 20) {
                        new Thread(() -> {
                                    LockSupport.parkNanos(moment.nextInt(200_000_000));
                                    killer.start();
                                })
                                .start();
                    }
                }
            } catch (IOException e) {
                // the server is gone in the middle of an answer
                assertThat(p.waitFor(30, TimeUnit.SECONDS)).isTrue();
            }
        } finally {
            p.destroyForcibly();
        }
        assertThat(p.exitValue()).isEqualTo(KILLED);
        assertThat(last).isGreaterThanOrEqualTo(20);
        double there = CaseReader.read(dir.resolve("k.json"))
                .value()
                .orElseThrow()
                .arch()
                .molarWidth()
                .value();
        assertThat(there)
                .as("the last confirmed save, or the one that was cut off")
                .isIn(40 + last % 97 / 10.0, 40 + (last + 1) % 97 / 10.0);
        CaseFolder folder = CaseFolder.open(dir);
        assertThat(folder.steps("k.json")[0]).as("earlier versions").isBetween(Math.min(KEPT, last), KEPT + 2);
        Stored undone = folder.undo(
                        "k.json", folder.read("k.json").orElseThrow().version())
                .orElseThrow();
        assertThat(CaseReader.read(undone.text().getBytes(StandardCharsets.UTF_8), "k.json", CaseFormat.JSON)
                        .read())
                .isTrue();
    }

    /** A runner may load tests by a loader of its own. */
    static String classPath() {
        return KilledTest.class.getClassLoader() instanceof URLClassLoader own
                ? Arrays.stream(own.getURLs())
                        .map(u -> Path.of(URI.create(u.toString())).toString())
                        .collect(Collectors.joining(File.pathSeparator))
                : System.getProperty("java.class.path");
    }

    static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static String where(Class<?> type) {
        return Path.of(URI.create(
                        type.getProtectionDomain().getCodeSource().getLocation().toString()))
                .toString();
    }
}
