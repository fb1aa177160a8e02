package dev.fairlead.web.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.archform.Point;
import dev.fairlead.measure.picture.PictureForm;
import dev.fairlead.measure.picture.PictureMeasures;
import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.measure.picture.PlacedPoint;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.picture.into.CaseOffers;
import dev.fairlead.picture.into.MeasuredText;
import dev.fairlead.picture.into.Offer;
import dev.fairlead.picture.into.Origin;
import dev.fairlead.picture.read.Meshes;
import dev.fairlead.picture.read.PictureFiles;
import dev.fairlead.picture.read.ReadPicture;
import dev.fairlead.picture.read.SurfaceMesh;
import dev.fairlead.picture.read.UnfitFileException;
import dev.fairlead.web.edit.Opened;
import dev.fairlead.web.measure.Guides;
import dev.fairlead.web.measure.Placing;
import dev.fairlead.web.store.StaleException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Measuring on a picture: the page, the picture made fit to be shown, numbers for the points placed so far, and what is
 * taken into the case. Nothing of a picture stays on the server unless it is asked to be kept.
 */
final class MeasureController extends Controller {
    private static final String JSON = "application/json; charset=utf-8";
    private static final int MOST_COVERS = 20;

    MeasureController(Site site) {
        super(site);
    }

    /** An answer to the page's script that nothing can be done, and why. */
    @FunctionalInterface
    private interface Answer {
        Object of(Context ctx) throws UnfitFileException;
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/measure", this::show);
        routes.get("/measure/guide/{kind}", ctx -> answer(ctx, this::guide));
        routes.post("/cases/{name}/measure/picture", ctx -> answer(ctx, this::picture));
        routes.post("/cases/{name}/measure/scan", ctx -> answer(ctx, this::scan));
        routes.post("/cases/{name}/measure/numbers", ctx -> answer(ctx, this::numbers));
        routes.post("/cases/{name}/measure/take", ctx -> answer(ctx, this::take));
        routes.post("/cases/{name}/measure/keep", ctx -> answer(ctx, this::keep));
    }

    private void answer(Context ctx, Answer answer) {
        try {
            Object made = answer.of(ctx);
            if (made instanceof byte[] bytes) {
                ctx.contentType(ctx.path().endsWith("scan") ? "application/octet-stream" : "image/jpeg")
                        .result(bytes);
            } else {
                ctx.contentType(JSON).result(made.toString());
            }
        } catch (UnfitFileException e) {
            refuse(ctx, 422, "This is " + e.getMessage() + ".", e.mend());
        } catch (IllegalArgumentException e) {
            refuse(ctx, 422, String.valueOf(e.getMessage()), "");
        } catch (StaleException e) {
            refuse(
                    ctx,
                    409,
                    "The case was changed in another window meanwhile.",
                    "Nothing was written. Load this page again; the points have to be placed anew.");
        }
    }

    private static void refuse(Context ctx, int status, String what, String mend) {
        ctx.status(status)
                .contentType(JSON)
                .result(JsonNodeFactory.instance
                        .objectNode()
                        .put("error", what)
                        .put("mend", mend)
                        .toString());
    }

    private void show(Context ctx) {
        Opened opened = editable(ctx);
        page(ctx, opened, "web/measure.jte", "measure", "Measure", Map.of());
    }

    private Object guide(Context ctx) {
        PictureKind kind = Placing.kind(ctx.pathParam("kind"))
                .orElseThrow(() -> new IllegalArgumentException("There is no such kind of picture."));
        return Guides.of(kind);
    }

    // ---- the picture ----

    private Object picture(Context ctx) throws UnfitFileException {
        byte[] file = body(ctx);
        boolean beginning = ctx.queryParam("beginning") != null;
        ObjectNode about = JsonNodeFactory.instance.objectNode();
        if (PictureFiles.shownByBrowsers(file, beginning)) {
            // the browser shows its own file, and sooner than one that was decoded and encoded here first
            ctx.header("X-Picture", about.put("own", true).toString());
            return new byte[0];
        }
        if (beginning) {
            // the rest is needed too
            ctx.status(202);
            return new byte[0];
        }
        ReadPicture read = PictureFiles.read(file);
        about.put("width", read.image().getWidth());
        about.put("height", read.image().getHeight());
        read.spacing().ifPresent(s -> {
            ObjectNode o = about.putObject("spacing");
            o.put("row", s.row())
                    .put("column", s.column())
                    .put("meaning", s.meaning().name());
            s.magnification().ifPresent(m -> o.put("magnification", m));
        });
        read.warnings().forEach(about.putArray("warnings")::add);
        ctx.header("X-Picture", about.toString());
        return PictureFiles.jpeg(read.image(), List.of());
    }

    /** The triangles of a scan, nine 32-bit numbers each: whatever the file was, the page gets nothing else of it. */
    private Object scan(Context ctx) throws UnfitFileException {
        SurfaceMesh mesh = Meshes.read(body(ctx));
        ObjectNode about = JsonNodeFactory.instance.objectNode();
        about.put("triangles", mesh.triangles());
        mesh.doubts().forEach(about.putArray("warnings")::add);
        // on one machine packing 18 MB takes longer than everything else
        ctx.disableCompression();
        ctx.header("X-Picture", about.toString());
        return mesh.bytes();
    }

    private static byte[] body(Context ctx) throws UnfitFileException {
        try (InputStream in = ctx.req().getInputStream()) {
            byte[] all = in.readNBytes(PictureFiles.MOST_BYTES + 1);
            if (all.length > PictureFiles.MOST_BYTES) {
                throw new UnfitFileException("a file of more than 100 MB", "Export it smaller.");
            }
            return all;
        } catch (IOException e) {
            throw new UnfitFileException("a file that did not arrive whole", "Choose it again.");
        }
    }

    /** Keeps the picture beside the case: its pixels alone, and without what was covered. */
    private Object keep(Context ctx) throws UnfitFileException {
        Opened opened = editable(ctx);
        PictureKind kind = Placing.kind(String.valueOf(ctx.queryParam("kind")))
                .orElseThrow(() -> new IllegalArgumentException("There is no such kind of picture."));
        List<int[]> covers = new ArrayList<>();
        for (String c : ctx.queryParams("cover")) {
            if (!c.matches("\\d{1,5}(,\\d{1,5}){3}") || covers.size() == MOST_COVERS) {
                throw new IllegalArgumentException("A cover is x,y,width,height in pixels; at most " + MOST_COVERS);
            }
            String[] p = c.split(",");
            covers.add(new int[] {
                Integer.parseInt(p[0]), Integer.parseInt(p[1]), Integer.parseInt(p[2]), Integer.parseInt(p[3])
            });
        }
        byte[] jpeg = PictureFiles.jpeg(PictureFiles.read(body(ctx)).image(), covers);
        String kept =
                site.editor().folder().keepPicture(opened.name(), site.today().get() + "-" + kind.word(), jpeg);
        return JsonNodeFactory.instance.objectNode().put("kept", kept);
    }

    // ---- numbers ----

    private Object numbers(Context ctx) {
        Opened opened = editable(ctx);
        Placing placing = Placing.read(ctx.bodyAsBytes());
        PictureResult result = placing.result();
        ObjectNode out = MeasuredText.json(result);
        PictureMeasures.form(placing.kind(), placing.points(), placing.scaling())
                .ifPresent(form -> form(form, placing, out.putObject("form")));
        ArrayNode offers = out.putArray("offers");
        if (opened.reading().value().isPresent()) {
            for (Offer o : offers(opened, result)) {
                offers.addObject()
                        .put("field", o.value().pointer())
                        .put("there", o.there())
                        .put("becomes", o.becomes())
                        .put("refusal", o.refusal());
            }
        }
        return out;
    }

    /** The arch form, and where it runs on the picture; on a scan there is no one line to draw. */
    private static void form(PictureForm form, Placing placing, ObjectNode out) {
        out.put("family", form.family().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .put("points", form.points())
                .put("residual", form.residual());
        ArrayNode line = out.putArray("line");
        if (placing.kind() == PictureKind.ARCH_PICTURE) {
            for (Point mm : form.line()) {
                Point at = placing.scaling().pixel(mm);
                line.addArray().add(at.x()).add(at.y());
            }
        }
    }

    private static List<Offer> offers(Opened opened, PictureResult result) {
        return CaseOffers.of(
                opened.reading()
                        .value()
                        .orElseThrow(() -> new IllegalArgumentException(
                                "The case cannot be read as it stands: see its findings.")),
                opened.tree().orElseThrow(),
                result.values());
    }

    private Object take(Context ctx) {
        Opened opened = editable(ctx);
        Placing placing = Placing.read(ctx.bodyAsBytes());
        JsonNode sent = placing.node();
        String version = sent.path("version").asText("");
        if (!version.matches("[0-9a-f]{20}")) {
            throw new IllegalArgumentException("The page did not say which version of the case it was made from.");
        }
        Set<String> wanted = new HashSet<>();
        sent.path("take").forEach(n -> wanted.add(n.asText("")));
        PictureResult result = placing.result();
        List<Offer> taken = new ArrayList<>();
        for (Offer o : offers(opened, result)) {
            if (wanted.contains(o.value().pointer()) && o.possible()) {
                taken.add(o);
            }
        }
        if (taken.isEmpty()) {
            throw new IllegalArgumentException("No reading was chosen that the case can take.");
        }
        Origin origin = new Origin(
                placing.kind(),
                site.today().get(),
                result,
                placing.again().stream().map(PlacedPoint::name).collect(Collectors.toSet()));
        Opened now =
                site.editor().rework(opened.name(), version, author(ctx), tree -> put(tree, placing, taken, origin));
        return JsonNodeFactory.instance
                .objectNode()
                .put("taken", taken.size())
                .put("version", now.file().version());
    }

    private static void put(CaseTree tree, Placing placing, List<Offer> taken, Origin origin) {
        boolean landmarks = placing.node().path("landmarks").asBoolean(false);
        CaseOffers.put(
                tree,
                taken,
                landmarks
                        ? PictureMeasures.landmarks(
                                placing.kind(), placing.points(), placing.again(), placing.scaling())
                        : Map.of(),
                origin);
        List<Problem> errors = tree.read("").errors();
        if (!errors.isEmpty()) {
            throw new IllegalArgumentException(
                    "With these readings the case could not be read; nothing was written. " + errors.get(0));
        }
    }
}
