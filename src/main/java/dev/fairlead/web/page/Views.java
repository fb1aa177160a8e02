package dev.fairlead.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;

/** Renders pages and parts of pages from templates that the build compiled. */
public final class Views {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "dev.fairlead.templates");

    private final String folder;
    private final String assets;
    private final boolean shared;

    /** Pages over a folder of that name; {@code shared} when devices of the network are answered. */
    public Views(String folder, String assets, boolean shared) {
        this.folder = folder;
        this.assets = assets;
        this.shared = shared;
    }

    /** True when devices of the network are answered. */
    public boolean shared() {
        return shared;
    }

    /** Hash of styles and scripts. */
    String assets() {
        return assets;
    }

    /** A whole page; {@code where} names the current entry of the main navigation. */
    public void page(Context ctx, String template, String title, String where, Map<String, Object> model) {
        Map<String, Object> all = new HashMap<>(model);
        all.put("frame", new PageFrame(title, where, folder, assets, shared, Visitor.known(ctx), ctx.path()));
        part(ctx, template, all);
    }

    /** A part of a page, to be put into one that is open. */
    public void part(Context ctx, String template, Map<String, Object> model) {
        ctx.html(text(template, model));
    }

    /** The text of a part. */
    public String text(String template, Map<String, Object> model) {
        StringOutput out = new StringOutput(16_000);
        ENGINE.render(template, model, out);
        return out.toString();
    }
}
