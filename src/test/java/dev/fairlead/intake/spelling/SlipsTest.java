package dev.fairlead.intake.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.model.Unit;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was written and what was probably meant. */
class SlipsTest {
    /** As ISO 8601 has a date: year, month, day. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3.4.2026     | day and month in an order that can be read in two ways
            12/12/2026   | day and month in an order that can be read in two ways
            13.4.2026    | day, month and year the other way round
            4-13-2026    | day, month and year the other way round
            2026-13-01   | day and month swapped
            2026/13/1    | day and month swapped
            2026-12-01   |
            2026-02-30   | a day that this month does not have
            2026-02-29   | a day that this month does not have
            2026-02-28   |
            2026/02/30   |
            2026-2-30    |
            spring       |
            """)
    void aDateIsSeenThrough(String text, String slip) {
        assertThat(DateSlips.slip(text)).isEqualTo(slip == null ? "" : slip);
    }

    @ParameterizedTest
    @CsvSource({"2026-3-9, two digits", "2026-03-9, two digits", "2026/03/09, four digits", "9.3.2026, four digits"})
    void aDateIsMended(String text, String mend) {
        assertThat(DateSlips.mend(text)).contains(mend);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            1.234,5   | a separator between thousands
            1 234     | a separator between thousands
            1'234 mm  | a separator between thousands
            1/2       | a fraction
            1:30      | years and months, or a time
            9;5       | years and months, or a time
            NaN       | the result of a failed calculation
            -inf      | the result of a failed calculation
            ??        | a value that is not known
            --        | a value that is not known
            N/A       | a value that is not known
            tbd       | a value that is not known
            018       | a wire size in thousandths of an inch, as it is said
            038       | a number in octal or hexadecimal form, or leading zeros
            0x1F      | a number in octal or hexadecimal form, or leading zeros
            5 left    | a side behind the number
            5 mm r    |
            5R        | a side behind the number
            1e3       | a number with an exponent
            ~5        | an estimate or a span
            5-6       | an estimate or a span
            5 to 6    | an estimate or a span
            5..6      | an estimate or a span
            five      |
            """)
    void aQuantityIsSeenThrough(String text, String slip) {
        Quantities.Typed t = Quantities.read(text, Unit.MM, -500, 500);
        assertThat(t.ok()).isFalse();
        assertThat(t.slip()).isEqualTo(slip == null ? "" : slip);
    }

    @Test
    void aWireSizeIsOneInLengthsOnly() {
        assertThat(Quantities.read("018", Unit.DEGREE, 0, 90).slip())
                .isEqualTo("a number in octal or hexadecimal form, or leading zeros");
        assertThat(Quantities.read("018", Unit.MM, 0, 90).mend()).isEqualTo("write 0.018 in");
        assertThat(Quantities.read("x".repeat(40), Unit.MM, 0, 90).complaint()).isEqualTo("\"" + "x".repeat(40) + "\"");
        assertThat(Quantities.read("x".repeat(41), Unit.MM, 0, 90).complaint())
                .isEqualTo("\"" + "x".repeat(40) + "…\"");
        assertThat(Quantities.read("5 m", Unit.MM, 0, 90).slip()).contains("metres, minutes or months");
        assertThat(Quantities.read("5 kg", Unit.MM, 0, 90).slip()).isEmpty();
        assertThat(Quantities.read("5 kg", Unit.MM, 0, 90).mend()).isEqualTo("use mm, cm or in");
        assertThat(Quantities.read("5 mm", Unit.DEGREE, 0, 90).complaint()).isEqualTo("a value in mm");
    }

    /** A comma before three digits is one between thousands where both readings lie in the range, ends included. */
    @ParameterizedTest
    @CsvSource({
        "'1,200', 0, 3000, false",
        "'1,200', 0, 1200, false",
        "'1,200', 0, 1199, true",
        "'1,200', 1200, 3000, false",
        "'1,200', 1201, 3000, true",
        "'0,200', 0, 3000, true",
        "'1,20', 0, 3000, true"
    })
    void aCommaBetweenThousandsIsRefused(String text, double low, double high, boolean read) {
        assertThat(Quantities.read(text, Unit.GF, low, high).ok()).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1",
        ".5, 0.5",
        "-0.5, -0.5",
        "+5, 5",
        "1e15, 1000000000000000",
        "1e16, ",
        "1e-15, 0.000000000000001",
        "1e-16, ",
        "1E+015, 1000000000000000",
        "1e0, 1",
        "1e100, ",
        "01, ",
        "5., ",
        "1e, ",
        "x, ",
        "1111111111111111111111111111111111111111, 1111111111111111111111111111111111111111",
        "11111111111111111111111111111111111111111, "
    })
    void aNumberFromOutsideIsBounded(String text, BigDecimal number) {
        BigDecimal read = PlainNumber.read(text);
        if (number == null) {
            assertThat(read).isNull();
        } else {
            assertThat(read).isEqualByComparingTo(number);
        }
    }

    /** One inch is 25.4 mm exactly; a kilogram is no unit of a case. */
    @Test
    void unitsAreKnownInAnyCaseThatKeepsTheirMeaning() {
        assertThat(UnitWords.of("MM").unit()).isEqualTo(Unit.MM);
        assertThat(UnitWords.of(" Inch ").unit()).isEqualTo(Unit.INCH);
        assertThat(UnitWords.of("N").unit()).isEqualTo(Unit.NEWTON);
        assertThat(UnitWords.of("kg")).isNull();
        assertThat(UnitWords.convert(BigDecimal.ONE, UnitWords.of("in"), Unit.MM))
                .isEqualByComparingTo("25.4");
        assertThat(UnitWords.convert(BigDecimal.TEN, UnitWords.of("mil"), Unit.MM))
                .isEqualByComparingTo("0.254");
        assertThat(UnitWords.convert(BigDecimal.valueOf(18), UnitWords.of("months"), Unit.YEAR))
                .isEqualByComparingTo("1.5");
        assertThat(UnitWords.convert(BigDecimal.ONE, UnitWords.of("mm"), Unit.DEGREE))
                .isNull();
        assertThat(Arrays.stream(new Unit[] {
                            Unit.MM, Unit.DEGREE, Unit.PERCENT, Unit.GF, Unit.MPA, Unit.YEAR, Unit.WEEK, Unit.COUNT
                        })
                        .map(UnitWords::usual))
                .containsExactly(
                        "mm, cm or in", "°", "%", "gf, cN or N", "MPa or GPa", "y", "days, weeks or months", "no unit");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Y    | yes
            ja   | yes
            x    | yes
            N    | no
            nein | no
            ?    | unknown
            tbd  | unknown
            perhaps |
            """)
    void anAnswerIsSeenThrough(String word, String meant) {
        assertThat(Abbreviations.answer(word).orElse(null)).isEqualTo(meant);
    }

    private static final List<String> WORDS = List.of(
            "stainless-steel", "nickel-free-steel", "nickel-titanium", "class-i", "class-ii", "none", "unknown");

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            II              | class-ii
            Class I         | class-i
            Stainless Steel | stainless-steel
            stainles-steel  | stainless-steel
            titanium        | nickel-titanium
            steel           | stainless-steel nickel-free-steel
            free            | nickel-free-steel
            st              | stainless-steel
            None            | none
            ?               | unknown
            wood            |
            """)
    void aWordOfAListIsSeenThrough(String word, String meant) {
        assertThat(Abbreviations.choice(word, WORDS)).isEqualTo(meant == null ? List.of() : List.of(meant.split(" ")));
    }

    @Test
    void upToThreeWordsAreOffered() {
        assertThat(Abbreviations.choice("None", List.of("mild", "severe"))).containsExactly("unknown");
        assertThat(Abbreviations.choice("q", List.of("qaaaaaaa", "qbbbbbbb", "qccccccc")))
                .hasSize(3);
        assertThat(Abbreviations.choice("q", List.of("qaaaaaaa", "qbbbbbbb", "qccccccc", "qddddddd")))
                .isEmpty();
        assertThat(Abbreviations.choice("bb", List.of("abbaaaaaaaaa")))
                .as("two letters are not looked for within")
                .isEmpty();
        assertThat(Abbreviations.choice("bbb", List.of("abbbaaaaaaaa"))).hasSize(1);
    }

    @Test
    void whatTheTradeCallsAFieldIsKnownWhereTheFieldIs() {
        assertThat(Abbreviations.field("IMPA", Set.of("incisorMandibular"))).contains("incisorMandibular");
        assertThat(Abbreviations.field("L1-MP", Set.of("incisorMandibular"))).contains("incisorMandibular");
        assertThat(Abbreviations.field("IMPA", Set.of("overjet"))).isEmpty();
        assertThat(Abbreviations.field("XYZ", Set.of("overjet"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Number of brackets., number of brackets",
        "A code for it., a code for it",
        "'FMA, degrees.', 'FMA, degrees'",
        "Open, open",
        "X, X",
        "A, A"
    })
    void aSentenceGoesOnWithinAnother(String sentence, String within) {
        assertThat(Abbreviations.within(sentence)).isEqualTo(within);
    }

    @Test
    void theNearestKnownWordIsASlipOfThePenAway() {
        List<String> known = List.of("overjet", "overbite", "width");
        assertThat(Nearest.of("Over Jet", known)).contains("overjet");
        assertThat(Nearest.of("overjt", known)).contains("overjet");
        assertThat(Nearest.of("wdith", known)).contains("width");
        assertThat(Nearest.of("depth", known)).isEmpty();
        assertThat(Nearest.of("-", known)).isEmpty();
        assertThat(Nearest.of("x".repeat(60), List.of("x".repeat(59)))).isPresent();
        assertThat(Nearest.of("x".repeat(61), List.of("x".repeat(60)))).isEmpty();
        assertThat(Nearest.of("ab", List.of("ac", "aa")))
                .as("of equals the first in the alphabet")
                .contains("aa");
    }

    /** Names of code points as the Unicode Character Database has them. */
    @Test
    void charactersThatCannotBeSeenAreNamed() {
        assertThat(Visible.name(0x202E)).isEqualTo("U+202E RIGHT-TO-LEFT OVERRIDE");
        assertThat(Visible.name(0x0378)).as("not assigned").isEqualTo("U+0378");
        assertThat(Visible.of("a\u202Eb😀\u0007")).isEqualTo("a<U+202E>b😀<U+0007>");
        assertThat(Visible.of("a b~")).isEqualTo("a b~");
        assertThat(Visible.odd("a b~\r\n\t\u200C\u200D😀")).isEmpty();
        assertThat(Visible.odd("ok\u007F")).hasValue(0x7F);
        assertThat(Visible.odd("ok\u001F")).hasValue(0x1F);
        assertThat(Visible.odd("😀\uD83D")).hasValue(0xD83D);
    }

    /** A number for a message has four digits; a range has its own. */
    @Test
    void numbersInMessagesAreShort() {
        assertThat(Slips.number(12.34567)).isEqualTo("12.35");
        assertThat(Slips.number(0.00012346)).isEqualTo("0.0001235");
        assertThat(Slips.number(1234567)).isEqualTo("1235000");
    }
}
