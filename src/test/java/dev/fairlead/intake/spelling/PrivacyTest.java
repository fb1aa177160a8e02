package dev.fairlead.intake.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** All names here are invented. */
class PrivacyTest {
    private static CaseReading read(String part) {
        return CaseReader.read(
                ("fairlead: 1\nstage: records\n" + part).getBytes(StandardCharsets.UTF_8), "x", CaseFormat.YAML);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name",
                "Name",
                "patient_name",
                "firstName",
                "date-of-birth",
                "DOB",
                "birthDate",
                "MRN",
                "recordNumber",
                "ssn",
                "address",
                "phone",
                "e-mail",
                "photo",
                "Vorname",
                "Geburtsdatum",
                "prénom",
                "date de naissance",
                "apellidos",
                "fechaDeNacimiento",
                "cognome",
                "codice fiscale",
                "imię",
                "PESEL",
                "achternaam",
                "personnummer"
            })
    void fieldsThatTellWhoItIsAreRefusedAtEveryLevel(String key) {
        for (String part : new String[] {
            key + ": secret\n",
            "child: {" + key + ": secret}\n",
            "teeth: {" + key + ": {}}\n",
            "visits: [{" + key + ": secret}]\n"
        }) {
            CaseReading r = read("id: a\n" + part);
            assertThat(r.errors()).as(part).hasSize(1);
            assertThat(r.errors().get(0).found()).as(part).contains("who the patient is");
            assertThat(r.errors().toString()).doesNotContain("secret");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "agreed with Jane Doe",
                "Doe, Jane asked for it",
                "JaneDoe",
                "Łucja Żak wants it",
                "Dr Smith agreed",
                "Mrs. Smith agreed",
                "write to a.b@c.example",
                "born in May",
                "seen 2016-05-03",
                "seen 3.5.2016",
                "seen 03/05/16",
                "chart 12345678",
                "call 555-123-4567",
                "geboren im Mai",
                "file 20160503"
            })
    void textsThatLookLikeSomebodyAreRefusedAndNotRepeated(String text) {
        CaseReading r = read("id: a\nwaivers: [{reason: \"" + text + "\"}]\n");
        assertThat(r.errors()).hasSize(1);
        assertThat(r.errors().get(0).pointer()).isEqualTo("/waivers/0/reason");
        assertThat(r.errors().toString()).doesNotContain(text);
        assertThat(r.errors().get(0).mend()).isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "The guardian knows the limits of stability.",
                "Both sides advance by 2 mm; Class II on the right.",
                "accepted until the next film in 6 months",
                "Thin gingiva, opinion sought",
                "limit 95 degrees, found 96.5 degrees"
            })
    void ordinaryReasonsPass(String text) {
        assertThat(read("id: a\nwaivers: [{reason: \"" + text + "\"}]\n").problems())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Jane-Doe",
                "JaneDoe",
                "2016-05-03",
                "20160503",
                "12345678",
                "a b",
                "-a",
                "a@b.example",
                "jane doe",
                ""
            })
    void anIdIsAPseudonym(String id) {
        assertThat(read("id: \"" + id + "\"\n").errors())
                .extracting(Problem::pointer)
                .containsExactly("/id");
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-01", "FL-2026-001", "a", "case-123456", "Lower-crowding"})
    void ordinaryIdsPass(String id) {
        assertThat(read("id: " + id + "\n").problems()).isEmpty();
    }

    /**
     * Day and month in either order make a date; tooth numbers, sizes and papers are innocent. All names are invented.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            seen 31.12.2026        | date
            seen 12.31.2026        | date
            seen 2026-12-31        | date
            seen 2026-31-12        | date
            seen 12.12.2026        | date
            seen 1 2 2026          | date
            seen 3/5/16            | date
            seen 20261231          | date
            3rd of May 26          | date
            May 3, 2026            | date
            13.4.16, 14.15.16      | date
            seen 32.1.2026         | -
            seen 1.32.2026         | -
            seen 0.1.2026          | -
            seen 1.0.2026          | -
            seen 13.13.2026        | number
            seen 2026-00-10        | number
            seen 20261331          | number
            A12345                 | number
            A1234                  | -
            AB123456C              | number
            call 5551234           | number
            no 555123              | -
            1234567 mm             | -
            PMC 1234567            | -
            doi:10.1000/1234567    | -
            teeth 31, 41 and 32    | -
            0.5-0.75               | -
            file no 123            | record
            file 12                | -
            a@b.cc                 | e-mail
            a@b                    | -
            seen, dob unknown      | birth
            Anna                   | may
            anna                   | -
            anna smith             | name
            the smith anna         | name
            Peter-Paul             | name
            Smith                  | -
            J. Smith               | name
            Smith, J.              | name
            I. Smith               | -
            Class I. Smith         | -
            J. Mo                  | -
            J. Wire                | -
            Mr Smith               | name
            named Smith            | name
            called off, named wire | -
            Mother Smith           | name
            Nurse Wire             | -
            Tormod Vexley          | name
            Tormod Wire            | -
            Class Two              | -
            XY Ab                  | -
            XY Abcdef              | name
            TORM VEXL              | may
            TOR VEXLEY             | -
            TORMOD VEX             | -
            A Vexley               | -
            Wires Vexley           | -
            Bench-Wire Vexley      | -
            Wire-Vexley Tormod     | name
            III Vexley             | -
            Mark Wire              | -
            anna wire              | -
            anna xy                | -
            Ab Cd                  | name
            Ab XY                  | -
            山田 太郎 さん         | name
            JaneDoe                | name
            山田太郎               | name
            山田 太郎 さん 歯科    | may
            山田太郎山田太郎山田太郎山田太郎山田太郎山田太郎   | name
            山田太郎山田太郎山田太郎山田太郎山田太郎山田太郎山 | may
            """)
    void whatTellsWhoSomebodyIsAndWhatDoesNot(String text, String kind) {
        Privacy.Refusal r = Privacy.text(text);
        if (kind.equals("-")) {
            assertThat(r).isNull();
        } else {
            assertThat(r.found()).contains(kind);
            assertThat(r.sure()).isEqualTo(!kind.equals("may"));
            assertThat(r.mend()).isNotBlank();
        }
    }

    /** In the name of a file a given name beside another word is sure, other capitals may be chance. */
    @ParameterizedTest
    @CsvSource({
        "anna_smith, sure",
        "Anna, doubt",
        "Tormod Vexley, doubt",
        "wire bench, -",
        "2026-03-09, -",
        "case 3 copy, -"
    })
    void aFileNameIsJudgedMildly(String name, String kind) {
        Privacy.Refusal r = Privacy.fileName(name);
        assertThat(r == null ? "-" : r.sure() ? "sure" : "doubt").isEqualTo(kind);
        if (r != null) {
            assertThat(r.mend()).startsWith(r.sure() ? "give the file another name" : "where it does");
        }
    }

    /** A given name of four letters at least, alone or in front of four more that are no term. */
    @ParameterizedTest
    @CsvSource({
        "anna-07, true",
        "07-Anna, true",
        "annasmith, true",
        "annasmit, true",
        "annasmi, false",
        "mia-07, false",
        "a-1234, false",
        "jan-7, false",
        "annawire, false",
        "will-07, false",
        "lower-crowding, false"
    })
    void aCodeIsDoubtedForAGivenName(String code, boolean doubted) {
        assertThat(Privacy.code(code) != null).isEqualTo(doubted);
    }

    @Test
    void aCommentMayHoldADay() {
        assertThat(Privacy.comment("seen 3.5.2016").sure()).isFalse();
        assertThat(Privacy.text("seen 3.5.2016").sure()).isTrue();
        assertThat(Privacy.comment("call 5551234").sure()).isTrue();
        assertThat(Privacy.comment("seen")).isNull();
    }

    @Test
    void onlyTheBeginningOfALongTextAndNoLongKeyIsSearched() {
        String filler = "seen again ".repeat(100);
        assertThat(Privacy.text(filler.substring(0, 990) + "a@b.cc")).isNotNull();
        assertThat(Privacy.text(filler.substring(0, 1000) + " a@b.cc")).isNull();
        assertThat(Privacy.key("n-a-m-e" + "-".repeat(73))).isNotNull();
        assertThat(Privacy.key("n-a-m-e" + "-".repeat(74))).isNull();
        assertThat(Privacy.key("straße")).isNotNull();
        assertThat(Privacy.key("fødselsdato")).isNull();
    }
}
