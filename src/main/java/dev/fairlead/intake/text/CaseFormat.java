package dev.fairlead.intake.text;

import java.util.Locale;

/** The text formats of a case file. */
public enum CaseFormat {
    JSON,
    YAML,
    /**
     * By the file's name: {@code .yaml} and {@code .yml} are YAML, {@code .json} is JSON, else the first character
     * tells.
     */
    BY_NAME;

    /** The format of a file with that name and text; never {@link #BY_NAME}. */
    public CaseFormat resolve(String name, String text) {
        if (this != BY_NAME) {
            return this;
        }
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".yaml") || lower.endsWith(".yml")) {
            return YAML;
        }
        return lower.endsWith(".json") || text.stripLeading().startsWith("{") ? JSON : YAML;
    }
}
