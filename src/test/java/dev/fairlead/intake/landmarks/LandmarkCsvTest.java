package dev.fairlead.intake.landmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.model.Landmark;
import dev.fairlead.model.Tooth;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LandmarkCsvTest {
    private static LandmarkCsv.Points read(String text) {
        return LandmarkCsv.read(text.getBytes(StandardCharsets.UTF_8), "points.csv");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tooth,x,y\n31,2.7,25.1\n41,-2.7,25\n",
                "Tooth;X;Y\r\n31;2,7;25,1\r\n41;-2,7;25\r\n",
                "\uFEFFtooth\tx\ty\n31\t2.7\t25.1 mm\n\n41\t-2.7\t25\n",
                "x,y,tooth\n2.7,\"25,1\",31\n-2.7,25,41"
            })
    void pointsAreReadWhateverDividesThem(String text) {
        LandmarkCsv.Points p = read(text);
        assertThat(p.problems()).isEmpty();
        assertThat(p.value().orElseThrow()).hasSize(2);
        Landmark first = p.value().orElseThrow().get(0);
        assertThat(first.tooth().get()).isEqualTo(Tooth.of(31));
        assertThat(first.x().value()).isEqualTo(2.7);
        assertThat(first.y().value()).isEqualTo(25.1);
        assertThat(first.x().sources()).containsExactly("/landmarks/0/x");
        assertThat(first.z().missing()).containsExactly("/landmarks/0/z");
    }

    @Test
    void everyProblemIsToldWithItsLine() {
        LandmarkCsv.Points p = read("tooth,x,y,z\n31,2.7,25.1,0\n24a,1,1,0\nLL2,900,one,\n,1,2,3\n");
        assertThat(p.value()).isEmpty();
        assertThat(p.problems())
                .extracting(Problem::pointer, Problem::line)
                .containsExactlyInAnyOrder(
                        tuple("/landmarks/1/tooth", 3),
                        tuple("/landmarks/2/tooth", 4),
                        tuple("/landmarks/2/x", 4),
                        tuple("/landmarks/2/y", 4),
                        tuple("/landmarks/3/tooth", 5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "tooth,x\n31,1\n",
                "tooth,x,y\n",
                "tooth,x,x\n31,1,1\n",
                "tooth,x,y,patientName\n31,1,1,z\n",
                "31,1,1\n",
                "tooth,x,y\n31,2,7,25\n",
                "tooth,x,y\n31,\"1,2\n"
            })
    void whatIsNoSuchTableIsRefused(String text) {
        LandmarkCsv.Points p = read(text);
        assertThat(p.value()).isEmpty();
        assertThat(p.problems()).isNotEmpty();
    }

    @Test
    void aMirroredTableIsDoubted() {
        LandmarkCsv.Points p = read("tooth,x,y\n33,-12,20\n43,12,20\n");
        assertThat(p.value()).isPresent();
        assertThat(p.problems()).extracting(Problem::severity).containsExactly(Severity.DOUBT);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            tooth,x,y¶31,900,1              |                    | "900"                        |
            tooth,x,y¶31,one,1              | /landmarks/0/x     | "one"                        |
            tooth,x,y¶31,1 kg,1             | /landmarks/0/x     | the unit "kg"                |
            tooth,x,y¶31,012,1              | /landmarks/0/x     | "012"                        | a wire size in thousandths of an inch, as it is said
            tooth,x,y,yy¶31,1,1,1           |                    | "yy"                         | a slip in writing y
            tooth,x,y,mother¶31,1,1,1       |                    | a field that may tell who the patient is |
            tooth,x,y¶31,1,2,5              | /landmarks/0       | 4 values                     | a decimal comma in a table that is divided by commas
            tooth,point,x,y¶31,labail,1,2   | /landmarks/0/point | "labail"                     | a slip in writing labial
            tooth,point,x,y¶31,nowhere,1,2  | /landmarks/0/point | "nowhere"                    |
            x,y,tooth¶1,2                   | /landmarks/0/tooth | nothing                      |
            tooth,x,y¶unknown,1,2           | /landmarks/0/tooth | nothing                      |
            tooth,x,y                       |                    | a heading only               |
            tooth,x¶31,1                    |                    | none                         |
            tooth,x,y¶31,"1,2               |                    | text that is no table with , |
            """)
    void aRowThatDoesNotFitIsToldWithWhatItSays(String table, String pointer, String found, String slip) {
        LandmarkCsv.Points p = read(table.replace('¶', '\n') + "\n");
        assertThat(p.value()).isEmpty();
        assertThat(p.problems()).anySatisfy(x -> {
            assertThat(x.found()).isEqualTo(found);
            if (pointer != null) {
                assertThat(x.pointer()).isEqualTo(pointer);
            }
            if (slip != null) {
                assertThat(x.slip()).contains(slip);
            }
        });
    }

    @Test
    void twoThousandPointsAreTaken() {
        String most = "tooth,x,y\n" + "31,1,2\n".repeat(2000);
        assertThat(read(most).value().orElseThrow()).hasSize(2000);
        assertThat(read(most + "31,1,2\n").problems())
                .extracting(Problem::expected)
                .containsExactly("at most 2000 points");
    }

    @Test
    void aPointLiesWithinHalfAMetreAndHasAName() {
        Landmark far = read("tooth,point,x,y\n31,Labial,500,-500\n")
                .value()
                .orElseThrow()
                .get(0);
        assertThat(far.x().value()).isEqualTo(500);
        assertThat(far.y().value()).isEqualTo(-500);
        assertThat(far.point().get().word()).isEqualTo("labial");
        assertThat(read("tooth,x,y\n31,500.1,1\n").problems()).hasSize(1);
        assertThat(read("tooth,x,y\n31,1,2\n31,\"1,2\n").problems())
                .extracting(Problem::line)
                .singleElement()
                .satisfies(line -> assertThat(line).isGreaterThan(1));
    }
}
