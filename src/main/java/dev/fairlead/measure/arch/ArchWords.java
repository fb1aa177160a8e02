package dev.fairlead.measure.arch;

import dev.fairlead.measure.archform.ArchFit;
import dev.fairlead.measure.archform.ArchForm;
import dev.fairlead.measure.position.PerimeterGain;
import dev.fairlead.measure.working.Say;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import java.util.Locale;

/** Notes how the form of the arch came about. */
public final class ArchWords {
    private static final String GROUP = "Arch form";
    private static final String TUBES =
            "Width and depth were published for the second molars; here they are taken at the first-molar tubes.";
    private static final String RULE =
            "From landmarks the beta function or the sixth-degree polynomial, whichever leaves the smaller residual"
                    + " SD for the numbers it fits; from widths the polynomial through the canine points, or the beta function where they are missing.";

    private ArchWords() {}

    public static void write(ArchResult r, Case c, PatientArch arch, Workbook book) {
        String from = r.basis() == Basis.LANDMARKS ? "fitted to the landmarks" : "as measured at the first-molar tubes";
        book.add(() -> Working.of(
                "arch.width",
                GROUP,
                "width of the arch",
                r.width(),
                from,
                Say.num(r.width()),
                r.remark(),
                "braun-1998"));
        book.add(() -> Working.of(
                "arch.depth", GROUP, "depth of the arch", r.depth(), from, Say.num(r.depth()), "", "braun-1998"));
        r.drawn().ifPresent(d -> d.fits().forEach(f -> book.add(() -> fit(f))));
        book.add(() -> perimeter(r));
        book.add(() -> form(r, c));
        if (r.drawn().isPresent()) {
            double gain = PerimeterGain.perMm(r.drawn().get().curve());
            book.add(() -> Working.of(
                    "arch.gain-per-mm",
                    GROUP,
                    "perimeter gained per mm of advancement on this arch",
                    Measured.exact(gain, Unit.RATIO),
                    "dL/dD of the curve that is used",
                    Say.num(gain) + " mm per mm",
                    "Published curves give 1.21 to 2.07 mm, the rule of thumb says 2 mm.",
                    "geometry",
                    "mutinelli-2000"));
        }
        wire(r, c, arch, book);
    }

    private static Working fit(ArchFit f) {
        String name = name(f);
        double rms = f.goodness().rms();
        return Working.of(
                "arch.fit." + f.family().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                GROUP,
                "fit of the " + name,
                Measured.exact(rms, Unit.MM),
                "root mean square of the distances at right angles to the curve",
                Say.num(f.curve().width()) + " wide, " + Say.num(f.curve().depth()) + " deep, "
                        + Say.num(f.curve().perimeter())
                        + " along; r = " + Say.num(f.goodness().r()) + ", worst "
                        + Say.num(f.goodness().worst().outside()) + " at "
                        + f.goodness().worst().tooth(),
                f.family().parameters() > 2 ? "Has a number of shape besides width and depth." : "",
                source(f));
    }

    private static String name(ArchFit f) {
        return switch (f.family()) {
            case CIRCLE -> "circle";
            case CONIC ->
                "conic (here " + (f.curve().name().startsWith("arc") ? "an " : "a ")
                        + f.curve().name() + ")";
            default -> f.curve().name();
        };
    }

    private static String source(ArchFit f) {
        return switch (f.family()) {
            case BETA -> "braun-1998";
            case SIXTH_DEGREE -> "noroozi-2001";
            case CATENARY -> "macconaill-scher-1949";
            default -> "curve-geometry";
        };
    }

    private static Working perimeter(ArchResult r) {
        String name = r.drawn().map(d -> d.curve().name()).orElse("curve");
        return Working.of(
                "arch.perimeter",
                GROUP,
                "length of the arch",
                r.perimeter(),
                "length of the " + name + " that is used",
                "from " + r.basis().words(),
                RULE + " " + TUBES,
                "braun-1998",
                "noroozi-2001");
    }

    private static Working form(ArchResult r, Case c) {
        ArchForm.CutOffs k = ArchForm.CutOffs.OWN_CONVENTION;
        String words = r.drawn().map(d -> d.shape().words()).orElse("");
        String cutOffs = "Square up to " + Say.num(k.squareTo()) + ", ovoid from " + Say.num(k.ovoidFrom()) + " to "
                + Say.num(k.ovoidTo())
                + ", tapered from " + Say.num(k.taperedFrom())
                + "; what lies between belongs to no class. The cut-offs are a convention"
                + " of this tool: none was published for this index at the first-molar tubes.";
        String preform = c.wire().formClass().known()
                ? " The preformed arch is called " + c.wire().formClass().get().word() + "."
                : "";
        return Working.of(
                "arch.form-index",
                GROUP,
                "form index",
                r.formIndex(),
                "(Dc / Dm) / (Wc / Wm)",
                words,
                cutOffs + preform,
                "form-index-2019",
                "common-practice");
    }

    private static void wire(ArchResult r, Case c, PatientArch arch, Workbook book) {
        FormMisfit misfit = FormMisfit.of(c, arch);
        String note = c.bench().misfitRms().known() || c.bench().misfitWorst().known()
                ? "Measured on the bench as well; the measured figures are judged."
                : "The wire is slid forward or back to where it fits best.";
        String at = r.drawn()
                .flatMap(ArchResult.Drawn::wire)
                .map(w -> w.misfit().words())
                .orElse("");
        String too = r.drawn()
                .flatMap(ArchResult.Drawn::wire)
                .filter(w -> w.misfit().shortBy() > 0)
                .map(w -> " It is " + Say.num(w.misfit().shortBy()) + " mm too short at one end of the arch.")
                .orElse("");
        book.add(() -> Working.of(
                "arch.wire-misfit-rms",
                GROUP,
                "misfit of the wire's form, root mean square",
                misfit.rms(),
                "distances of the arch at right angles to a sixth-degree curve of the wire's width, depth and canine width",
                at,
                note + too,
                "noroozi-2001",
                "geometry"));
        book.add(() -> Working.of(
                "arch.wire-misfit-worst",
                GROUP,
                "misfit of the wire's form, worst place",
                misfit.worst(),
                "largest of these distances",
                at,
                "",
                "geometry"));
        r.drawn()
                .flatMap(ArchResult.Drawn::wire)
                .ifPresent(w -> book.add(() -> Working.of(
                        "arch.wire-reshaping",
                        GROUP,
                        "change of canine width that makes the wire follow the arch",
                        Measured.exact(w.change().atCanines(), Unit.MM),
                        "arch - wire at equal lengths from the midline mark",
                        w.change().words(),
                        "Canines, molars and front together; a change below 0.25 mm is no bend.",
                        "geometry",
                        "common-practice")));
        book.add(() -> Working.of(
                "arch.wire-misfit-rms-after",
                GROUP,
                "misfit after the folds were bent, root mean square",
                c.bench().misfitRmsAfter(),
                "as measured on the model",
                Say.num(c.bench().misfitRmsAfter()),
                "",
                "common-practice"));
        book.add(() -> Working.of(
                "arch.wire-misfit-worst-after",
                GROUP,
                "misfit after the folds were bent, worst place",
                c.bench().misfitWorstAfter(),
                "as measured on the model",
                Say.num(c.bench().misfitWorstAfter()),
                "",
                "common-practice"));
    }
}
