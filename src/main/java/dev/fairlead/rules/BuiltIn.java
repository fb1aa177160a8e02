package dev.fairlead.rules;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;

/**
 * The rulebase that was compiled in the build and lies on the class path: an index, and all texts in one piece.
 *
 * @param hash of the texts, as {@link RuleFiles#hash()} gives it
 * @param crc of the texts in one piece: tells an index that belongs to other texts
 * @param files length of each text by path, in the order in which they follow one another
 * @param rules path of each DRL file to what was made of it
 */
public record BuiltIn(String hash, long crc, Map<String, Integer> files, Map<String, Entry> rules) {
    public static final String FOLDER = "dev/fairlead/rulebase/";
    public static final String INDEX = FOLDER + "index.json";
    public static final String TEXTS = FOLDER + "texts.txt";
    /** What a start reads in place of both. */
    public static final String PREPARED = FOLDER + "prepared.bin";

    /**
     * What was made of one DRL file.
     *
     * @param rules number of rules in it
     * @param plain the rules as data; empty when only classes can hold them
     * @param model name of the class that holds them; empty when there is none
     */
    public record Entry(int rules, List<PlainRule> plain, String model) {}

    /** The index of these files; {@link #inOnePiece} goes beside it. */
    public static BuiltIn of(RuleFiles files, Map<String, Entry> rules) {
        Map<String, Integer> lengths = new LinkedHashMap<>();
        files.all().forEach((path, bytes) -> lengths.put(path, bytes.length));
        return new BuiltIn(files.hash(), crc(inOnePiece(files)), lengths, rules);
    }

    /** All texts, one after another. */
    public static byte[] inOnePiece(RuleFiles files) {
        java.io.ByteArrayOutputStream all = new java.io.ByteArrayOutputStream();
        files.all().values().forEach(all::writeBytes);
        return all.toByteArray();
    }

    private static long crc(byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return crc.getValue();
    }

    /** The index on the class path, or null when the build left none. */
    static BuiltIn onClassPath() {
        byte[] index = resource(INDEX);
        if (index == null) {
            return null;
        }
        List<String> problems = new ArrayList<>();
        BuiltIn read = StrictJson.read(
                INDEX, new String(index, StandardCharsets.UTF_8), new TypeReference<BuiltIn>() {}, problems);
        if (read == null) {
            throw new RulebaseException(problems);
        }
        return read;
    }

    /** The texts as they lie on the class path; they must be what was compiled. */
    RuleFiles texts() {
        byte[] all = resource(TEXTS);
        int expected = files.values().stream().mapToInt(Integer::intValue).sum();
        if (all == null || all.length != expected || crc(all) != crc) {
            throw new RulebaseException(List.of("the built-in texts are "
                    + (all == null ? "not there" : "not what was compiled") + ": build again"));
        }
        Map<String, byte[]> texts = new LinkedHashMap<>();
        int at = 0;
        for (Map.Entry<String, Integer> file : files.entrySet()) {
            texts.put(file.getKey(), Arrays.copyOfRange(all, at, at + file.getValue()));
            at += file.getValue();
        }
        return new RuleFiles(texts);
    }

    static byte[] resource(String name) {
        try (InputStream in = BuiltIn.class.getClassLoader().getResourceAsStream(name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
