package dev.fairlead.rules;

import com.fasterxml.jackson.core.type.TypeReference;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rulebase that was compiled in the build and lies on the class path.
 *
 * @param files path to SHA-256 of each text
 * @param rules path of each DRL file to what was made of it
 */
public record BuiltIn(Map<String, String> files, Map<String, Entry> rules) {
    public static final String FOLDER = "dev/fairlead/rulebase/";
    public static final String INDEX = FOLDER + "index.json";

    /**
     * What was made of one DRL file.
     *
     * @param rules number of rules in it
     * @param plain the rules as data; empty when only classes can hold them
     * @param model name of the class that holds them; empty when there is none
     */
    public record Entry(int rules, List<PlainRule> plain, String model) {}

    /** The index on the class path, or null when the build left none. */
    static BuiltIn onClassPath() {
        byte[] index = resource(INDEX);
        if (index == null) {
            return null;
        }
        List<String> problems = new ArrayList<>();
        BuiltIn read = StrictJson.read(INDEX, new String(index, java.nio.charset.StandardCharsets.UTF_8), new TypeReference<BuiltIn>() {}, problems);
        if (read == null) {
            throw new RulebaseException(problems);
        }
        return read;
    }

    /** The texts as they lie on the class path; every one must be what was compiled. */
    RuleFiles texts() {
        Map<String, byte[]> texts = new LinkedHashMap<>();
        List<String> problems = new ArrayList<>();
        files.forEach((path, hash) -> {
            byte[] bytes = resource(FOLDER + "files/" + path);
            if (bytes == null || !Hash.of(bytes).equals(hash)) {
                problems.add("the built-in " + path + (bytes == null ? " is not there" : " is not what was compiled") + ": build again");
            } else {
                texts.put(path, bytes);
            }
        });
        if (!problems.isEmpty()) {
            throw new RulebaseException(problems);
        }
        return new RuleFiles(texts);
    }

    private static byte[] resource(String name) {
        try (InputStream in = BuiltIn.class.getClassLoader().getResourceAsStream(name)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
