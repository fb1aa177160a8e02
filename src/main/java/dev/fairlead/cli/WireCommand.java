package dev.fairlead.cli;

import dev.fairlead.drawing.Picture;
import dev.fairlead.intake.spelling.Quantities;
import dev.fairlead.measure.wire.WireForces;
import dev.fairlead.model.Case;
import dev.fairlead.model.Unit;
import dev.fairlead.report.picture.CustomaryForce;
import dev.fairlead.report.picture.FoldPicture;
import dev.fairlead.report.picture.LoadPicture;
import dev.fairlead.report.picture.StandOffPicture;
import dev.fairlead.report.picture.WirePicture;
import dev.fairlead.report.wire.WireJson;
import dev.fairlead.report.wire.WireReport;
import dev.fairlead.report.wire.WireText;
import dev.fairlead.rules.catalogue.Catalogue;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * Prints where the marks of a case's wire fall, how its folds open, and what force it has as far as that can be known.
 */
@Command(
        name = "wire",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description =
                "Print the wire of a case: marks, blank, folds, and the band of force and stress by the beam model.")
final class WireCommand implements Callable<Integer> {
    /** Diameters of archwire, mm, as in the case format. */
    private static final double THINNEST = 0.3;

    private static final double THICKEST = 0.8;
    /** No archwire is as thin as this in mm, and none as thick in inches: below it a bare number is inches. */
    private static final double INCHES_BELOW = 0.1;

    private final Console console;

    @Mixin
    private CaseOption subject;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private PlainForm form;

    @Option(
            names = "--visit",
            paramLabel = "N",
            description = "Take the stand-offs measured at this visit, from 1; else the planned stand-off.")
    private Integer visit;

    @Option(
            names = "--sizes",
            paramLabel = "LIST",
            description =
                    "Wires to compare, such as 0.016,0.018,0.020 or \"0.45 mm; 0.020 in\"; a bare number below 0.1 is inches.")
    private String sizes;

    @Option(
            names = "--pictures",
            paramLabel = "FOLDER",
            description =
                    "Also write wire, folds, the fall of the force, and force against stand-off as SVG into this folder.")
    private Path pictures;

    @Mixin
    private TargetOption target;

    @Mixin
    private RulesOption rules;

    WireCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Double> others = sizes == null
                ? List.of()
                : Arrays.stream(sizes.split(sizes.contains(";") ? ";" : ","))
                        .map(WireCommand::size)
                        .toList();
        Case c = subject.readCase(console);
        Catalogue catalogue = rules.load().catalogue();
        WireReport report = WireReport.of(c, catalogue, index(c), others);
        console.out().print(form == PlainForm.json ? WireJson.of(report).toPrettyString() + "\n" : WireText.of(report));
        if (pictures != null) {
            WireForces forces = visit == null ? WireForces.planned(c) : WireForces.atVisit(c, visit - 1);
            Optional<Picture> standOff = CustomaryForce.of(catalogue).flatMap(k -> StandOffPicture.of(c, k, others));
            List.of(WirePicture.of(c), FoldPicture.of(c), LoadPicture.of(forces), standOff)
                    .forEach(p -> p.ifPresent(this::write));
        }
        return ExitCode.CLEAN;
    }

    private void write(Picture picture) {
        Path file = pictures.resolve(picture.id() + ".svg");
        target.guard(file, List.of(subject.name()));
        WholeFile.write(file, picture.svg().getBytes(StandardCharsets.UTF_8));
        console.err().println("Wrote " + file);
    }

    private OptionalInt index(Case c) {
        if (visit == null) {
            return OptionalInt.empty();
        }
        if (visit < 1 || visit > c.visits().size()) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "The case has " + c.visits().size() + (c.visits().size() == 1 ? " visit" : " visits")
                            + "; there is no visit " + visit + ".");
        }
        return OptionalInt.of(visit - 1);
    }

    private static double size(String typed) {
        Quantities.Typed read = Quantities.read(typed.strip(), Unit.MM, THINNEST, THICKEST);
        double mm = read.ok() && !read.unitStated() && read.value() < INCHES_BELOW
                ? Quantities.read(typed.strip() + " in", Unit.MM, THINNEST, THICKEST)
                        .value()
                : read.value();
        if (!read.ok() || !(mm >= THINNEST && mm <= THICKEST)) {
            throw new Main.Stop(
                    ExitCode.USAGE,
                    "--sizes: "
                            + (read.ok()
                                    ? "\"" + typed.strip()
                                            + "\" is no archwire; sizes go from 0.3 to 0.8 mm (0.012 to 0.031 in)"
                                    : read.complaint() + (read.mend().isEmpty() ? "" : "; " + read.mend()))
                            + ".");
        }
        return mm;
    }
}
