package dev.fairlead.rules.engine;

import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * The classes made of the DRL files of one package.
 *
 * @param key hash of all that the classes depend on
 * @param rules number of rules in the files
 * @param classes class files by path in a class folder
 */
record CompiledRules(String key, int rules, Map<String, byte[]> classes) {
    private static final Pattern MODEL = Pattern.compile(".*/Rules[0-9A-F]{32}\\.class");

    public CompiledRules {
        classes = new TreeMap<>(classes);
    }

    /** The class that holds the rules as a model of the engine. */
    public String modelClass() {
        return classes.keySet().stream()
                .filter(name -> MODEL.matcher(name).matches())
                .findFirst()
                .map(name ->
                        name.substring(0, name.length() - ".class".length()).replace('/', '.'))
                .orElseThrow(() -> new IllegalStateException("the engine made no model"));
    }
}
