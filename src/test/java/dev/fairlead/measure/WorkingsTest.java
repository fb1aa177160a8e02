package dev.fairlead.measure;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fairlead.findings.Numbers;
import dev.fairlead.measure.working.Workbook;
import dev.fairlead.measure.working.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Workings of a full case: each can be followed, and its sources stand in the bibliography. */
class WorkingsTest {
    private static List<Working> workings(CaseBuilder b) {
        return Measures.of(b.build(), Optional.empty(), Workbook.kept()).workings();
    }

    private static Working by(String id, List<Working> all) {
        return all.stream().filter(w -> w.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(id));
    }

    @Test
    void eachHasFormulaTitleAndSourcesThatExist() throws IOException {
        JsonNode sources =
                new ObjectMapper().readTree(Path.of("rules/sources.json").toFile());
        List<Working> all = workings(SampleCase.full());
        assertThat(all).extracting(Working::id).doesNotHaveDuplicates();
        for (Working w : all) {
            assertThat(w.title()).as(w.id()).isNotBlank();
            assertThat(w.formula()).as(w.id()).isNotBlank();
            assertThat(w.sources()).as(w.id()).isNotEmpty().allMatch(sources::has);
            assertThat(w.substituted()).as(w.id()).doesNotContain("?");
        }
    }

    /**
     * Every working of a whole case, and of three others what differs from it, so that none is lost or changed
     * unnoticed. After a change that is meant, run with {@code -Dfairlead.accept=true} and read the difference.
     */
    @Test
    void everyWorkingIsTheOneThatIsKept() throws IOException {
        StringBuilder all = new StringBuilder();
        CaseBuilder byRule = SampleCase.full();
        byRule.drop("/images/");
        Map<String, CaseBuilder> cases = new LinkedHashMap<>();
        cases.put("whole", SampleCase.full());
        cases.put(
                "without films of teeth, wide upper front",
                byRule.set("/teeth/13/width", 9.5).set("/teeth/23/width", 9.5));
        cases.put(
                "no population, no row",
                SampleCase.full()
                        .set("/child/population", CaseBuilder.NOT_APPLICABLE)
                        .without("/plan/percentile"));
        cases.put("empty", new CaseBuilder());
        List<String> whole = lines(SampleCase.full());
        cases.forEach((name, b) -> {
            all.append("# ").append(name).append('\n');
            lines(b).stream()
                    .filter(line -> name.equals("whole") || !whole.contains(line))
                    .forEach(line -> all.append(line).append('\n'));
        });
        Path kept = Path.of("src/test/resources/expected-workings.txt");
        if (Boolean.getBoolean("fairlead.accept")) {
            Files.writeString(kept, all);
        }
        assertThat(all.toString()).isEqualTo(Files.readString(kept));
    }

    private static List<String> lines(CaseBuilder b) {
        return workings(b).stream()
                .map(w -> String.join(
                        " | ",
                        w.id(),
                        w.title(),
                        w.value().known()
                                ? Numbers.text(w.value(), 3)
                                : Numbers.text(w.value()) + " " + w.value().missing(),
                        w.formula(),
                        w.substituted(),
                        w.note()))
                .toList();
    }

    @Test
    void numbersAreShownAsTheyWereUsed() {
        List<Working> all = workings(SampleCase.full().incisors(5.9, 5.4, 5.5, 6.0));
        assertThat(by("space.incisor-sum", all).substituted()).isEqualTo("5.9 + 5.4 + 5.5 + 6");
        assertThat(by("space.prediction.tanaka-johnston.left", all).substituted())
                .isEqualTo("22.8 / 2 + 10.5");
        assertThat(by("space.prediction.regression.left", all).substituted()).isEqualTo("11.71 + 0.44 x 22.8");
        assertThat(by("space.required.left", all).formula()).isEqualTo("by radiograph");
        assertThat(by("space.irregularity", all).note()).contains("moderate");
        assertThat(by("position.inclination-after", all).substituted())
                .isEqualTo("88.5 + asin(sin(lean) + 1.75 / 22) - lean");
        List<Working> noCentre = workings(SampleCase.full().without("/headFilm/tippingRadius"));
        assertThat(by("position.inclination-after", noCentre).substituted()).isEqualTo("88.5 + 2.9 x 1.75");
    }

    @Test
    void anUnknownValueShowsNoSubstitution() {
        for (Working w : workings(new CaseBuilder())) {
            // what is expected of any child is known before anything is read of this one, and says so
            boolean anyChild = w.id().startsWith("schedule.response.");
            assertThat(w.value().known()).as(w.id()).isEqualTo(anyChild);
            assertThat(w.substituted()).as(w.id()).isEqualTo(anyChild ? "65" : "");
        }
    }

    /**
     * Bolton 1958: a mean of 77.2 %, from which the front that is too wide for the other follows; uppers make 45.9 mm.
     */
    @ParameterizedTest
    @CsvSource({"7, lower, 1.5652", "6, upper, 0.5632"})
    void theFrontThatIsTooWideIsNamedWithItsExcess(double canine, String front, double excess) {
        CaseBuilder b = SampleCase.full();
        for (int tooth : new int[] {33, 43}) {
            b.set("/teeth/" + tooth + "/state", "erupted").set("/teeth/" + tooth + "/width", canine);
        }
        // lowers 23.0 mm with twice the canine: 37 - 0.772 x 45.9, and 45.9 - 35 x 100 / 77.2
        Working w = by("space.anterior-excess", workings(b));
        assertThat(w.title()).isEqualTo("excess of the " + front + " front teeth");
        assertThat(w.value().value()).isCloseTo(excess, org.assertj.core.api.Assertions.within(1e-4));
        assertThat(w.formula()).startsWith(front + " six");
    }

    @Test
    void anUnwantedWorkbookStaysEmptyAndChangesNoFact() {
        var kept = Measures.of(SampleCase.full().build(), Optional.empty(), Workbook.kept());
        var none = Measures.of(SampleCase.full().build(), Optional.empty(), Workbook.none());
        assertThat(none.workings()).isEmpty();
        assertThat(none.facts()).isEqualTo(kept.facts());
    }

    @Test
    void commonSumStandsOnlyWhereIncisorWidthsAreMissing() {
        // canine 8, premolars 8 and 7 mm (common practice): 22.3 - 23 = -0.7
        CaseBuilder b = SampleCase.full();
        b.drop("/images/");
        assertThat(by("holding.spare.left", workings(b)).note()).isEmpty();
        List<Working> oneMissing = workings(b.without("/teeth/41/width"));
        assertThat(by("holding.spare.left", oneMissing).value().known()).isFalse();
        Working w = by("holding.spare-of-sum.left", oneMissing);
        assertThat(w.value().value()).isCloseTo(-0.7, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(w.title()).contains("customary sum");
    }
}
