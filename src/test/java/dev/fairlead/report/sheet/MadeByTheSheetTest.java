package dev.fairlead.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Finding;
import dev.fairlead.findings.Findings;
import dev.fairlead.measure.CaseBuilder;
import dev.fairlead.measure.SampleCase;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.measure.wire.WireGeometry;
import dev.fairlead.model.Case;
import dev.fairlead.model.Side;
import dev.fairlead.model.Stage;
import dev.fairlead.rules.catalogue.Status;
import dev.fairlead.rules.verdict.Rulebase;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whoever bends a wire by the numbers of the sheet, read to a tenth of a millimetre, passes what the bench asks. */
class MadeByTheSheetTest {
    private static final Rulebase RULES = Rulebase.load(Path.of("rules"));
    private static final Checker CHECKER = new Checker(RULES, Calculations.plain());
    /** Room to the cheek in a mouth with enough of it, mm: the sheet cannot make any. */
    private static final double CHEEK = 4;
    /**
     * What no bending decides: the preform's fit to the arch before and after is that of the form that was chosen, and
     * activation and force are the plan's.
     */
    private static final Set<String> NOT_OF_THE_HAND =
            Set.of("arch-form-fits", "shape-kept", "planned-activation-fits", "planned-force-fits");

    private static double tenth(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** What a step says, as somebody reads it from the paper. */
    private static double number(String step, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(step);
        assertThat(m.find()).as(pattern + " in: " + step).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @ParameterizedTest
    @CsvSource({
        "3.0, 0.50, 0.406, 40, 22",
        "3.0, 0.75, 0.508, 42, 23",
        "3.2, 0.60, 0.457, 43, 24",
        "3.5, 0.75, 0.508, 44, 24",
        "3.5, 1.00, 0.559, 45, 25",
        "4.0, 0.75, 0.508, 46, 25",
        "4.0, 1.25, 0.508, 47, 26",
        "4.5, 0.50, 0.457, 48, 26",
        "4.5, 1.00, 0.559, 49, 27",
        "4.5, 1.25, 0.559, 50, 27"
    })
    void aWireMadeByTheSheetPasses(double tube, double beak, double size, double width, double depth) {
        CaseBuilder b = SampleCase.full()
                .set("/wire/beakRadius", beak)
                .set("/wire/size", size)
                .set("/wire/plannedSize", size)
                .set("/plan/moreOn", "both")
                .set("/arch/molarWidth", width)
                .set("/arch/molarDepth", depth)
                .without("/arch/canineWidth")
                .without("/arch/canineDepth")
                .without("/arch/landmarks");
        for (String side : List.of("left", "right")) {
            b.set("/hardware/" + side + "/length", tube);
        }
        Case planned = b.build();
        WireGeometry sheet = WireGeometry.of(planned);
        List<String> steps = BendingOrderTest.steps(planned);
        b.set("/wire/blankLength", Math.ceil(number(steps.get(0), "at least ([\\d.]+) mm")));
        double leg = number(steps.get(4), "straight leg of ([\\d.]+)");
        double radius = number(steps.get(3), "\\(([\\d.]+) mm radius");
        double height = number(steps.get(6), "to the wire's middle ([\\d.]+)");
        for (Side side : Side.values()) {
            double offset = side == Side.RIGHT
                    ? number(steps.get(2), "along the wire: ([\\d.]+)")
                    : number(steps.get(9), "first bend ([\\d.]+)");
            double first = side == Side.RIGHT
                    ? number(steps.get(2), "^([\\d.]+)")
                    : tenth(sheet.left().tube().value() + tube + offset);
            String at = "/bench/" + side.word();
            double tip = number(steps.get(7), "^([\\d.]+)");
            double clear = number(steps.get(7), "at least ([\\d.]+) mm off the gingiva");
            b.set(at + "/clearGingiva", clear)
                    .set(at + "/clearCheek", CHEEK)
                    .set(at + "/buccalTip", tip)
                    .set(at + "/firstMark", first)
                    .set(at + "/firstBendOffset", offset)
                    .set(at + "/length", leg)
                    .set(at + "/height", height)
                    .set(at + "/bendRadius", radius)
                    .set(at + "/legsOutOfParallel", 0)
                    .set(at + "/outOfSquare", 0);
        }
        assertThat(steps.get(0)).contains("Mark its middle");
        assertThat(steps.get(9)).contains("Only with the right fold seated");
        b.set("/bench/midlineMarked", true)
                .set("/bench/otherSideMarkedSeated", true)
                .set("/bench/passiveGap", number(steps.get(8), "no gap over ([\\d.]+) mm"))
                .set("/bench/rebends", 0);
        Findings found = CHECKER.check(b.build(), "", CheckOptions.USUAL.at(Stage.BENCH))
                .report()
                .findings();
        List<Finding> bench = found.forReading().stream()
                .filter(f -> f.stage() == Stage.BENCH)
                .filter(f -> !NOT_OF_THE_HAND.contains(f.id()))
                .toList();
        assertThat(bench.stream().map(Finding::id).distinct().count())
                .as("criteria of the bench")
                .isEqualTo(RULES.catalogue().criteria(Stage.BENCH).size() - NOT_OF_THE_HAND.size());
        assertThat(bench)
                .allSatisfy(f ->
                        assertThat(f.outcome()).as(f.id() + ": " + f.seen()).isEqualTo(Status.PASS));
    }
}
