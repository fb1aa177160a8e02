package dev.fairlead.intake.spelling;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Refuses what may tell who the patient is: fields for a name, birth date, record number or address in several
 * languages, and texts that look like a name, an e-mail address, a date or a long number. It errs towards refusing: a
 * false alarm costs a reworded text.
 */
public final class Privacy {
    /** Why a text or field was refused; never repeats the text. */
    public record Refusal(String found, String mend) {}

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
    private static final Pattern BIRTH =
            Pattern.compile("(?iu)\\b(?:d\\.?o\\.?b|date of birth|born|geboren|geb\\.|née?|nacid[oa]|nat[oa] il)\\b");
    /**
     * Letters or digits without which the patterns cannot be met: pseudonyms, which every case has, mostly have fewer.
     */
    private static final int FEWEST_OF_BIRTH = 2;

    private static final int FEWEST_OF_DATE = 4;
    private static final int FEWEST_OF_NUMBER = 6;
    /** No field name of a record is longer; the search is for names of fields, not for text. */
    private static final int LONGEST_KEY = 80;

    private Privacy() {}

    /** Made when a text has digits enough, or a sign of mail: few do. */
    private static final class Digits {
        private static final Pattern EMAIL = Pattern.compile("[^\\s@]+@[^\\s@]+\\.[^\\s@]+");
        private static final Pattern DATE = Pattern.compile(
                "(?<!\\d)(?:(?:19|20)\\d\\d[-./ ]\\d{1,2}[-./ ]\\d{1,2}|\\d{1,2}[-./ ]\\d{1,2}[-./ ](?:19|20)?\\d\\d"
                        + "|(?:19|20)\\d\\d(?:0[1-9]|1[0-2])(?:0[1-9]|[12]\\d|3[01]))(?!\\d)");
        private static final Pattern DIGITS = Pattern.compile("\\d{7,}|\\d{2,5}(?:[ ./-]\\d{2,5}){2,}");
    }

    /** Made when a text has a capital letter: pseudonyms have none. */
    private static final class Capitals {
        private static final Pattern TITLE =
                Pattern.compile("\\b(?:Mr|Mrs|Ms|Miss|Master|Dr|Prof|Herr|Frau|Mme|Sr|Sra)\\.? \\p{Lu}");
        private static final Pattern TWO_CAPITALISED = Pattern.compile(
                "(?<![\\p{L}])(\\p{Lu}[\\p{Ll}'’]+)(?:,? |[-_.]|(?=\\p{Lu}))(\\p{Lu}[\\p{Ll}'’]+)(?![\\p{L}])");
        /** Words that begin a sentence and are no first name. */
        private static final Set<String> STARTERS = Set.of(
                "The", "This", "That", "These", "There", "Both", "After", "Before", "Since", "When", "While", "Until",
                "No", "Not", "Left", "Right", "Upper", "Lower", "Class", "In", "On", "At", "With", "Without", "For",
                "If", "As", "It", "Is", "To", "By", "Will", "Has", "All");
    }

    /** Why a field of that name is refused, or null. */
    public static Refusal key(String key) {
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
                        "take the field out; a case carries a pseudonym and measurements only")
                : null;
    }

    /**
     * Why a free text is refused, or null. Longer texts are refused for their length, so that only their beginning is
     * ever shown or searched.
     */
    public static Refusal text(String whole) {
        String text = whole.length() > CaseWords.LONGEST_TEXT ? whole.substring(0, CaseWords.LONGEST_TEXT) : whole;
        int digits = 0;
        int letters = 0;
        boolean capital = false;
        for (int i = 0; i < text.length(); i++) {
            digits += Character.isDigit(text.charAt(i)) ? 1 : 0;
            letters += Character.isLetter(text.charAt(i)) ? 1 : 0;
            capital |= Character.isUpperCase(text.charAt(i));
        }
        if (text.indexOf('@') >= 0 && Digits.EMAIL.matcher(text).find()) {
            return refusal("an e-mail address");
        }
        if (letters >= FEWEST_OF_BIRTH && BIRTH.matcher(text).find()) {
            return refusal("a date of birth");
        }
        if (digits >= FEWEST_OF_DATE && Digits.DATE.matcher(text).find()) {
            return new Refusal(
                    "a text with a date, which may be a date of birth (not repeated here)",
                    "put dates in their own fields, and no date of birth");
        }
        if (digits >= FEWEST_OF_NUMBER && Digits.DIGITS.matcher(text).find()) {
            return refusal("a long number, such as a record or telephone number");
        }
        if (capital && (Capitals.TITLE.matcher(text).find() || name(text))) {
            return new Refusal(
                    "a text that looks like a name (not repeated here)",
                    "use a pseudonym or a role; within a sentence write words without a capital");
        }
        return null;
    }

    private static boolean name(String text) {
        java.util.regex.Matcher m = Capitals.TWO_CAPITALISED.matcher(text);
        int from = 0;
        while (m.find(from)) {
            if (!Capitals.STARTERS.contains(m.group(1))) {
                return true;
            }
            from = m.start(2);
        }
        return false;
    }

    private static Refusal refusal(String what) {
        return new Refusal(
                what + " (not repeated here)", "take it out; a case carries a pseudonym and measurements only");
    }
}
