package dev.fairlead.intake.spelling;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Refuses what may tell who the patient is: fields for a name, birth date, record number or address in several
 * languages, and texts that look like a name, an e-mail address, a date or a long number. What is sure is refused; what
 * may be a false alarm is doubted and kept.
 */
public final class Privacy {
    /**
     * Why a text or field was refused; never repeats the text.
     *
     * @param sure false where it may be a false alarm: a free text is then doubted and kept
     */
    public record Refusal(String found, String mend, boolean sure) {}

    private static final Set<String> KEYS = Set.of(
            // English
            "name",
            "names",
            "fullname",
            "surname",
            "firstname",
            "lastname",
            "givenname",
            "familyname",
            "middlename",
            "maidenname",
            "nickname",
            "forename",
            "patient",
            "patientname",
            "patientid",
            "patientnumber",
            "patientno",
            "childname",
            "mother",
            "father",
            "parent",
            "parents",
            "guardianname",
            "birthdate",
            "dateofbirth",
            "birthday",
            "birth",
            "born",
            "dob",
            "mrn",
            "medicalrecordnumber",
            "recordnumber",
            "recordno",
            "chartnumber",
            "chartno",
            "filenumber",
            "hospitalnumber",
            "ssn",
            "socialsecurity",
            "socialsecuritynumber",
            "nhsnumber",
            "insurancenumber",
            "passport",
            "nationalid",
            "address",
            "street",
            "city",
            "town",
            "postcode",
            "zip",
            "zipcode",
            "phone",
            "phonenumber",
            "telephone",
            "mobile",
            "email",
            "mail",
            "contact",
            "photo",
            "photos",
            "photograph",
            "picture",
            "pictures",
            "portrait",
            "face",
            "school",
            "doctor",
            "dentist",
            "operatorname",
            "residentname",
            // German
            "vorname",
            "nachname",
            "familienname",
            "geburtsdatum",
            "geburtstag",
            "geboren",
            "adresse",
            "anschrift",
            "strasse",
            "ort",
            "plz",
            "telefon",
            "handy",
            "foto",
            "bild",
            "patientennummer",
            "versichertennummer",
            "krankenkassennummer",
            "mutter",
            "vater",
            "eltern",
            "schule",
            // French
            "nom",
            "prenom",
            "nomdefamille",
            "datedenaissance",
            "naissance",
            "courriel",
            "numerodedossier",
            "numerosecuritesociale",
            "mere",
            "pere",
            // Spanish, Portuguese, Italian
            "nombre",
            "nombres",
            "apellido",
            "apellidos",
            "fechadenacimiento",
            "fechanacimiento",
            "nacimiento",
            "direccion",
            "telefono",
            "correo",
            "dni",
            "historiaclinica",
            "nome",
            "sobrenome",
            "apelido",
            "datadenascimento",
            "nascimento",
            "endereco",
            "telefone",
            "cpf",
            "cognome",
            "datadinascita",
            "nascita",
            "codicefiscale",
            "indirizzo",
            // Dutch, Polish, Swedish
            "naam",
            "voornaam",
            "achternaam",
            "geboortedatum",
            "adres",
            "telefoon",
            "bsn",
            "imie",
            "nazwisko",
            "dataurodzenia",
            "pesel",
            "fornamn",
            "efternamn",
            "personnummer",
            "fodelsedatum");
    private static final Pattern BIRTH = Pattern.compile(
            "(?iu)\\b(?:d\\.?o\\.?b|date of birth|born|geboren|geb(?=\\.)|née?|nacid[oa]|nat[oa] il)\\b");
    private static final Pattern EMAIL = Pattern.compile("[^\\s@]+@[^\\s@]+\\.[^\\s@]+");
    /** No field name of a record is longer; the search is for names of fields, not for text. */
    private static final int LONGEST_KEY = 80;

    private static final String MAYBE =
            "where it does, write a pseudonym or a role instead; where it names nobody, write the words under notPersons"
                    + " with your initials";

    private Privacy() {}

    /** Why a field of that name is refused, or null. */
    public static @Nullable Refusal key(String key) {
        if (key.length() > LONGEST_KEY) {
            return null;
        }
        String bare = Normalizer.normalize(
                        key.toLowerCase(Locale.ROOT)
                                .replace("ß", "ss")
                                .replace("ø", "o")
                                .replace("ł", "l"),
                        Normalizer.Form.NFD)
                .replaceAll("[^a-z]", "");
        return KEYS.contains(bare)
                ? new Refusal(
                        "a field that may tell who the patient is",
                        "take the field out; a case carries a pseudonym and measurements only",
                        true)
                : null;
    }

    /**
     * Why a free text is refused, or null. Longer texts are refused for their length, so that only their beginning is
     * ever shown or searched.
     */
    public static @Nullable Refusal text(String whole) {
        String text = whole.length() > CaseWords.LONGEST_TEXT ? whole.substring(0, CaseWords.LONGEST_TEXT) : whole;
        if (text.indexOf('@') >= 0 && EMAIL.matcher(text).find()) {
            return refusal("an e-mail address");
        }
        boolean letters = text.chars().filter(Character::isLetter).limit(2).count() == 2;
        if (letters && BIRTH.matcher(text).find()) {
            return refusal("a date of birth");
        }
        if (IdentifyingNumbers.digits(text) >= 3) {
            Optional<String> number = IdentifyingNumbers.in(text);
            if (number.isPresent()) {
                return refusal(number.get());
            }
        }
        PersonNames.Found name = letters ? PersonNames.in(text) : PersonNames.Found.NONE;
        return switch (name) {
            case NONE -> null;
            case PERHAPS -> new Refusal("a text that may name somebody (not repeated here)", MAYBE, false);
            case SURELY ->
                new Refusal(
                        "a text that looks like a name (not repeated here)",
                        "use a pseudonym or a role; within a sentence write words without a capital",
                        true);
        };
    }

    /** Why a pseudonym or code is doubted, or null: a given name in it, alone or joined to another word. */
    public static @Nullable Refusal code(String code) {
        return PersonNames.inCode(code)
                ? new Refusal("a code that may hold a name (not repeated here)", MAYBE, false)
                : null;
    }

    /** Why the name of a file is refused or doubted, or null. A day in it is that of the file. */
    public static @Nullable Refusal fileName(String name) {
        PersonNames.Found found = PersonNames.inFileName(name);
        return found == PersonNames.Found.NONE
                ? null
                : new Refusal(
                        "a name that may be that of somebody (not repeated here)",
                        found == PersonNames.Found.SURELY ? "give the file another name, such as its pseudonym" : MAYBE,
                        found == PersonNames.Found.SURELY);
    }

    /** Why a comment is refused or doubted, or null. A day alone may be that of a measurement. */
    public static @Nullable Refusal comment(String words) {
        Refusal found = text(words);
        return found != null && found.found().startsWith("a date, ")
                ? new Refusal(found.found(), "take it out if it is one; else leave it", false)
                : found;
    }

    private static Refusal refusal(String what) {
        return new Refusal(
                what + " (not repeated here)",
                "take it out; a case carries a pseudonym and measurements only, and dates in their own fields",
                true);
    }
}
