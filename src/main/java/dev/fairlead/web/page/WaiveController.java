package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.WaiverNote;
import dev.fairlead.intake.CaseTree;
import dev.fairlead.intake.Problem;
import dev.fairlead.intake.Reading;
import dev.fairlead.model.Choices.Role;
import dev.fairlead.web.PageError;
import dev.fairlead.web.Site;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/** A person answers for a finding, with reason and expiry; a waiver that would not hold is not written. */
public final class WaiveController extends Controller {
    private static final int WEEKS = 12;

    WaiveController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/waive/{id}", ctx -> show(ctx, editable(ctx), "", Map.of()));
        routes.post("/cases/{name}/waive/{id}", this::waive);
    }

    private void show(Context ctx, Opened opened, String complaint, Map<String, String> typed) {
        LocalDate day = opened.reading().value().flatMap(c -> c.date().value()).orElse(site.today().get());
        Map<String, String> values = new LinkedHashMap<>(Map.of("reason", "", "by", "", "date", day.toString(), "expires", day.plusWeeks(WEEKS).toString()));
        values.putAll(typed);
        page(ctx, opened, "web/waive.jte", "findings", "Waive a finding", Map.of("finding", finding(ctx, opened), "values", values, "complaint", complaint, "there", there(opened, ctx.pathParam("id")),
                "roles", Arrays.stream(Role.values()).map(Role::word).toList()));
    }

    /** A waiver of a finding that stands in the case, whether it holds or not. */
    public record Entry(String pointer, String reason, String by, String expires) {}

    private static List<Entry> there(Opened opened, String criterion) {
        CaseTree tree = opened.tree().orElseThrow();
        return IntStream.range(0, tree.size("/waivers")).mapToObj(i -> "/waivers/" + i).filter(at -> opened.typed(at + "/criterion").equals(criterion))
                .map(at -> new Entry(at, opened.typed(at + "/reason"), opened.typed(at + "/by"), opened.typed(at + "/expires"))).toList();
    }

    private void waive(Context ctx) {
        Opened opened = editable(ctx);
        Finding finding = finding(ctx, opened);
        Map<String, String> typed = new LinkedHashMap<>();
        for (String key : List.of("reason", "by", "date", "expires")) {
            typed.put(key, Objects.requireNonNullElse(ctx.formParam(key), "").strip());
        }
        CaseTree tree = opened.tree().orElseThrow().copy();
        int n = tree.size("/waivers");
        write(tree, n, finding.id(), typed);
        String complaint = complaint(tree.read(opened.name()), n);
        if (!complaint.isEmpty()) {
            show(ctx.status(422), opened, complaint, typed);
            return;
        }
        site.desk().rework(opened.name(), version(ctx), t -> write(t, n, finding.id(), typed));
        ctx.redirect(Urls.of(opened.name()) + "/findings#" + finding.id(), HttpStatus.SEE_OTHER);
    }

    private static void write(CaseTree tree, int n, String criterion, Map<String, String> typed) {
        String at = "/waivers/" + n;
        tree.set(at + "/criterion", criterion);
        typed.forEach((key, value) -> tree.set(at + "/" + key, value));
    }

    /** Why the waiver would not be read or would not hold; empty when it would. */
    private String complaint(Reading reading, int n) {
        String at = "/waivers/" + n;
        for (Problem p : reading.errors()) {
            if (p.pointer().startsWith(at)) {
                return "Expected " + p.expected() + ", found " + p.found() + ". " + p.mend();
            }
        }
        if (!reading.read()) {
            return "The case cannot be read as it stands, so nothing can be waived. Mend what is listed under findings first.";
        }
        return site.reports().checks().check(reading, "", site.today().get(), false).report().findings().waiverNotes().stream()
                .filter(w -> w.pointer().equals(at)).map(WaiverNote::text).findFirst().map(dev.fairlead.web.form.Words::capital).orElse("");
    }

    private Finding finding(Context ctx, Opened opened) {
        String id = ctx.pathParam("id");
        return site.reports().panel(opened).finding(id).orElseThrow(PageError::noFinding);
    }
}
