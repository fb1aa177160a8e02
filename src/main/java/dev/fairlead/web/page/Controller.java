package dev.fairlead.web.page;

import dev.fairlead.model.Choices.Role;
import dev.fairlead.web.access.DeviceRole;
import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.edit.Signature;
import io.javalin.http.Context;
import java.util.HashMap;
import java.util.Map;

/** What the pages of one case share: which case is meant, and what stands over its pages. */
abstract class Controller {
    final Site site;

    Controller(Site site) {
        this.site = site;
    }

    /** The case that the address names. */
    Opened opened(Context ctx) {
        return site.open(ctx.pathParam("name"));
    }

    /** The case, whose single values have to be readable. */
    Opened editable(Context ctx) {
        Opened opened = opened(ctx);
        if (opened.tree().isEmpty()) {
            throw new PageError(
                    409,
                    "This file is no case that a form could show",
                    "Correct it in a text editor, then load this page again: "
                            + opened.reading().problems().stream()
                                    .findFirst()
                                    .map(Object::toString)
                                    .orElse(""));
        }
        return opened;
    }

    /** The version that the window has seen. */
    static String version(Context ctx) {
        String version = ctx.formParam("version");
        if (version == null || !version.matches("[0-9a-f]{20}")) {
            throw new PageError(
                    400,
                    "The form did not say which version it was made from",
                    "Load the page again, then make your change.");
        }
        return version;
    }

    static String window(Context ctx) {
        String window = ctx.formParam("window");
        return window != null && window.matches("[0-9a-f]{18}") ? window : "";
    }

    /** Who is put into the log for what this request changes. */
    static String author(Context ctx) {
        return Visitor.known(ctx).author();
    }

    /** Changes values of a case as far as the device may. */
    EditResult change(Context ctx, Opened opened, Map<String, String> typed) {
        DeviceRole device = Visitor.known(ctx).role();
        String signs = typed.getOrDefault(Signature.ROLE, "").strip();
        Role role = DevicesController.role(signs);
        if (role != null && !signs.equals(opened.typed(Signature.ROLE)) && !device.maySignAs(role)) {
            throw new PageError(
                    403,
                    "From this device nobody signs as " + signs,
                    "Nothing was changed. Sign in the role that the device was paired for.");
        }
        if (typed.keySet().stream().anyMatch(p -> p.startsWith("/waivers"))) {
            mayWaive(ctx);
        }
        return site.editor().change(opened.name(), version(ctx), window(ctx), author(ctx), typed);
    }

    /** Turns away whoever may not waive from this device. */
    static void mayWaive(Context ctx) {
        if (!Visitor.known(ctx).role().mayWaive()) {
            throw new PageError(
                    403,
                    "From this device nothing is waived",
                    "Nothing was changed. A resident, clinician or director waives from a device of theirs.");
        }
    }

    static boolean partial(Context ctx) {
        return ctx.header("HX-Request") != null;
    }

    CaseHead head(Context ctx, Opened opened, String here) {
        return CaseHead.of(
                opened,
                here,
                site.editor().folder().steps(opened.name()),
                window(ctx),
                site.editor().folder().saved(opened.name()));
    }

    /** A page of a case: its head and findings, and {@code more}. */
    void page(Context ctx, Opened opened, String template, String here, String title, Map<String, Object> more) {
        Map<String, Object> model = new HashMap<>(more);
        model.put("head", head(ctx, opened, here));
        model.computeIfAbsent("panel", k -> site.reports().panel(opened));
        site.views().page(ctx, template, title + " – " + opened.title(), "cases", model);
    }
}
