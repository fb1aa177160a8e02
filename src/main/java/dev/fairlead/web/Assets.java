package dev.fairlead.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** Styles, scripts and the icon: a closed list, read once from the program itself. */
final class Assets {
    private static final String[][] FILES = {
        {"/assets/base.css", "/look/base.css", "text/css; charset=utf-8"},
        {"/assets/picture.css", "/look/picture.css", "text/css; charset=utf-8"},
        {"/assets/app.css", "/web/app.css", "text/css; charset=utf-8"},
        {"/assets/form.css", "/web/form.css", "text/css; charset=utf-8"},
        {"/assets/chair.css", "/web/chair.css", "text/css; charset=utf-8"},
        {"/assets/measure.css", "/web/measure.css", "text/css; charset=utf-8"},
        {"/assets/measure.js", "/web/measure.js", "text/javascript; charset=utf-8"},
        {"/assets/measure-view.js", "/web/measure-view.js", "text/javascript; charset=utf-8"},
        {"/assets/measure-scan.js", "/web/measure-scan.js", "text/javascript; charset=utf-8"},
        {"/assets/app.js", "/web/app.js", "text/javascript; charset=utf-8"},
        {"/assets/htmx.js", "/web/htmx.min.js", "text/javascript; charset=utf-8"},
        {"/favicon.ico", "/web/icon.svg", "image/svg+xml"},
    };

    private record Asset(byte[] bytes, String type) {}

    private final Map<String, Asset> byPath = new LinkedHashMap<>();
    private final String hash;

    Assets() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String[] f : FILES) {
                try (InputStream in = Assets.class.getResourceAsStream(f[1])) {
                    if (in == null) {
                        throw new IllegalStateException("the program lacks " + f[1]);
                    }
                    byte[] bytes = in.readAllBytes();
                    digest.update(bytes);
                    byPath.put(f[0], new Asset(bytes, f[2]));
                }
            }
            hash = HexFormat.of().formatHex(digest.digest()).substring(0, 12);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    String hash() {
        return hash;
    }

    void install(RoutesConfig routes) {
        byPath.keySet().forEach(path -> routes.get(path, this::serve));
    }

    private void serve(Context ctx) {
        Asset asset = Objects.requireNonNull(byPath.get(ctx.path()), ctx.path());
        // pages name these files with their hash, so a copy is good for as long as it is asked for
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.contentType(asset.type()).result(asset.bytes());
    }
}
