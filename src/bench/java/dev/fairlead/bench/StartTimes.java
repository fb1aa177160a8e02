package dev.fairlead.bench;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whole processes from start to end, one after another in turn so that a busy machine burdens all alike:
 * {@code StartTimes CASE [ROUNDS]} in the project's folder after packaging. Prints the median and the least of wall
 * time in milliseconds.
 */
public final class StartTimes {
    private static final int ROUNDS = 11;
    private static final String JAR = "target/fairlead.jar";
    private static final String FOLDER = "cases";

    private StartTimes() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        String subject = args[0];
        Map<String, List<String>> runs = new LinkedHashMap<>();
        runs.put("check, java -jar", List.of("java", "-jar", JAR, "check", subject));
        runs.put(
                "check, java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar",
                List.of("java", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-jar", JAR, "check", subject));
        runs.put("check, target/fairlead", List.of("target/fairlead", "check", subject));
        runs.put("--version, java -jar", List.of("java", "-jar", JAR, "--version"));
        runs.put("--version, target/fairlead", List.of("target/fairlead", "--version"));
        runs.put("first page of serve, java -jar", List.of("java", "-jar", JAR, "serve", "--port", "0", FOLDER));
        runs.put("first page of serve, target/fairlead", List.of("target/fairlead", "serve", "--port", "0", FOLDER));
        for (List<String> run : runs.values()) {
            time(run);
        }
        Map<String, List<Long>> taken = new LinkedHashMap<>();
        for (int i = 0; i < (args.length > 1 ? Integer.parseInt(args[1]) : ROUNDS); i++) {
            for (Map.Entry<String, List<String>> run : runs.entrySet()) {
                taken.computeIfAbsent(run.getKey(), k -> new ArrayList<>()).add(time(run.getValue()));
            }
        }
        taken.forEach((name, times) -> {
            long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
            System.out.printf(
                    "%-60s median %5d ms, least %5d ms %s%n",
                    name, sorted[sorted.length / 2], sorted[0], Arrays.toString(sorted));
        });
    }

    private static long time(List<String> command) throws IOException, InterruptedException {
        long start = System.nanoTime();
        if (command.contains("serve")) {
            return firstPage(command, start);
        }
        new ProcessBuilder(command)
                .redirectOutput(new File("/dev/null"))
                .redirectError(new File("/dev/null"))
                .start()
                .waitFor();
        return (System.nanoTime() - start) / 1_000_000;
    }

    /** From the start of the process until the list of cases has been read whole. */
    private static long firstPage(List<String> command, long start) throws IOException, InterruptedException {
        Process server = new ProcessBuilder(command)
                .redirectOutput(new File("/dev/null"))
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(server.getErrorStream(), StandardCharsets.UTF_8))) {
            String line = said.readLine();
            Matcher address = Pattern.compile("http://[0-9.:]+/").matcher(line == null ? "" : line);
            if (!address.find()) {
                throw new IOException("the server said: " + line);
            }
            try (InputStream page =
                    URI.create(address.group() + "cases").toURL().openStream()) {
                page.readAllBytes();
            }
            return (System.nanoTime() - start) / 1_000_000;
        } finally {
            server.destroy();
            server.waitFor();
        }
    }
}
