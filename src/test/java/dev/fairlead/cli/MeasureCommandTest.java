package dev.fairlead.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.model.Case;
import dev.fairlead.model.Choices.PictureKind;
import dev.fairlead.model.Tooth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables of points become readings, and readings of a case. */
class MeasureCommandTest {
    private static final String POINTS =
            "point,x,y\nM42,-3,20\nD42,-8,17\nD41,-2.4,20.8\nD32,8,17\nM46,-20,1\nM36,20,1\nI,0,22\n";

    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Case read(Path file) throws IOException {
        return CaseReader.read(file).value().orElseThrow();
    }

    @Test
    void numbersAreToldWithErrorsAndWhatTheyWaitFor() throws IOException {
        CasesTest.Run run = CasesTest.run("measure", file("arch.csv", POINTS).toString());
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("Width of 42", "5.83 ± 0.15 mm")
                .contains("Contact 42-41, displacement", "1.00 ± 0.35 mm")
                .contains("Segment left, 32 to 36", "20.00 ± 0.30 mm")
                .contains("Width of 41 waits for M41")
                .contains("licensed clinician");
        assertThat(run.out().lines()).allMatch(l -> l.length() <= 80);
    }

    @Test
    void readingsGoIntoEmptyFieldsWithTheirOrigin() throws IOException {
        Path points = file("arch.csv", POINTS);
        Path c = file("case.json", "{\"fairlead\":1,\"id\":\"a-1\",\"teeth\":{\"42\":{\"width\":5.8}}}");
        CasesTest.Run run = CasesTest.run("measure", points.toString(), "--into", c.toString(), "--date", "2026-03-01");
        assertThat(run.code()).as(run.err()).isZero();
        Case now = read(c);
        assertThat(now.tooth(Tooth.of(42)).width().value())
                .as("typed readings stay")
                .isEqualTo(5.8);
        assertThat(run.err()).contains("Not taken", "Width of 42 (5.8)", "--beside");
        assertThat(now.contacts().c4241().value()).isEqualTo(1);
        assertThat(now.contacts().c4241().sd()).isEqualTo(0.35);
        assertThat(now.pictured()).anySatisfy(p -> {
            assertThat(p.field().get()).isEqualTo("/contacts/42-41");
            assertThat(p.from().is(PictureKind.POINT_TABLE)).isTrue();
            assertThat(p.date().get()).hasToString("2026-03-01");
            assertThat(p.value().value()).isEqualTo(1);
            assertThat(p.sd().value()).isEqualTo(0.35);
        });
        assertThat(now.landmarks()).hasSize(6);
    }

    @Test
    void aReadingBesideATypedOneIsAveragedWithBothErrors() throws IOException {
        Path points = file("arch.csv", POINTS);
        Path c = file("case.yaml", "fairlead: 1\nid: a-1\nteeth: {42: {width: 5.8}}\n");
        assertThat(CasesTest.run("measure", points.toString(), "--into", c.toString(), "--beside")
                        .code())
                .isZero();
        Case now = read(c);
        assertThat(now.tooth(Tooth.of(42)).width().repeats()).containsExactly(5.8, 5.83);
        // a caliper reading has 0.10, the one by picture 0.15: the mean has half of the root of the sum of squares
        assertThat(now.tooth(Tooth.of(42)).width().sd()).isBetween(0.0901, 0.1);
        CasesTest.Run again = CasesTest.run("measure", points.toString(), "--into", c.toString());
        assertThat(again.err()).contains("Nothing was put into");
        assertThat(read(c).tooth(Tooth.of(42)).width().repeats()).hasSize(2);
    }

    /** The same three points as four kinds of table. */
    @Test
    void tablesOfViewersAreReadWithTheirAxes() throws IOException {
        String[] tables = {
            "point;x;y;z;unit\nM42;-0,3;2;0;cm\nD42;-0,8;1,7;0;cm\n",
            "tooth,point,x,y\n42,mesial,-3,20\n42,distal,-8,17\n",
            "# Markups fiducial file version = 4.11\n# CoordinateSystem = LPS\n"
                    + "# columns = id,x,y,z,ow,ox,oy,oz,vis,sel,lock,label,desc,associatedNodeID\n"
                    + "1,-3,-20,4,0,0,0,1,1,1,0,M42,,,2,0\n2,-8,-17,4,0,0,0,1,1,1,0,D42,,,2,0\n",
            "# CoordinateSystem = RAS\n1,3,20,4,0,0,0,1,1,1,0,M42,,\n2,8,17,4,0,0,0,1,1,1,0,D42,,\n",
            "{\"markups\":[{\"type\":\"Fiducial\",\"coordinateSystem\":\"LPS\",\"controlPoints\":["
                    + "{\"label\":\"M42\",\"position\":[-3,-20,4],\"positionStatus\":\"defined\"},"
                    + "{\"label\":\"D42\",\"position\":[-8,-17,4],\"positionStatus\":\"defined\"},"
                    + "{\"label\":\"M43\",\"position\":[0,0,0],\"positionStatus\":\"undefined\"}]}]}",
            "[{\"point\":\"m42\",\"x\":-3,\"y\":20},{\"point\":\"D 42\",\"x\":-8,\"y\":17}]"
        };
        for (String table : tables) {
            CasesTest.Run run =
                    CasesTest.run("measure", file("points.txt", table).toString());
            assertThat(run.out()).as(table + run.err()).contains("Width of 42", "5.83 ± 0.15 mm");
        }
    }

    @Test
    void aTableOfAFilmGivesItsAngles() throws IOException {
        String film = "point,x,y\nPo,0,0\nOr,75,0\nGo,5,-60\nMe,70,-90\nL1a,62,-68\nL1,66,-46\n";
        CasesTest.Run run = CasesTest.run(
                "measure", "--format", "json", file("film.csv", film).toString());
        double expected = Math.toDegrees(Math.atan2(30, 65));
        assertThat(run.out())
                .contains("/headFilm/mandibularPlane", String.valueOf(expected).substring(0, 8));
    }

    @Test
    void whatCannotBeReadIsToldAndNothingIsWritten() throws IOException {
        String[][] bad = {
            {"point,x,y\nM42,1,2\nM42,3,4\n", "twice"},
            {"point,x,y\nM42,1,wide\n", "no number"},
            {"point,x,y,z,unit\nM42,1,2,3,in\n", "unit"},
            {"name,x,y\nJane,1,2\n", "heading"},
            {"# CoordinateSystem = 5\n1,1,2,3,0,0,0,1,1,1,0,M42\n", "which way its axes run"},
            {"[{\"point\":\"M42\",\"x\":1e400,\"y\":2}]", "no place"},
            {"\u0000\u0001", "no table of points"},
            {"{\"a\":", "no JSON"},
            {"point,x,y\n" + "Q,1,2\n".repeat(1001), "more than 1000 points"},
            {"point,x,y\nQ,1,2\n", "no point with a name"},
            {"point,x,y\nM42," + "1".repeat(2000) + ",2\n", "1,000 characters"}
        };
        Path c = file("case.json", "{\"fairlead\":1,\"id\":\"a-1\"}");
        for (String[] b : bad) {
            Path points = file("points.csv", b[0]);
            CasesTest.Run run = CasesTest.run("measure", points.toString(), "--into", c.toString());
            assertThat(run.code()).as(b[1]).isEqualTo(ExitCode.UNREADABLE);
            assertThat(run.err()).contains(b[1]);
        }
        assertThat(c).hasContent("{\"fairlead\":1,\"id\":\"a-1\"}");
    }

    @Test
    void allPointsAreListedWithTheirSource() {
        String out = CasesTest.run("measure", "--points").out();
        assertThat(Arrays.stream(new String[] {"M46", "D42", "Po", "L1a", "F37", "Little 1975"})
                        .filter(p -> !out.contains(p))
                        .collect(Collectors.toList()))
                .isEmpty();
        assertThat(out.lines()).allMatch(l -> l.length() <= 80);
    }
}
