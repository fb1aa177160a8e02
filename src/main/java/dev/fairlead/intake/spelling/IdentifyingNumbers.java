package dev.fairlead.intake.spelling;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Looks for dates, record and telephone numbers in a text, and passes over tooth numbers, sizes and measurements. */
final class IdentifyingNumbers {
    private static final String TOOTH = "(?:[1-4][1-8]|[5-8][1-5])";
    /** Numbers of published papers, a row of teeth, and numbers with a decimal point, alone or in a row. */
    private static final Pattern INNOCENT = Pattern.compile(
            "\\b(?:PMC|PMID|PubMed|doi:)[ :]?[\\d./]+|(?<![\\d.,/-])" + TOOTH + "(?:\\s*(?:[-/,+]|and|to)\\s*" + TOOTH
                    + ")+(?![\\d.]*\\d|[-/]\\d)|(?<![\\d.,/-])\\d{0,3}[.,]\\d{1,4}(?:\\s*[-/;x×]\\s*\\d{0,3}[.,]\\d{1,4})*(?![.,/-]?\\d)");

    private static final Pattern NUMERIC = Pattern.compile(
            "(?<!\\d)(?:((?:19|20)\\d\\d)[-./ ](\\d{1,2})[-./ ](\\d{1,2})|(\\d{1,2})[-./](\\d{1,2})[-./](?:(?:19|20)?\\d\\d)"
                    + "|(\\d{1,2}) (\\d{1,2}) (?:19|20)\\d\\d|(?:19|20)\\d\\d(0[1-9]|1[0-2])(0[1-9]|[12]\\d|3[01]))(?!\\d)");
    private static final String MONTH =
            "(?:jan|feb|mar|märz|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez|janv|fév|avr|juin|juil|août|déc|ene|abr|ago|dic)[\\p{L}]{0,8}\\.?";
    private static final Pattern IN_WORDS = Pattern.compile("(?iu)\\b\\d{1,2}(?:st|nd|rd|th|\\.)?(?: of| de)?[ -]"
            + MONTH + ",?(?: de)?[ -](?:(?:19|20)\\d\\d|'?\\d\\d)\\b|\\b" + MONTH
            + " \\d{1,2}(?:st|nd|rd|th)?,? (?:19|20)\\d\\d\\b");
    private static final Pattern RECORD = Pattern.compile(
            "(?iu)\\b(?:mrn|nhs|ssn|pid|chart|record|file|folder|dossier|hospital|patient|insurance|passport|akte|id)\\b"
                    + "\\s*(?:no|nr|num|number|nummer|id)?\\b\\.?\\s*[:#=]?\\s*[a-z]{0,3}[-/]?\\d[\\d/-]{2,}");
    private static final Pattern CODE = Pattern.compile("\\b[A-Z]{1,4}-?\\d{5,}\\b|\\b[A-Z]{2}\\d{6}[A-Z]\\b");
    /** Seven digits in a row, or three groups of them. */
    private static final Pattern DIGITS = Pattern.compile("\\d{7,}|\\(?\\d{2,5}\\)?(?:[ ./-]{1,2}\\d{2,5}){2,}");

    private static final int LONG = 7;

    private static final Pattern UNIT = Pattern.compile(
            "(?iu)\\d+(?: ?[-–/] ?\\d+)* ?(?:mm|cm|in|°|deg|gf|g|cn|n|mpa|gpa|%|weeks?|months?|years?|days?|visits?)\\b");

    private IdentifyingNumbers() {}

    /** What was found, in words. */
    static Optional<String> in(String text) {
        if (RECORD.matcher(text).find()) {
            return Optional.of("a record number");
        }
        String rest = INNOCENT.matcher(text).replaceAll("·");
        if (IN_WORDS.matcher(rest).find() || date(rest)) {
            return Optional.of("a date, which may be a date of birth");
        }
        if (CODE.matcher(rest).find()
                || digits(rest) >= LONG && number(UNIT.matcher(rest).replaceAll("·"))) {
            return Optional.of("a long number, such as a record or telephone number");
        }
        return Optional.empty();
    }

    private static boolean number(String text) {
        return DIGITS.matcher(text).results().anyMatch(r -> digits(r.group()) >= LONG);
    }

    static int digits(String text) {
        int digits = 0;
        for (int i = 0; i < text.length(); i++) {
            digits += Character.isDigit(text.charAt(i)) ? 1 : 0;
        }
        return digits;
    }

    private static boolean date(String text) {
        Matcher m = NUMERIC.matcher(text);
        while (m.find()) {
            if (m.group(1) != null && day(m.group(2), m.group(3))
                    || m.group(4) != null && day(m.group(4), m.group(5))
                    || m.group(6) != null && day(m.group(6), m.group(7))
                    || m.group(8) != null) {
                return true;
            }
        }
        return false;
    }

    /** Day and month in either order. */
    private static boolean day(String a, String b) {
        int x = Integer.parseInt(a);
        int y = Integer.parseInt(b);
        return x >= 1 && y >= 1 && x <= 31 && y <= 31 && (x <= 12 || y <= 12);
    }
}
