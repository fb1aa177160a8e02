package dev.fairlead.intake.spelling;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What went wrong with a date that is not written as ISO 8601 has it. */
public final class DateSlips {
    private static final Pattern BACKWARDS = Pattern.compile("(\\d{1,2})[./-](\\d{1,2})[./-](\\d{4})");
    private static final Pattern SHORT = Pattern.compile("(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})");

    private DateSlips() {}

    /** A date as ISO 8601 has it; throws when it is none. */
    public static LocalDate read(String text) {
        if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
            int year = number(text, 0, 4);
            int month = number(text, 5, 7);
            int day = number(text, 8, 10);
            if (year >= 0 && month >= 0 && day >= 0) {
                return LocalDate.of(year, month, day);
            }
        }
        throw new DateTimeException("not a year of four digits, a month and a day of two, with dashes");
    }

    /** The whole number that stands there, or -1. */
    private static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            number = number * 10 + c - '0';
        }
        return number;
    }

    public static String slip(String text) {
        Matcher m = BACKWARDS.matcher(text);
        if (m.matches()) {
            return Integer.parseInt(m.group(1)) <= 12 && Integer.parseInt(m.group(2)) <= 12
                    ? "day and month in an order that can be read in two ways"
                    : "day, month and year the other way round";
        }
        Matcher s = SHORT.matcher(text);
        if (s.matches() && Integer.parseInt(s.group(2)) > 12) {
            return "day and month swapped";
        }
        if (s.matches() && text.length() == 10 && text.charAt(4) == '-' && Integer.parseInt(s.group(3)) > 28) {
            return "a day that this month does not have";
        }
        return "";
    }

    public static String mend(String text) {
        Matcher s = SHORT.matcher(text);
        if (s.matches() && text.length() < 10) {
            return "write two digits for month and day";
        }
        return "write four digits for the year, two for the month, two for the day, with dashes";
    }
}
