package dev.fairlead.web.page;

import dev.fairlead.findings.Finding;
import dev.fairlead.findings.WaiverNote;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.crosscheck.PersonDoubts;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.Choices.Role;
import dev.fairlead.rules.catalogue.Status;
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
    private static final Map<String, String> EMPTY = Map.of(
            "reason",
            "Say why the finding is accepted.",
            "by",
            "Say who answers for it.",
            "date",
            "Give the day of the waiver.",
            "expires",
            "Give the day after which it no longer holds.");

    WaiveController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/waive/{id}", ctx -> show(ctx, editable(ctx), Map.of(), Map.of()));
        routes.post("/cases/{name}/waive/{id}", this::waive);
    }

    private void show(Context ctx, Opened opened, Map<String, String> complaints, Map<String, String> typed) {
        LocalDate day = site.reports()
                .report(opened)
                .flatMap(r -> r.subject().date())
                .orElse(site.today().get());
        Map<String, String> values = new LinkedHashMap<>(Map.of(
                "reason",
                "",
                "by",
                "",
                "date",
                day.toString(),
                "expires",
                day.plusWeeks(WEEKS).toString()));
        values.putAll(typed);
        Finding finding = finding(ctx, opened);
        boolean waivable = finding.warns() || finding.outcome() == Status.NOT_ASSESSED;
        page(
                ctx,
                opened,
                "web/waive.jte",
                "findings",
                "Waive a finding",
                Map.of(
                        "finding",
                        finding,
                        "waivable",
                        waivable,
                        "values",
                        values,
                        "complaints",
                        complaints,
                        "there",
                        there(opened, ctx.pathParam("id")),
                        "roles",
                        Arrays.stream(Role.values()).map(Role::word).toList()));
    }

    /**
     * A waiver of a finding that stands in the case.
     *
     * @param lapsed why it does not hold; empty when it does
     * @param person true where the reason may name somebody
     */
    public record Entry(String pointer, String reason, String by, String expires, String lapsed, boolean person) {}

    private List<Entry> there(Opened opened, String criterion) {
        CaseTree tree = opened.tree().orElseThrow();
        return IntStream.range(0, tree.size("/waivers"))
                .mapToObj(i -> "/waivers/" + i)
                .filter(at -> opened.typed(at + "/criterion").equals(criterion))
                .map(at -> new Entry(
                        at,
                        opened.typed(at + "/reason"),
                        opened.typed(at + "/by"),
                        opened.typed(at + "/expires"),
                        lapsed(opened, at),
                        opened.problems(at + "/reason").stream().anyMatch(PersonDoubts::is)))
                .toList();
    }

    private void waive(Context ctx) {
        mayWaive(ctx);
        Opened opened = editable(ctx);
        Finding finding = finding(ctx, opened);
        Map<String, String> typed = new LinkedHashMap<>();
        for (String key : List.of("reason", "by", "date", "expires")) {
            typed.put(key, Objects.requireNonNullElse(ctx.formParam(key), "").strip());
        }
        CaseTree tree = opened.tree().orElseThrow().copy();
        int n = tree.size("/waivers");
        write(tree, n, finding.id(), typed);
        Map<String, String> complaints = complaints(tree.read(opened.name()), n, typed);
        if (!complaints.isEmpty()) {
            show(ctx.status(422), opened, complaints, typed);
            return;
        }
        Role by = DevicesController.role(typed.getOrDefault("by", ""));
        if (by == null || !Visitor.known(ctx).role().maySignAs(by)) {
            throw new PageError(
                    403,
                    "From this device nobody waives as " + typed.get("by"),
                    "Nothing was changed. Waive in the role that the device was paired for.");
        }
        site.editor().rework(opened.name(), version(ctx), author(ctx), t -> write(t, n, finding.id(), typed));
        ctx.redirect(Urls.of(opened.name()) + "/findings#" + finding.id(), HttpStatus.SEE_OTHER);
    }

    private static void write(CaseTree tree, int n, String criterion, Map<String, String> typed) {
        String at = "/waivers/" + n;
        tree.set(at + "/criterion", criterion);
        typed.forEach((key, value) -> tree.set(at + "/" + key, value));
    }

    private String lapsed(Opened opened, String at) {
        return site.reports()
                .report(opened)
                .flatMap(r -> r.findings().waiverNotes().stream()
                        .filter(w -> w.pointer().equals(at))
                        .findFirst())
                .map(w -> dev.fairlead.web.form.FormWords.capital(w.text()) + ".")
                .orElse("");
    }

    /**
     * Why the waiver would not be read or would not hold, by the field that it is about, or by no field; nothing when
     * it would.
     */
    private Map<String, String> complaints(CaseReading reading, int n, Map<String, String> typed) {
        Map<String, String> all = new LinkedHashMap<>();
        typed.forEach((key, value) -> {
            if (value.isEmpty()) {
                all.put(key, EMPTY.get(key));
            }
        });
        String at = "/waivers/" + n;
        for (Problem p : reading.errors()) {
            if (p.pointer().startsWith(at)) {
                String key = p.pointer().substring(Math.min(p.pointer().length(), at.length() + 1));
                all.put(
                        typed.containsKey(key) ? key : "",
                        "Expected " + p.expected() + ", found " + p.found() + "."
                                + (p.mend().isEmpty()
                                        ? ""
                                        : " " + dev.fairlead.web.form.FormWords.capital(p.mend()) + "."));
            }
        }
        if (all.isEmpty() && !reading.read()) {
            all.put(
                    "",
                    "The case cannot be read as it stands, so nothing can be waived. Correct what is listed under findings first.");
        }
        if (all.isEmpty()) {
            site
                    .reports()
                    .checks()
                    .check(reading, "", site.today().get(), false)
                    .report()
                    .findings()
                    .waiverNotes()
                    .stream()
                    .filter(w -> w.pointer().equals(at))
                    .findFirst()
                    .ifPresent(w -> all.put(about(w), dev.fairlead.web.form.FormWords.capital(w.text()) + "."));
        }
        return all;
    }

    private static String about(WaiverNote note) {
        return switch (note.kind()) {
            case NO_SUBSTANCE -> "reason";
            case WRONG_ROLE -> "by";
            case EXPIRED -> "expires";
            case NOT_YET -> "date";
            default -> "";
        };
    }

    private Finding finding(Context ctx, Opened opened) {
        String id = ctx.pathParam("id");
        return site.reports().panel(opened).finding(id).orElseThrow(PageError::noFinding);
    }
}
