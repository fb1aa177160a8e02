package dev.fairlead.intake;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Answer;
import dev.fairlead.model.Case;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.Unit;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CaseReaderTest {
    private static CaseReading json(String part) {
        return CaseReader.read(
                ("{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\"" + (part.isEmpty() ? "" : ",") + part + "}")
                        .getBytes(StandardCharsets.UTF_8),
                "x",
                CaseFormat.JSON);
    }

    private static CaseReading yaml(String part) {
        return CaseReader.read(
                ("fairlead: 1\nid: a\nstage: records\n" + part).getBytes(StandardCharsets.UTF_8), "x", CaseFormat.YAML);
    }

    private static Case good(CaseReading r) {
        assertThat(r.problems()).isEmpty();
        return r.value().orElseThrow();
    }

    /** The error of a mean of n readings is that of one reading over the root of n (GUM, JCGM 100:2008, 4.2.3). */
    @Test
    void repeatsGiveTheirMeanAndTheErrorOfTheMean() {
        Measured m = good(json("\"teeth\":{\"31\":{\"width\":[5.4,5.5,5.3,5.4]}}"))
                .tooth(Tooth.of(31))
                .width();
        assertThat(m.value()).isEqualTo(5.4);
        assertThat(m.sd()).isCloseTo(0.10 / 2, Offset.offset(1e-15));
        assertThat(m.repeats()).containsExactly(5.4, 5.5, 5.3, 5.4);
        assertThat(m.sources()).containsExactly("/teeth/31/width");
    }

    @Test
    void aStatedErrorAndUnitAreTaken() {
        Measured m = good(json("\"teeth\":{\"31\":{\"width\":{\"error\":0.01,\"value\":0.2,\"unit\":\"in\"}}}"))
                .tooth(Tooth.of(31))
                .width();
        assertThat(m.value()).isEqualTo(5.08);
        assertThat(m.sd()).isCloseTo(0.254, Offset.offset(1e-15));
        assertThat(m.unit()).isEqualTo(Unit.MM);
    }

    @Test
    void nominalSizesAreExactInMillimetres() {
        Measured m = good(yaml("wire: {size: 0.020 in}\n")).wire().size();
        assertThat(m.value()).isEqualTo(0.508);
        assertThat(m.sd()).isZero();
    }

    @Test
    void whatIsAbsentOrUnknownNamesItsPlace() {
        Case c = good(
                json("\"plan\":{\"standOff\":\"unknown\"},\"visits\":[{}],\"hardware\":{\"brackets\":{\"31\":{}}}"));
        assertThat(c.plan().standOff().missing()).containsExactly("/plan/standOff");
        assertThat(c.plan().advanceLeft().missing()).containsExactly("/plan/advanceLeft");
        assertThat(c.visits().get(0).left().gapOpened().missing()).containsExactly("/visits/0/left/gapOpened");
        assertThat(c.contacts().c4342().missing()).containsExactly("/contacts/43-42");
        assertThat(c.hardware().bracket(Tooth.of(31)).slot().missing()).containsExactly("/hardware/brackets/31/slot");
    }

    @ParameterizedTest
    @CsvSource({"true,yes", "false,no", "yes,yes", "no,no", "'\"yes\"',yes", "'\"no\"',no"})
    void answersAreWordsInYamlAsInJson(String written, String meant) {
        assertThat(good(yaml("consent: {guardian: " + written + "}\n"))
                        .consent()
                        .guardian())
                .isEqualTo(meant.equals("yes") ? Answer.YES : Answer.NO);
    }

    @ParameterizedTest
    @ValueSource(strings = {"on", "off", "y", "n", "Yes", "1", "~", "maybe", "''"})
    void otherWordsAreNoAnswers(String written) {
        assertThat(yaml("consent: {guardian: " + written + "}\n").read()).isFalse();
    }

    @Test
    void doesNotApplyOnlyWhereItCanBe() {
        assertThat(good(json("\"bench\":{\"misfitRms\":\"does-not-apply\"}"))
                        .bench()
                        .misfitRms()
                        .applies())
                .isFalse();
        assertThat(json("\"bench\":{\"misfitRmsAfter\":\"does-not-apply\"}").errors())
                .extracting(Problem::pointer)
                .containsExactly("/bench/misfitRmsAfter");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "012",
                "0x1F",
                "1_000",
                "1:30",
                ".nan",
                ".inf",
                "0b11",
                "0o17",
                "1e400",
                "NaN",
                "Infinity",
                "!!float 5",
                "!x 5",
                "&a 5",
                "[&a 5]",
                "? [a]\n",
                "09",
                "5 mm mm",
                "{value: &a 5}"
            })
    void yamlsOtherNumbersTagsAndAnchorsAreRefused(String width) {
        CaseReading r = yaml("plan:\n  standOff: " + width + "\n");
        assertThat(r.read()).isFalse();
        assertThat(r.errors().get(0).line()).isEqualTo(5);
    }

    @Test
    void aliasesAndMergesAreRefusedWhereTheyStand() {
        CaseReading r = yaml("child: &c {age: 9}\nplan: *c\nmouth: {<<: *c}\n");
        assertThat(r.errors()).extracting(Problem::line).contains(4, 5, 6);
        assertThat(r.errors()).extracting(Problem::found).contains("an alias").containsOnlyOnce("an anchor");
    }

    @Test
    void anAnchorIsFoundBehindCharactersOutsideTheBasicPlane() {
        CaseReading r = yaml(
                "waivers:\n- {reason: '\uD83D\uDE00\uD83D\uDE00 & more'}\nplan: {standOff: &a 2, advanceLeft: 3}\n");
        assertThat(r.errors()).extracting(Problem::pointer).containsExactly("/plan/standOff");
        assertThat(r.errors().get(0).line()).isEqualTo(6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"---\nfairlead: 1\n", "...\n---\n", "--- {}\n"})
    void aSecondDocumentIsRefused(String tail) {
        assertThat(yaml(tail).errors()).extracting(Problem::expected).contains("the end of the file");
    }

    @Test
    void textBehindTheCaseIsRefused() {
        byte[] two = "{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\"} {}".getBytes(StandardCharsets.UTF_8);
        assertThat(CaseReader.read(two, "x.json", CaseFormat.BY_NAME).errors())
                .extracting(Problem::expected)
                .containsExactly("the end of the file");
    }

    @Test
    void aByteOrderMarkIsTakenAndOtherEncodingsAreNamed() {
        String text = "\uFEFF{\"fairlead\":1,\"id\":\"a\",\"stage\":\"records\"}";
        assertThat(CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "x.json", CaseFormat.BY_NAME)
                        .problems())
                .isEmpty();
        assertThat(CaseReader.read(text.getBytes(StandardCharsets.UTF_16LE), "x.json", CaseFormat.BY_NAME)
                        .errors()
                        .get(0)
                        .found())
                .contains("UTF-16");
        CaseReading latin = CaseReader.read(
                "{\n\"id\":\"ä\"}".getBytes(Charset.forName("windows-1252")), "x.json", CaseFormat.BY_NAME);
        assertThat(latin.errors().get(0).mend()).isEqualTo("save the file as UTF-8");
        assertThat(latin.errors().get(0).line()).isEqualTo(2);
        assertThat(latin.errors().get(0).column()).isEqualTo(7);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "   \n",
                "# only a comment\n",
                "[]",
                "5",
                "null",
                "{",
                "{\"fairlead\":1",
                "{'a':1}",
                "{\"a\" 1}",
                "a: b: c",
                "\t- x",
                "\u0000"
            })
    void whatIsNoCaseAtAllIsRefusedWithAPlace(String text) {
        CaseReading r = CaseReader.read(text.getBytes(StandardCharsets.UTF_8), "x", CaseFormat.BY_NAME);
        assertThat(r.read()).isFalse();
        assertThat(r.errors()).isNotEmpty().allSatisfy(p -> assertThat(p.line()).isPositive());
    }

    @Test
    void aDecimalCommaInJsonIsNamed() {
        CaseReading r = json("\"plan\":{\"standOff\": 1,5}");
        assertThat(r.errors().get(0).slip().orElseThrow()).startsWith("a decimal comma");
        assertThat(r.errors().get(0).line()).isEqualTo(1);
    }

    @Test
    void slipsOfYamlAreNamed() {
        CaseReading comma = yaml("bite: {overjet: 5,0, overbite: 3}\n");
        assertThat(comma.errors()).extracting(Problem::pointer).containsExactly("/bite/0");
        assertThat(comma.errors().get(0).slip().orElseThrow()).startsWith("a decimal comma");
        CaseReading tab = yaml("bite:\n\toverjet: 5\n");
        assertThat(tab.errors().get(0).found()).isEqualTo("a tab");
        assertThat(tab.errors().get(0).line()).isEqualTo(5);
        CaseReading open = yaml("bite: {overjet: 5\nmouth: {plaqueScore: 5 %}\n");
        assertThat(open.errors().get(1).found()).contains("not closed");
        CaseReading colon = yaml("waivers:\n- reason: one: two\n");
        assertThat(colon.errors().get(0).found()).isEqualTo("a colon where none can stand");
        assertThat(colon.errors().get(0).slip().orElseThrow()).contains("quotation marks");
        for (String error : new String[] {"± 0.5", "+/- 0.5 mm", "+- 0.5"}) {
            assertThat(yaml("bite: {overjet: 5.0 " + error + "}\n")
                            .errors()
                            .get(0)
                            .mend())
                    .as(error)
                    .contains("{value: 5.0, error: 0.5}");
        }
    }

    @Test
    void bombsAreRefusedQuickly() {
        assertThat(json("\"x\":" + "[".repeat(900_000)).read()).isFalse();
        assertThat(yaml("x: " + "[".repeat(900_000)).read()).isFalse();
        assertThat(json("\"x\":\"" + "a".repeat(20_000) + "\"").read()).isFalse();
        assertThat(json("\"plan\":{\"standOff\":" + "1".repeat(60) + "}").read())
                .isFalse();
        assertThat(json("\"x\":[" + "1,".repeat(300_000) + "1]").errors())
                .anyMatch(p -> p.mend().contains("right file"));
        assertThat(json("\"x\":\"" + "a ".repeat(1_100_000) + "\"")
                        .errors()
                        .get(0)
                        .expected())
                .contains("at most");
        assertThat(yaml("? " + "a".repeat(1_500_000) + "\n: 1\n")
                        .errors()
                        .get(0)
                        .found())
                .contains("a line of more than");
        StringBuilder laughs = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            laughs.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [*a")
                    .append(i - 1)
                    .append(", *a")
                    .append(i - 1)
                    .append("]\n");
        }
        assertThat(yaml(laughs.toString()).read()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"child\":{\"age\":2016}|a year of birth, which does not belong in a case",
                        "\"child\":{\"age\":94}|months in a field in years (7.833 y)",
                "\"arch\":{\"molarWidth\":4.4}|centimetres in a field in mm (44 mm)",
                        "\"wire\":{\"size\":\"0.508 in\"}|a millimetre value marked as inches (0.508 mm)",
                "\"wire\":{\"size\":0.020}|inches in a field in mm (0.508 mm)",
                        "\"headFilm\":{\"incisorMandibular\":1.6}|radians in a field in degrees (91.67 °)",
                "\"headFilm\":{\"incisorMandibular\":920}|a lost or shifted decimal point (92 °)",
                        "\"plan\":{\"percentile\":0.75}|a share of 1 in a field in per cent (75 %)",
                "\"wire\":{\"modulus\":190000}|MPa in a field in GPa (190 GPa)",
                        "\"wire\":{\"proofStrength\":1.8}|GPa in a field in MPa (1800 MPa)"
            })
    void aValueOutOfRangeComesWithItsLikelySlip(String part, String slip) {
        assertThat(json(part).errors().get(0).slip()).contains(slip);
    }

    @Test
    void newtonsForGramsForceAndSharesForPerCentAreDoubted() {
        CaseReading r = json("\"visits\":[{\"gauge\":1.2}],\"mouth\":{\"plaqueScore\":0.3}");
        assertThat(r.read()).isTrue();
        assertThat(r.doubts()).extracting(Problem::pointer).containsExactly("/visits/0/gauge", "/mouth/plaqueScore");
        assertThat(good(json("\"visits\":[{\"gauge\":\"1.2 gf\"}],\"mouth\":{\"plaqueScore\":\"0.3 %\"}"))
                        .visits())
                .hasSize(1);
    }

    @Test
    void readingsFarApartAreDoubted() {
        assertThat(json("\"teeth\":{\"31\":{\"width\":[5.4,6.4]}}").doubts())
                .extracting(Problem::pointer)
                .containsExactly("/teeth/31/width");
    }

    @Test
    void jsonIsHeldToTheOtherFactsOfItsCaseToo() {
        CaseReading r = json("\"wire\":{\"material\":\"stainless-steel\",\"modulus\":40}");
        assertThat(r.read()).isTrue();
        assertThat(r.problems()).extracting(Problem::pointer).containsExactly("/wire/modulus");
        CaseReading both = json("\"bite\":{\"overjet\":99},\"mouth\":{\"plaqueScore\":0.5}");
        assertThat(both.errors()).extracting(Problem::pointer).containsExactly("/bite/overjet");
        assertThat(both.doubts()).extracting(Problem::pointer).containsExactly("/mouth/plaqueScore");
        assertThat(CaseReader.read(
                                "{\"fairlead\":1,\"id\":\"a\"} {}".getBytes(StandardCharsets.UTF_8),
                                "x",
                                CaseFormat.JSON)
                        .errors())
                .extracting(Problem::found)
                .containsExactly("more text behind the case");
        assertThat(yaml("--- {}\n").errors()).extracting(Problem::found).contains("a second document or more text");
    }

    /** A scale that is off by 2 % makes a length of 6 mm off by 0.12, together with all others of its picture. */
    @Test
    void theScaleOfAPictureIsToldApartInBothFormats() {
        Measured quick = good(json("\"teeth\":{\"42\":{\"width\":{\"value\":6,\"error\":0.2}}},"
                        + "\"pictured\":[{\"field\":\"/teeth/42/width\",\"picture\":1,\"scaleError\":2}]"))
                .tooth(Tooth.of(42))
                .width();
        assertThat(quick.part("/pictured/0/scaleError")).isCloseTo(0.12, Offset.offset(1e-12));
        assertThat(good(yaml("teeth: {42: {width: {value: 6, error: 0.2}}}\n"
                                + "pictured: [{field: /teeth/42/width, picture: 1, scaleError: 2}]\n"))
                        .tooth(Tooth.of(42))
                        .width())
                .isEqualTo(quick);
    }
}
