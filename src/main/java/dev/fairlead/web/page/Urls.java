package dev.fairlead.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses of pages. */
public final class Urls {
    private Urls() {}

    /** The address below which all pages of a case stand. */
    public static String of(String caseName) {
        return "/cases/" + part(caseName);
    }

    /** One part of a path, escaped. */
    public static String part(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
