package dev.fairlead.picture.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.measure.picture.PictureMeasures;
import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.measure.picture.PictureScaling;
import dev.fairlead.measure.picture.PlacedPoint;
import dev.fairlead.measure.picture.Scales;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.picture.read.PictureFiles;
import dev.fairlead.picture.read.PointTable;
import dev.fairlead.picture.read.PointTables;
import dev.fairlead.picture.read.ReadPicture;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The pictures drawn of a demo case give its own numbers again. */
class DemoPictureTest {
    private static Case demo() throws Exception {
        return CaseReader.read(Path.of("cases/heron-07-clean.yaml")).value().orElseThrow();
    }

    private static List<PlacedPoint> points(DemoPicture p) {
        return p.points().entrySet().stream()
                .filter(e -> !e.getKey().startsWith("R"))
                .map(e -> PlacedPoint.flat(e.getKey(), e.getValue()[0], e.getValue()[1]))
                .toList();
    }

    private static PictureScaling ruler(DemoPicture p) {
        double[] a = p.points().get("R1");
        double[] b = p.points().get("R2");
        return Scales.knownLength(a[0], a[1], b[0], b[1], 40, false, 0, Double.POSITIVE_INFINITY);
    }

    private static int found(Case c, PictureResult r) {
        int n = 0;
        for (var v : r.values()) {
            if (!v.pointer().isEmpty()) {
                Measured known = (Measured) Edit.get(c, v.pointer());
                assertThat(v.value()).as(v.title()).isCloseTo(known.value(), within(v.unit() == Unit.MM ? 1e-5 : 1e-6));
                n++;
            }
        }
        return n;
    }

    @Test
    void theArchGivesTheNumbersOfItsCase() throws Exception {
        Case c = demo();
        DemoPicture p = DemoPicture.arch(ArchSketch.of(c));
        PictureResult r = PictureMeasures.of(PictureKind.ARCH_PICTURE, points(p), List.of(), ruler(p), 0.65);
        assertThat(found(c, r)).isEqualTo(6 + 2 + 5 + 4 + 4 + 4);
        assertThat(r.doubts()).isEmpty();
    }

    /** The labial points lie in front of the edges, and the form through them in front of both. */
    @Test
    void theArchFormRunsBeforeTheEdges() throws Exception {
        Sketch sketch = ArchSketch.of(demo());
        for (int n : new int[] {42, 41, 31, 32}) {
            assertThat(sketch.points().get("L" + n)[1])
                    .as("labial point of " + n)
                    .isGreaterThan(sketch.points().get("E" + n)[1] + 1.5);
        }
    }

    @Test
    void theFilmGivesTheNumbersOfItsCase() throws Exception {
        Case c = demo();
        DemoPicture p = DemoPicture.film(FilmSketch.of(c));
        PictureResult r =
                PictureMeasures.of(PictureKind.LATERAL_CEPHALOGRAM, points(p), List.of(), ruler(p), FilmSketch.SHARE);
        assertThat(found(c, r)).isEqualTo(8);
    }

    @Test
    void everyFileIsReadByItsReader() throws Exception {
        Case c = demo();
        Map<String, byte[]> files = DemoFiles.of(c);
        ReadPicture arch = PictureFiles.read(files.get("arch.png"));
        assertThat(arch.image().getWidth()).isGreaterThan(800);
        assertThat(PictureFiles.read(files.get("film.png")).image().getHeight()).isGreaterThan(500);
        PointTable table = PointTables.read(files.get("arch-points.csv"));
        PictureResult r =
                PictureMeasures.of(table.kind(), table.points(), List.of(), new PictureScaling.Millimetres(), 0.65);
        assertThat(r.doubts()).isEmpty();
        assertThat(r.values())
                .filteredOn(v -> !v.pointer().isEmpty())
                .hasSize(25)
                .allSatisfy(v -> {
                    Measured known = (Measured) Edit.get(c, v.pointer());
                    assertThat(v.value()).isCloseTo(known.value(), within(1e-3));
                });
    }

    @Test
    void aCaseWithoutItsNumbersIsNotDrawn() {
        Case c = CaseReader.read(
                        "{\"fairlead\":1,\"id\":\"a-1\"}".getBytes(StandardCharsets.UTF_8), "a.json", CaseFormat.JSON)
                .value()
                .orElseThrow();
        assertThatThrownBy(() -> DemoFiles.of(c)).hasMessageContaining("/arch/molarDepth");
    }
}
