package dev.fairlead.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Renders templates that the build compiled; what a case says is escaped there. */
final class Templates {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "dev.fairlead.templates");

    private Templates() {}

    static String render(String template, Object page) {
        StringOutput out = new StringOutput(100_000);
        ENGINE.render(template, page, out);
        return out.toString();
    }

    /** A file of the look, as it stands in the program. */
    static String look(String name) {
        try (InputStream in = Templates.class.getResourceAsStream("/look/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("a style sheet of the program cannot be read: " + name, e);
        }
    }
}
