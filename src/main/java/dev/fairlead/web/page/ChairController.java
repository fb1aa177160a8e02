package dev.fairlead.web.page;

import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Side;
import dev.fairlead.web.edit.EditResult;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.edit.Signature;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.FormWords;
import dev.fairlead.web.form.Typed;
import dev.fairlead.web.store.ChangeLog;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Chair mode: one large question, the answer whether the wire may go in, and all questions; then who answered. */
final class ChairController extends Controller {
    ChairController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/chair", ctx -> ask(ctx, editable(ctx), -1, ""));
        routes.post("/cases/{name}/chair", this::answer);
        routes.post("/cases/{name}/chair/sign", this::sign);
    }

    private void ask(Context ctx, Opened opened, int at, String refused) {
        Checklist checklist = checklist(ctx, opened);
        int index = Math.min(
                at >= 0 ? at : number(ctx.queryParam("q"), checklist),
                checklist.questions().size());
        Map<String, Object> model = new HashMap<>();
        model.put("page", chair(ctx, opened, checklist, index));
        model.put("refused", refused);
        page(ctx, opened, "web/chair.jte", "chair", "Chair mode", model);
    }

    private void answer(Context ctx) {
        Opened opened = editable(ctx);
        int q = number(ctx.queryParam("q"), checklist(ctx, opened));
        EditResult outcome = change(ctx, opened, Typed.of(ctx.formParamMap(), ""));
        if (!outcome.clashes().isEmpty()) {
            clash(ctx, outcome);
        } else if (!outcome.refused().isEmpty()) {
            FieldView.Note why = fields(outcome.now())
                    .at(outcome.refused().keySet().iterator().next())
                    .note();
            ask(ctx.status(422), outcome.now(), q, why.text() + " " + why.mend());
        } else {
            Checklist now = checklist(ctx, outcome.now());
            boolean list = "list".equals(ctx.queryParam("to"));
            ctx.redirect(
                    Urls.of(opened.name()) + "/chair?part=" + now.part() + "&q="
                            + (list ? q + "#q" + q : String.valueOf(now.next(q + 1))),
                    HttpStatus.SEE_OTHER);
        }
    }

    /** Signing says who answers for what stands there, in which role; a later change of an answer ends it. */
    private void sign(Context ctx) {
        Opened opened = editable(ctx);
        String role = Objects.requireNonNullElse(ctx.formParam("role"), "");
        String initials =
                Objects.requireNonNullElse(ctx.formParam("initials"), "").strip();
        int end = checklist(ctx, opened).questions().size();
        if (DevicesController.role(role) == null || !initials.matches("[A-Za-z]{2,3}")) {
            ask(ctx.status(422), opened, end, "Not signed: choose a role and give two or three letters as initials.");
            return;
        }
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put(Signature.ROLE, role);
        typed.put(Signature.INITIALS, initials);
        typed.put(
                Signature.TIME,
                LocalTime.now(ZoneId.systemDefault())
                        .truncatedTo(ChronoUnit.MINUTES)
                        .toString());
        if (opened.typed(Signature.DAY).isEmpty()) {
            typed.put(Signature.DAY, site.today().get().toString());
        }
        EditResult outcome = change(ctx, opened, typed);
        if (!outcome.clashes().isEmpty()) {
            clash(ctx, outcome);
            return;
        }
        ctx.redirect(Urls.of(opened.name()) + "/chair?part=insertion&q=" + end, HttpStatus.SEE_OTHER);
    }

    private void clash(Context ctx, EditResult outcome) {
        page(
                ctx.status(409),
                outcome.now(),
                "web/clash.jte",
                "chair",
                "Two windows",
                Map.of("clashes", outcome.clashes(), "back", "insertion"));
    }

    private ChairPage chair(Context ctx, Opened opened, Checklist checklist, int index) {
        String[] who = Visitor.known(ctx).who().split(" ");
        return new ChairPage(
                Urls.of(opened.name()),
                checklist,
                index,
                from(opened, checklist, index),
                ChairVerdict.of(site.reports().upTo(opened, checklist.stage()), checklist),
                signed(opened),
                voided(opened),
                PageFrame.roles(Visitor.known(ctx)),
                who.length == 2 ? who[0] : "",
                who.length == 2 ? who[1] : "");
    }

    /** The mark of the first bend lies somewhere else in each child: near where it was worked out to be. */
    private static String from(Opened opened, Checklist checklist, int index) {
        String pointer = index < checklist.questions().size()
                ? checklist.questions().get(index).field().pointer()
                : "";
        if (!pointer.endsWith("/firstMark") || !opened.reading().read()) {
            return "";
        }
        WireGeometry wire = WireGeometry.of(opened.reading().value().orElseThrow());
        Measured planned =
                wire.marks(pointer.contains("/left/") ? Side.LEFT : Side.RIGHT).firstBend();
        return planned.known() ? String.valueOf(Math.round(planned.value())) : "";
    }

    private static String signed(Opened opened) {
        String role = opened.typed(Signature.ROLE);
        if (role.isEmpty()) {
            return "";
        }
        String initials = known(opened, Signature.INITIALS);
        String day = known(opened, Signature.DAY);
        String time = known(opened, Signature.TIME);
        return "Signed by " + FormWords.of(role).toLowerCase(java.util.Locale.ROOT)
                + (initials.isEmpty() ? "" : " " + initials)
                + (day.isEmpty() ? "" : " on " + day)
                + (time.isEmpty() ? "" : " at " + time) + ".";
    }

    private static String known(Opened opened, String pointer) {
        String typed = opened.typed(pointer);
        return typed.equals("unknown") || typed.equals("does-not-apply") ? "" : typed;
    }

    /** Whose signature ended, as the log tells; empty when there is one, or there never was. */
    private String voided(Opened opened) {
        if (!opened.typed(Signature.ROLE).isEmpty()) {
            return "";
        }
        List<ChangeLog.Entry> log = site.editor().folder().log(opened.name()).all();
        return log.stream()
                .filter(e -> e.field().equals(Signature.ROLE))
                .findFirst()
                .filter(e -> e.why().equals(Signature.VOIDED))
                .map(ChangeLog.Entry::old)
                .orElse("");
    }

    private Fields fields(Opened opened) {
        return new Fields(opened, site.editor().refused(opened.name()), p -> List.of());
    }

    private Checklist checklist(Context ctx, Opened opened) {
        return Checklist.of("bench".equals(ctx.queryParam("part")) ? "bench" : "insertion", fields(opened));
    }

    private static int number(String q, Checklist checklist) {
        return q != null && q.matches("[0-9]{1,3}") ? Integer.parseInt(q) : checklist.next(0);
    }
}
