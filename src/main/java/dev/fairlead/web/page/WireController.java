package dev.fairlead.web.page;

import dev.fairlead.drawing.Picture;
import dev.fairlead.model.Case;
import dev.fairlead.model.Unit;
import dev.fairlead.report.picture.CustomaryForce;
import dev.fairlead.report.picture.FoldPicture;
import dev.fairlead.report.picture.LoadPicture;
import dev.fairlead.report.picture.StandOffPicture;
import dev.fairlead.report.picture.WirePicture;
import dev.fairlead.report.wire.WireReport;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.web.edit.Opened;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;

/** The wire of a case: its tables, with other sizes beside it, and its pictures. */
final class WireController extends Controller {
    /** Sizes that are looked at beside the case's own, in. */
    private static final double[] SIZES = {0.016, 0.018, 0.020};

    private static final double SAME = 0.002;

    WireController(Site site) {
        super(site);
    }

    void install(RoutesConfig routes) {
        routes.get("/cases/{name}/wire", this::show);
    }

    private void show(Context ctx) {
        Opened opened = opened(ctx);
        Catalogue catalogue = site.reports().checks().catalogue();
        Optional<Case> c = opened.reading().value();
        List<Double> sizes = c.map(WireController::sizes).orElse(List.of());
        page(
                ctx,
                opened,
                "web/wire.jte",
                "wire",
                "Wire",
                Map.of(
                        "wire",
                        c.map(x -> WireReport.of(x, catalogue, OptionalInt.empty(), sizes)),
                        "pictures",
                        c.map(x -> pictures(x, catalogue, sizes)).orElse(List.of())));
    }

    private static List<Double> sizes(Case c) {
        DoubleStream usual = DoubleStream.of(SIZES).map(in -> Math.rint(Unit.INCH.to(Unit.MM, in) * 1000) / 1000);
        if (!c.wire().size().known()) {
            return usual.boxed().toList();
        }
        double own = c.wire().size().value();
        return DoubleStream.concat(usual.filter(d -> Math.abs(d - own) > SAME), DoubleStream.of(own))
                .sorted()
                .boxed()
                .toList();
    }

    private static List<Picture> pictures(Case c, Catalogue catalogue, List<Double> sizes) {
        Optional<Picture> standOff = CustomaryForce.of(catalogue).flatMap(k -> StandOffPicture.of(c, k, sizes));
        return List.of(standOff, LoadPicture.of(c), FoldPicture.of(c), WirePicture.of(c)).stream()
                .flatMap(Optional::stream)
                .toList();
    }
}
