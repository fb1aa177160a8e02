package dev.fairlead.intake.spelling;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
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
}
