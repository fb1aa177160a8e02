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
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** What is one day, or a hundredth, on either side of what is doubted; | stands for a line break. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            date: 2026-03-09|films: {headFilm: 2026-03-10}                            ; /films/headFilm
            date: 2026-03-09|films: {panoramic: 2026-03-10}                           ; /films/panoramic
            date: 2026-03-09|films: {panoramic: 2026-03-09, headFilm: 2026-03-09}     ;
            date: 2026-03-09|insertion: {date: 2026-03-10}                            ; /insertion/date
            date: 2026-03-09|visits: [{date: 2026-03-10}]                             ; /visits/0/date
            date: 2026-03-09|holding: {cemented: 2026-03-10}                          ; /holding/cemented
            date: 2026-03-09|holding: {debonded: 2026-03-10}                          ; /holding/debonded
            date: 2026-03-09|waivers: [{date: 2026-03-10}]                            ; /waivers/0/date
            films: {models: 2026-03-02}|insertion: {date: 2026-03-01}                 ; /insertion/date
            films: {models: 2026-03-02}|insertion: {date: 2026-03-02}                 ;
            insertion: {date: 2026-03-02}|holding: {impression: 2026-03-01}           ; /holding/impression
            insertion: {date: 2026-03-02}|holding: {debonded: 2026-03-01}             ; /holding/debonded
            visits: [{date: 2026-03-01}, {date: 2026-03-01}]                          ; /visits/1/date
            visits: [{date: 2026-03-01}, {}, {date: 2026-03-02}]                      ;
            waivers: [{date: 2026-03-01, expires: 2029-03-01}]                        ; /waivers/0/expires
            waivers: [{date: 2026-03-01, expires: 2029-02-28}]                        ;
            date: 2026-03-09|films: {models: 2014-03-09}                              ; /films/models
            date: 2026-03-09|films: {models: 2014-03-10}                              ;
            hardware: {brackets: {34: {bonded: true}, 31: {bonded: true}}}            ; /hardware/brackets/34
            teeth: {24: {state: erupted}, 26: {width: 7.9}}                           ; error /teeth/24
            teeth: {24: {state: erupted}, 26: {width: 8.0}}                           ; /teeth/24
            teeth: {23: {width: 6.5}, 24: {width: 6.5}, 25: {state: erupted}}         ; error /teeth/23
            teeth: {23: {width: 6.6}, 24: {width: 6.5}}                               ; /teeth/23
            teeth: {23: {width: 6.0}, 24: {state: erupted}}                           ; /teeth/23
            teeth: {24: {keratinised: 3}, 25: {state: erupted}}                       ; error /teeth/24
            teeth: {24: {state: erupted}, 25: {state: erupted}, 16: {state: erupted}} ;
            wire: {material: stainless-steel, modulus: 139 GPa}                       ; /wire/modulus
            wire: {material: stainless-steel, modulus: 140 GPa}                       ;
            wire: {material: nickel-free-steel, modulus: 220 GPa}                     ;
            wire: {material: nickel-free-steel, modulus: 221 GPa}                     ; /wire/modulus
            visits: [{activated: none, left: {gapOpened: 0}}]                         ;
            visits: [{activated: left, left: {gapOpened: 0}, right: {gapOpened: 0}}]  ;
            visits: [{activated: right, left: {gapOpened: 1}, right: {gapOpened: 0}}] ; /visits/0/activated
            visits: [{activated: right, left: {gapOpened: 0}, right: {gapOpened: 1}}] ;
            plan: {moreOn: right, advanceLeft: 2, advanceRight: 1}                    ; /plan/moreOn
            plan: {moreOn: right, advanceLeft: 1, advanceRight: 2}                    ;
            plan: {moreOn: right, advanceLeft: 2, advanceRight: 2}                    ;
            plan: {moreOn: left, advanceLeft: 2, advanceRight: 2}                     ;
            teeth: {47: {state: missing}}|films: {secondMolarAngleRight: 12}          ; /films/secondMolarAngleRight
            teeth: {47: {state: missing}}|films: {secondMolarAngleRight: 12, secondMolarAngleLeft: 9}  ;
            teeth: {47: {state: missing}, 37: {state: missing}}|films: {secondMolarAngleRight: 12}     ;
            teeth: {47: {state: erupted}}|films: {secondMolarAngleRight: 12}          ;
            """)
    void doubtsBeginWhereTheyShould(String part, String told) {
        assertThat(told(part)).isEqualTo(told == null ? "" : told);
    }

    private static final String SPACES = "space: {left: 22, right: 18}|";

    /** Sides are exchanged where that fits better by 3 mm in all, and by the number and width of the teeth. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
            22, 18 ; visits: [{left: {space: 20}, right: {space: 21.5}}]     ; /visits/0/left/space
            22, 18 ; visits: [{left: {space: 20}, right: {space: 21.4}}]     ;
            22, 17 ; visits: [{left: {space: 20}, right: {space: 18}}]       ;
            22, 18 ; visits: [{left: {space: 18.4}, right: {space: 22.4}}, {left: {space: 18.5}, right: {space: 22.5}}] ; /visits/0/left/space
            22, 18 ; visits: [{left: {space: 21.9}}, {left: {space: 18.4}, right: {space: 22.4}}]                       ; /visits/1/left/space
            22, 18 ; visits: [{right: {space: 18.1}}, {left: {space: 18.4}, right: {space: 22.4}}]                      ; /visits/1/left/space
            22, 18 ; mmm eee ; /space/left
            21, 18 ; mmm eee ;
            18, 22 ; eee mmm ; /space/left
            18, 21 ; eee mmm ;
            22, 18 ; eem eee ; /space/left
            22, 18 ; eee eee ;
            18, 22 ; eee eee ;
            22, 18 ; ??? eee ;
            18, 22 ; eee ??? ;
            18.5, 24.5 ; eee eee 33=8 34=8 35=8.5 43=6 44=6 45=6.5           ; /space/left
            24.5, 18.5 ; eee eee 33=8 34=8 35=8.5 43=6 44=6 45=6.5           ;
            18.5, 26.5 ; ppp eee 73=6.5 74=9 75=11 43=6 44=6 45=6.5          ; /space/left
            18.5, 26.5 ; ppp eee 33=8 34=8 35=8.5 43=6 44=6 45=6.5           ;
            """)
    void sidesThatFitCrosswiseAreDoubted(String spaces, String rest, String told) {
        String[] s = spaces.split(", ");
        String part = rest.startsWith("visits") ? rest : teeth(rest);
        assertThat(told("space: {left: " + s[0] + ", right: " + s[1] + "}|" + part))
                .isEqualTo(told == null ? "" : told);
    }

    /** Such as "eem eee 33=8": states of 33 to 35 and 43 to 45, then widths. */
    private static String teeth(String text) {
        Map<Integer, String> teeth = new TreeMap<>();
        Map<Character, String> states = Map.of('e', "erupted", 'm', "missing", 'p', "primary-present", '?', "unknown");
        for (int i = 0; i < 3; i++) {
            teeth.put(33 + i, "state: " + states.get(text.charAt(i)));
            teeth.put(43 + i, "state: " + states.get(text.charAt(4 + i)));
        }
        for (String w : text.length() < 8 ? new String[0] : text.substring(8).split(" ")) {
            String width = "width: " + w.substring(3);
            teeth.merge(Integer.valueOf(w.substring(0, 2)), width, (a, b) -> a + ", " + b);
        }
        return "teeth: {"
                + teeth.entrySet().stream()
                        .map(t -> t.getKey() + ": {" + t.getValue() + "}")
                        .collect(Collectors.joining(", "))
                + "}";
    }

    /** The means of the two sides are held against each other, and 3 mm are left to a turned model. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            33=-3.1 43=0          ; /landmarks
            33=-3 43=0            ;
            33=-2 34=-2 43=0      ;
            33=-2 43=0.8 44=0.8   ;
            33=12 43=-12          ;
            43=12 44=20           ;
            """)
    void aMirroredModelIsSeenByItsMeans(String points, String told) {
        String list = Stream.of(points.split(" "))
                .map(p -> "{tooth: " + p.replace("=", ", x: ") + ", y: 3}")
                .collect(Collectors.joining(", "));
        assertThat(told("landmarks: [" + list + "]")).isEqualTo(told == null ? "" : told);
    }

    @Test
    void aDoubtSaysWhatIsThere() {
        assertThat(read(SPACES.replace('|', '\n') + "holding: {spaceLeft: 18.4, spaceRight: 22.4}\n")
                        .doubts())
                .extracting(Problem::found)
                .containsExactly("left 18.4 mm, right 22.4 mm");
        // 32 lies hypot(4, 31) mm from 31
        assertThat(read("landmarks: [{tooth: 42, x: -6, y: 8}, {tooth: 41, x: -2, y: 9}, {tooth: 31, x: 2, y: 9},"
                                + " {tooth: 32, x: 6, y: 40}, {tooth: 33, x: 12, y: 3}]\n")
                        .doubts())
                .extracting(p -> p.pointer() + " " + p.found())
                .containsExactly("/landmarks/3 31.3 mm from it");
        assertThat(read("teeth: {24: {keratinised: 3}, 25: {state: erupted}}\n").errors())
                .extracting(Problem::found)
                .containsExactly("no lower incisor, but 24, 25 of the upper left with labial gingiva recorded");
        assertThat(read("teeth: {23: {width: 6}, 24: {width: 6}}\n").errors())
                .extracting(Problem::found)
                .containsExactly("no lower incisor, but 23, 24 of the upper left with widths of lower incisors");
    }

    @Test
    void codesAndReasonsThatMayNameSomebodyAreDoubtedUntilAnswered() {
        String named = "resident: anna-07\nsite: anna-north\nwaivers: [{reason: Anna}]\n";
        List<Problem> doubts = read(named).doubts();
        assertThat(doubts)
                .extracting(Problem::pointer)
                .containsExactlyInAnyOrder("/resident", "/site", "/waivers/0/reason");
        assertThat(doubts)
                .allMatch(PersonDoubts::is)
                .allMatch(p -> p.slip().isEmpty())
                .noneMatch(p -> p.toString().contains("nna"));
        assertThat(read(named + "notPersons: [{words: anna, by: kl}, {words: Anna, by: kl}]\n")
                        .problems())
                .isEmpty();
        assertThat(read("date: 2026-03-09\nfilms: {models: 2026-03-10}\n").doubts())
                .noneMatch(PersonDoubts::is);
        assertThat(read("waivers: [{reason: agreed with Jane Doe}]\n").errors())
                .hasSize(1)
                .noneMatch(PersonDoubts::is);
    }

    private static String told(String part) {
        return read(part.replace('|', '\n') + "\n").problems().stream()
                .map(p -> (p.error() ? "error " : "") + p.pointer())
                .collect(Collectors.joining(" "));
    }

    private static List<String> pointers(String part) {
        CaseReading r = read(part);
        assertThat(r.errors()).isEmpty();
        return r.doubts().stream().map(Problem::pointer).toList();
    }
}
