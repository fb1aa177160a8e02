package dev.fairlead.web.page;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.model.Stage;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.form.FormSection;
import dev.fairlead.web.store.CaseFolder;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The list of cases: find, filter, start a new one, copy, bring in, take away. */
final class CasesController extends Controller {
    /** So long a page, or whoever types into the search, may wait for lines that were not counted yet. */
    private static final Duration PROMPT = Duration.ofMillis(150);
    /** So long what fills in the rest may take. */
    private static final Duration PATIENCE = Duration.ofMillis(1500);

    private final CaseList cases;

    CasesController(Site site) {
        super(site);
        cases = new CaseList(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases", this::list);
        routes.post("/cases", this::create);
        routes.post("/import", this::bringIn);
        routes.get(
                "/cases/{name}",
                ctx -> ctx.redirect(Urls.of(opened(ctx).name()) + "/form/"
                        + FormSection.ALL.get(0).key()));
        routes.get("/cases/{name}/download", this::download);
        routes.post("/cases/{name}/archive", this::archive);
        routes.post("/cases/{name}/rename", this::rename);
        routes.post("/restore", this::restore);
        routes.get("/export.zip", this::export);
    }

    private void list(Context ctx) {
        CaseLine.Wanted wanted = new CaseLine.Wanted(
                asked(ctx, "q"),
                asked(ctx, "stage"),
                asked(ctx, "resident"),
                asked(ctx, "outcome"),
                asked(ctx, "sort"));
        if (partial(ctx)) {
            // whoever asks for the lines alone has a page to look at meanwhile
            site.reports().checks().checker();
        }
        List<CaseLine> all = cases.lines(ctx.queryParam("more") != null ? PATIENCE : PROMPT);
        List<CaseLine> found = all.stream()
                .filter(l -> l.matches(wanted))
                .sorted(wanted.order())
                .toList();
        boolean more = all.stream().anyMatch(l -> !l.counted());
        Map<String, Object> model =
                new HashMap<>(Map.of("lines", found, "all", all.size(), "wanted", wanted, "more", more));
        model.put(
                "residents",
                all.stream()
                        .map(CaseLine::resident)
                        .filter(r -> !r.isEmpty())
                        .distinct()
                        .sorted()
                        .toList());
        if (partial(ctx)) {
            site.views().part(ctx, "web/caselines.jte", model);
        } else {
            model.put("names", all.stream().map(CaseLine::name).toList());
            model.put("passedOver", site.editor().folder().passedOver());
            model.put("stages", Arrays.stream(Stage.values()).map(Stage::word).toList());
            model.put("archived", site.editor().folder().archived());
            site.views().page(ctx, "web/cases.jte", "Cases", "cases", model);
        }
    }

    private static String asked(Context ctx, String key) {
        return Objects.requireNonNullElse(ctx.queryParam(key), "");
    }

    private void archive(Context ctx) {
        site.editor().folder().archive(opened(ctx).name());
        ctx.redirect("/cases", HttpStatus.SEE_OTHER);
    }

    private void restore(Context ctx) {
        site.editor().folder().restore(Objects.requireNonNullElse(ctx.formParam("name"), ""));
        ctx.redirect("/cases", HttpStatus.SEE_OTHER);
    }

    /** Gives a case another pseudonym and its file another name; its earlier versions and its log go along. */
    private void rename(Context ctx) {
        Opened opened = editable(ctx);
        String id = Objects.requireNonNullElse(ctx.formParam("id"), "").strip();
        refuseUnusable(opened.tree().orElseThrow().copy(), id);
        String name = id + (opened.file().yaml() ? ".yaml" : ".json");
        if (!name.equals(opened.name())) {
            site.editor().folder().rename(opened.name(), name);
        }
        site.editor().rework(name, opened.file().version(), author(ctx), t -> t.set("/id", id));
        ctx.redirect(Urls.of(name) + "/form/" + FormSection.ALL.get(0).key(), HttpStatus.SEE_OTHER);
    }

    /** All cases of the folder in one file. */
    private void export(Context ctx) throws IOException {
        ctx.header(
                "Content-Disposition",
                "attachment; filename*=UTF-8''"
                        + Urls.part(site.editor().folder().label()) + "-"
                        + site.today().get() + ".zip");
        ctx.contentType("application/zip");
        FolderZip.write(site.editor().folder(), ctx.outputStream());
    }

    private void create(Context ctx) {
        String id = Objects.requireNonNullElse(ctx.formParam("id"), "").strip();
        String from = Objects.requireNonNullElse(ctx.formParam("from"), "");
        CaseTree tree = from.isEmpty()
                ? CaseTree.empty()
                : site.open(from)
                        .tree()
                        .orElseThrow(() -> new PageError(
                                409,
                                "That file cannot be copied",
                                "It cannot be read as a case. Start from a blank one."))
                        .copy();
        tree.set("/id", id);
        if (from.isEmpty()) {
            tree.set("/stage", Stage.RECORDS.word());
        } else {
            tree.remove("/waivers");
        }
        refuseUnusable(tree, id);
        String name = id + ".json";
        site.editor().folder().create(name, tree.text(CaseFormat.JSON));
        ctx.redirect(
                Urls.of(name)
                        + (from.isEmpty() && ctx.formParam("consult") != null
                                ? "/consult"
                                : "/form/" + FormSection.ALL.get(0).key())
                        + (from.isEmpty() ? "#f_child_age" : ""),
                HttpStatus.SEE_OTHER);
    }

    /** Turns a pseudonym away that a case may not have. */
    private static void refuseUnusable(CaseTree tree, String id) {
        tree.set("/id", id);
        tree.read(id).errors().stream()
                .filter(p -> p.pointer().equals("/id"))
                .findFirst()
                .ifPresent(p -> {
                    throw new PageError(
                            422,
                            "That pseudonym cannot be used: expected " + p.expected() + ", found " + p.found(),
                            "Use up to 40 letters, digits and dashes, and nothing that tells who the child is. "
                                    + p.mend());
                });
    }

    private void bringIn(Context ctx) throws IOException {
        UploadedFile file = ctx.uploadedFile("file");
        if (file == null || file.size() == 0) {
            throw new PageError(400, "No file was chosen", "Choose a case file, or drop one on the page.");
        }
        // a browser may send a whole path; only the last part is a name
        String name = file.filename().replaceAll("^.*[/\\\\]", "").replace(' ', '-');
        if (name.toLowerCase(java.util.Locale.ROOT).endsWith(".zip")) {
            try (InputStream in = file.content()) {
                List<FolderZip.Taken> taken = FolderZip.into(site.editor().folder(), in);
                site.views().page(ctx, "web/broughtin.jte", "Brought in", "cases", Map.of("taken", taken));
            }
            return;
        }
        if (file.size() > CaseFolder.MOST_BYTES) {
            throw new PageError(413, "That file is larger than any case", "Look whether it is the right file.");
        }
        byte[] bytes;
        try (InputStream in = file.content()) {
            bytes = in.readAllBytes();
        }
        Opened read = Opened.of(name, bytes);
        if (!read.reading().read()) {
            ctx.status(422);
            site.views()
                    .page(
                            ctx,
                            "web/refused.jte",
                            "Not brought in",
                            "cases",
                            Map.of("name", name, "problems", read.reading().problems()));
            return;
        }
        site.editor().folder().create(name, new String(bytes, StandardCharsets.UTF_8));
        ctx.redirect(Urls.of(name) + "/form/" + FormSection.ALL.get(0).key(), HttpStatus.SEE_OTHER);
    }

    private void download(Context ctx) {
        Opened opened = opened(ctx);
        ctx.header("Content-Disposition", "attachment; filename*=UTF-8''" + Urls.part(opened.name()));
        ctx.contentType(opened.file().yaml() ? "application/yaml" : "application/json")
                .result(opened.file().text());
    }
}
