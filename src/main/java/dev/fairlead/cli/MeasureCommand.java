package dev.fairlead.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.drawing.Wrap;
import dev.fairlead.intake.spelling.Visible;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.measure.picture.PictureMeasures;
import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.measure.picture.PictureScaling;
import dev.fairlead.measure.picture.PointGuide;
import dev.fairlead.measure.picture.PointHelp;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.picture.demo.DemoFiles;
import dev.fairlead.picture.into.CaseOffers;
import dev.fairlead.picture.into.MeasuredText;
import dev.fairlead.picture.into.Offer;
import dev.fairlead.picture.into.Origin;
import dev.fairlead.picture.read.PointTable;
import dev.fairlead.picture.read.PointTables;
import dev.fairlead.picture.read.UnfitFileException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** From tables of named points to numbers, and into a case. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Work out readings from tables of named points (CSV, FCSV, JSON), with their errors, and put them into a case.",
            "Pictures, films and scans, on which points are still to be placed, are measured on the page: serve, then Measure."
        })
final class MeasureCommand implements Callable<Integer> {
    private static final int MOST_BYTES = 1_000_001;

    private final Console console;

    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description = "Tables of points in mm; with --demo-pictures a case.")
    private List<Path> files = List.of();

    @Option(
            names = "--into",
            paramLabel = "CASE",
            description = "Put the readings into this case file. A field that holds readings stays as it is.")
    private Path into;

    @Option(
            names = "--beside",
            description = "Where readings were typed, put the new one beside them, as one more; none is replaced.")
    private boolean beside;

    @Option(
            names = "--tipping-share",
            paramLabel = "SHARE",
            defaultValue = "0.65",
            description = "Where the lower incisor tips, as a share of edge to apex (default ${DEFAULT-VALUE}).")
    private double share;

    @Option(names = "--date", paramLabel = "DAY", description = "The day of measuring (default today).")
    private LocalDate date;

    @Option(
            names = "--format",
            paramLabel = "FORM",
            defaultValue = "text",
            description = "${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private PlainForm form;

    @Option(names = "--points", description = "List the names of all points, and where they lie.")
    private boolean points;

    @Option(
            names = "--demo-pictures",
            paramLabel = "DIR",
            description = "Draw a picture, a film, a scan and a table of points of the case FILE, to try measuring on.")
    private Path demo;

    @Mixin
    private TargetOption target;

    MeasureCommand(Console console) {
        this.console = console;
    }

    private record Read(Path file, PointTable table, PictureResult result) {}

    @Override
    public Integer call() {
        if (points) {
            console.out().print(guide());
            return ExitCode.CLEAN;
        }
        if (files.isEmpty()) {
            throw new Main.Stop(ExitCode.USAGE, "measure needs a table of points, or --points.");
        }
        if (demo != null) {
            return draw();
        }
        List<Read> all = new ArrayList<>();
        boolean unfit = false;
        for (Path file : files) {
            try {
                PointTable table = PointTables.read(bytes(file));
                all.add(new Read(file, table, result(table)));
            } catch (UnfitFileException e) {
                console.err().println(WholeFile.shown(file) + ": " + Visible.of(e.getMessage()) + ". " + e.mend());
                unfit = true;
            }
        }
        if (unfit) {
            return ExitCode.UNREADABLE;
        }
        if (form == PlainForm.json) {
            ArrayNode out = JsonNodeFactory.instance.arrayNode();
            for (Read r : all) {
                ObjectNode one = MeasuredText.json(r.result());
                one.put("file", r.file().getFileName().toString());
                out.add(one);
            }
            console.out().println(out.toPrettyString());
        } else {
            for (Read r : all) {
                r.table()
                        .remarks()
                        .forEach(m -> console.err().println(WholeFile.shown(r.file()) + ": " + Visible.of(m)));
                console.out().print(MeasuredText.text(WholeFile.shown(r.file().getFileName()), r.result()));
            }
            console.out().print(Wrap.hanging("", MeasuredText.CAUTION));
        }
        if (into != null) {
            take(all);
        }
        return ExitCode.CLEAN;
    }

    /** Draws one file of each kind, whose measuring gives the numbers of the case again. */
    private Integer draw() {
        if (files.size() != 1) {
            throw new Main.Stop(ExitCode.USAGE, "--demo-pictures draws one case: name its file.");
        }
        Named named = Named.read(files.get(0).toString());
        if (!named.reading().read()) {
            named.refuse(console);
            return ExitCode.UNREADABLE;
        }
        Map<String, byte[]> drawn;
        try {
            drawn = DemoFiles.of(named.reading().value().get());
        } catch (IllegalArgumentException e) {
            throw new Main.Stop(ExitCode.USAGE, named.name() + ": " + e.getMessage() + ".");
        }
        try {
            Files.createDirectories(demo);
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, WholeFile.shown(demo) + ": cannot be made (" + WholeFile.why(e) + ").");
        }
        drawn.keySet().forEach(name -> target.guard(demo.resolve(name), List.of(named.name())));
        drawn.forEach((name, bytes) -> WholeFile.write(demo.resolve(name), bytes));
        console.err()
                .println("Drew " + String.join(", ", drawn.keySet()) + " in " + WholeFile.shown(demo)
                        + ". The ruler in each picture is 40 mm long.");
        return ExitCode.CLEAN;
    }

    private static byte[] bytes(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MOST_BYTES);
        } catch (IOException e) {
            throw new Main.Stop(ExitCode.USAGE, WholeFile.shown(file) + ": cannot be read (" + WholeFile.why(e) + ").");
        }
    }

    private PictureResult result(PointTable table) throws UnfitFileException {
        try {
            return PictureMeasures.of(table.kind(), table.points(), List.of(), new PictureScaling.Millimetres(), share);
        } catch (IllegalArgumentException e) {
            throw new UnfitFileException(String.valueOf(e.getMessage()), "Look at the points again.");
        }
    }

    private void take(List<Read> all) {
        Named named = Named.read(into.toString());
        if (!named.reading().read()) {
            named.refuse(console);
            throw new Main.Stop(ExitCode.UNREADABLE, "");
        }
        CaseFormat format;
        CaseTree tree;
        String text;
        try {
            text = new String(named.bytes(), StandardCharsets.UTF_8);
            format = CaseFormat.BY_NAME.resolve(into.getFileName().toString(), text);
            tree = CaseTree.parse(text, format);
        } catch (UnreadableTextException e) {
            throw new Main.Stop(ExitCode.UNREADABLE, WholeFile.shown(into) + ": " + e.getMessage());
        }
        LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
        int taken = 0;
        for (Read r : all) {
            List<Offer> offers = CaseOffers.of(
                    tree.read("").value().orElseThrow(), tree, r.result().values());
            List<Offer> takes = new ArrayList<>();
            List<String> there = new ArrayList<>();
            for (Offer o : offers) {
                if (!o.possible()) {
                    console.err().println(o.value().title() + " was not taken: " + o.refusal() + ".");
                } else if (o.beside() && !beside) {
                    there.add(o.value().title() + " (" + o.there() + ")");
                } else {
                    takes.add(o);
                }
            }
            if (!there.isEmpty()) {
                console.err()
                        .print(Wrap.hanging(
                                "",
                                "Not taken, since the case has readings there: " + String.join(", ", there)
                                        + ". --beside puts the new ones beside them."));
            }
            taken += takes.size();
            CaseOffers.put(
                    tree,
                    takes,
                    r.table().kind() == PictureKind.POINT_TABLE ? landmarks(r) : Map.of(),
                    new Origin(PictureKind.POINT_TABLE, day, r.result(), Set.of()));
        }
        if (!tree.read("").errors().isEmpty()) {
            throw new Main.Stop(
                    ExitCode.UNREADABLE,
                    WholeFile.shown(into) + ": with these readings the case could not be read; nothing was written. "
                            + tree.read("").errors().get(0));
        }
        if (taken == 0) {
            console.err().println("Nothing was put into " + WholeFile.shown(into) + ".");
            return;
        }
        WholeFile.write(into, tree.text(format).getBytes(StandardCharsets.UTF_8));
        console.err()
                .println("Put " + taken + (taken == 1 ? " reading" : " readings") + " into " + WholeFile.shown(into)
                        + (format == CaseFormat.YAML && text.contains("#") ? ", without its comments." : "."));
    }

    private static Map<String, double[]> landmarks(Read r) {
        return PictureMeasures.landmarks(
                r.table().kind(), r.table().points(), List.of(), new PictureScaling.Millimetres());
    }

    private static String guide() {
        StringBuilder out = new StringBuilder();
        for (PictureKind kind :
                List.of(PictureKind.ARCH_PICTURE, PictureKind.LATERAL_CEPHALOGRAM, PictureKind.PANORAMIC)) {
            out.append(kind.word().replace('-', ' ').toUpperCase(java.util.Locale.ROOT))
                    .append('\n');
            for (PointHelp p : PointGuide.of(kind)) {
                out.append(Wrap.hanging(
                        String.format("  %-5s", p.name()), p.title() + ". " + p.where() + " (" + p.source() + ")"));
            }
        }
        return out.toString();
    }
}
