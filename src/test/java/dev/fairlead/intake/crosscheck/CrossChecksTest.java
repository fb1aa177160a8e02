package dev.fairlead.intake.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.bind.Numbering;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Tooth;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrossChecksTest {
    private static CaseReading read(String part) {
        return CaseReader.read(
                ("fairlead: 1\nid: a\nstage: holding\n" + part).getBytes(StandardCharsets.UTF_8), "x", CaseFormat.YAML);
    }

    @Test
    void aPicturedReadingOfAFieldThatTheCaseDoesNotHaveIsTold() {
        CaseReading r = read("pictured:\n- {field: /teeth/42/width}\n- {field: /teeth/42/wdith}\n- {field: /bite}\n"
                + "- {field: /visits/3/left/gapOpened}\n- {field: overjet}\n- {field: /landmarks}\n");
        assertThat(r.doubts())
                .extracting(Problem::pointer)
                .filteredOn(p -> p.startsWith("/pictured"))
                .containsExactly("/pictured/1/field", "/pictured/2/field", "/pictured/3/field", "/pictured/4/field");
        assertThat(r.doubts().get(0).mend()).contains("take this entry out");
    }

    /** ISO 3950:2016: quadrants 1-4 with teeth 1-8, quadrants 5-8 with teeth 1-5; nothing else. */
    @Test
    void onlyTheFiftyTwoNumbersOfIso3950AreTeeth() {
        int teeth = 0;
        for (int n = -1; n <= 200; n++) {
            boolean exists = Set.of(1, 2, 3, 4).contains(n / 10) && n % 10 >= 1 && n % 10 <= 8
                    || Set.of(5, 6, 7, 8).contains(n / 10) && n % 10 >= 1 && n % 10 <= 5;
            assertThat(Numbering.tooth(Integer.toString(n)) != null).as("%d", n).isEqualTo(n > 0 && exists);
            teeth += exists && n > 0 ? 1 : 0;
        }
        assertThat(teeth).isEqualTo(52);
        assertThat(read("teeth: {19: {}}\n").errors().get(0).slip())
                .contains("a number of the Universal system for 36");
    }

    /**
     * Corner points of the ADA's Universal numbering: 1 and 16 upper third molars, 17 and 32 lower ones, 24/25 lower
     * centrals; A, J, K, T second primary molars.
     */
    @ParameterizedTest
    @CsvSource({
        "1,18", "8,11", "9,21", "16,28", "17,38", "19,36", "23,32", "24,31", "25,41", "26,42", "30,46", "32,48", "A,55",
        "E,51", "F,61", "J,65", "K,75", "O,71", "P,81", "T,85", "#3,16", "03,16"
    })
    void universalNumbersAreTranslated(String universal, int iso) {
        assertThat(Numbering.universal(universal)).contains(Tooth.of(iso));
    }

    @Test
    void universalNumbersNameEveryToothOnce() {
        Map<Tooth, String> named = new HashMap<>();
        for (int n = 1; n <= 32; n++) {
            named.put(Numbering.universal(Integer.toString(n)).orElseThrow(), "" + n);
        }
        for (char c = 'A'; c <= 'T'; c++) {
            named.put(Numbering.universal("" + c).orElseThrow(), "" + c);
        }
        assertThat(named).hasSize(52);
        assertThat(Numbering.universal("33")).isEmpty();
        assertThat(Numbering.universal("U")).isEmpty();
    }

    @Test
    void universalNumbersThatAreValidIsoNumbersAreSeenThrough() {
        CaseReading widths = read("teeth: {23: {width: 6.0}, 24: {width: 5.4}, 25: {width: 5.4}, 26: {width: 6.0}}\n");
        assertThat(widths.errors()).extracting(Problem::pointer).containsExactly("/teeth/23");
        assertThat(widths.errors().get(0).mend()).isEqualTo("write 23 as 32, 24 as 31, 25 as 41, 26 as 42");
        assertThat(widths.errors().get(0).line()).isEqualTo(4);
        CaseReading states = read("teeth: {24: {state: erupted}, 25: {state: erupted}}\n");
        assertThat(states.read()).isTrue();
        assertThat(states.doubts()).extracting(Problem::pointer).containsExactly("/teeth/24");
        assertThat(read("hardware:\n  brackets:\n    24: {bonded: true}\n").errors())
                .extracting(Problem::line)
                .containsExactly(6);
        assertThat(read("teeth: {23: {width: 7.8}, 24: {width: 7}, 26: {width: 10.2}, 31: {width: 5.4}}\n")
                        .problems())
                .isEmpty();
    }

    @Test
    void quadrantNotationsAreTranslated() {
        assertThat(read("teeth: {LL1: {}, URc: {}, \"3⏌\": {}}\n").errors())
                .extracting(Problem::mend)
                .containsExactly("write 31", "write 53", "write 13");
    }

    @Test
    void visitsOutOfOrderAreAnErrorAndHoldingOrderIsLeftToItsCriterion() {
        CaseReading r = read("visits:\n- date: 2026-05-01\n- date: unknown\n- date: 2026-04-01\n");
        assertThat(r.read()).isFalse();
        assertThat(r.errors()).extracting(Problem::pointer).containsExactly("/visits/2/date");
        assertThat(r.errors().get(0).line()).isEqualTo(7);
        assertThat(r.errors().get(0).column()).isEqualTo(9);
        assertThat(read("holding: {cemented: 2026-09-01, debonded: 2026-08-01}\n")
                        .problems())
                .isEmpty();
    }

    @Test
    void otherDatesOutOfOrderAreDoubted() {
        CaseReading r = read(
                "date: 2026-03-09\nfilms: {models: 2027-01-05}\nholding: {impression: 2026-02-02, cemented: 2026-02-01}\n");
        assertThat(r.read()).isTrue();
        assertThat(r.doubts()).extracting(Problem::pointer).containsExactly("/films/models", "/holding/cemented");
        assertThat(read("waivers:\n- {date: 2026-05-01, expires: 2026-04-01}\n").errors())
                .extracting(Problem::pointer)
                .containsExactly("/waivers/0/expires");
        assertThat(read("insertion: {date: 2026-05-02}\nvisits:\n- {date: 2026-05-01}\n")
                        .doubts())
                .extracting(Problem::pointer)
                .containsExactly("/visits/0/date");
    }

    @Test
    void swappedSidesAreDoubted() {
        String space = "space: {left: 22, right: 18}\n";
        assertThat(read(space + "visits:\n- {left: {space: 18.5}, right: {space: 22.5}}\n")
                        .doubts())
                .extracting(Problem::pointer)
                .containsExactly("/visits/0/left/space");
        assertThat(read(space + "visits:\n- {left: {space: 22.5}, right: {space: 18.5}}\n")
                        .problems())
                .isEmpty();
        assertThat(read(space + "holding: {spaceLeft: 19, spaceRight: 23}\n").doubts())
                .extracting(Problem::pointer)
                .containsExactly("/holding/spaceLeft");
        String lostLeft = "teeth: {33: {state: missing}, 34: {state: primary-present}, 35: {state: primary-present}, "
                + "43: {state: primary-present}, 44: {state: primary-present}, 45: {state: primary-present}}\n";
        assertThat(read(space + lostLeft).doubts()).extracting(Problem::pointer).containsExactly("/space/left");
        assertThat(read("space: {left: 18, right: 22}\n" + lostLeft).problems()).isEmpty();
        assertThat(read("teeth: {37: {state: missing}}\nfilms: {secondMolarAngleLeft: 12}\n")
                        .doubts())
                .extracting(Problem::pointer)
                .containsExactly("/films/secondMolarAngleLeft");
        assertThat(read("visits:\n- {activated: left, left: {gapOpened: 0}, right: {gapOpened: 1}}\n")
                        .doubts())
                .extracting(Problem::pointer)
                .containsExactly("/visits/0/activated");
        assertThat(read("plan: {moreOn: left, advanceLeft: 1, advanceRight: 2}\n")
                        .doubts())
                .extracting(Problem::pointer)
                .containsExactly("/plan/moreOn");
        assertThat(read("landmarks: [{tooth: 33, x: -12, y: 3}, {tooth: 43, x: 12, y: 3}]\n")
                        .doubts())
                .extracting(Problem::pointer)
                .containsExactly("/landmarks");
    }

    @Test
    void whatAVisitCannotHaveIsDoubted() {
        assertThat(pointers("visits:\n- {activated: none, left: {gapOpened: 0.3}}\n"))
                .containsExactly("/visits/0/left/gapOpened");
        assertThat(pointers("visits:\n- {activated: left, left: {gapOpened: 0.3}, right: {gapOpened: 0.3}}\n"))
                .containsExactly("/visits/0/right/gapOpened");
        assertThat(pointers("visits:\n- {activated: both, left: {gapOpened: 0.3}}\n"))
                .isEmpty();
        assertThat(pointers("visits:\n- {incisorAdvance: 3.0}\n- {incisorAdvance: 1.0}\n"))
                .containsExactly("/visits/1/incisorAdvance");
        assertThat(pointers("visits:\n- {incisorAdvance: 3.0}\n- {incisorAdvance: 2.0}\n"))
                .isEmpty();
        assertThat(pointers("visits:\n- {left: {molarDistal: 2.1}}\n- {left: {molarDistal: 0.2}}\n"))
                .containsExactly("/visits/1/left/molarDistal");
        assertThat(
                        pointers(
                                "visits:\n- {date: 2026-05-01, activated: both}\nholding: {cemented: 2026-04-01, debonded: 2026-04-02}\n"))
                .containsExactly("/holding/cemented", "/holding/debonded");
        assertThat(pointers("visits:\n- {date: 2026-05-01, activated: none}\nholding: {cemented: 2026-04-01}\n"))
                .isEmpty();
    }

    /** Goldberg 1977 and handbooks: steel wire from 154 to 200 GPa. */
    @Test
    void aStandOffForBothSidesAndForOneIsAnError() {
        assertThat(read("plan: {standOff: 1.5, standOffRight: 2.0}\n").errors())
                .extracting(Problem::pointer)
                .containsExactly("/plan/standOff");
        assertThat(read("plan: {standOffLeft: 1.0, standOffRight: 2.0}\n").errors())
                .isEmpty();
        assertThat(read("plan: {standOff: 1.5}\n").errors()).isEmpty();
    }

    @Test
    void valuesThatDoNotGoTogetherAreDoubted() {
        assertThat(pointers("wire: {material: stainless-steel, modulus: 40 GPa}\n"))
                .containsExactly("/wire/modulus");
        assertThat(pointers("wire: {material: stainless-steel, modulus: 154 GPa}\n"))
                .isEmpty();
        assertThat(pointers("wire: {material: stainless-steel, modulus: 200 GPa}\n"))
                .isEmpty();
        assertThat(pointers("wire: {material: nickel-titanium, modulus: 40 GPa}\n"))
                .isEmpty();
        assertThat(pointers("images:\n- {tooth: 34, imageWidth: 8}\n- {tooth: 34, imageWidth: 9}\n"))
                .containsExactly("/images/1/tooth");
    }

    private static java.util.List<String> pointers(String part) {
        CaseReading r = read(part);
        assertThat(r.errors()).isEmpty();
        return r.doubts().stream().map(Problem::pointer).toList();
    }
}
