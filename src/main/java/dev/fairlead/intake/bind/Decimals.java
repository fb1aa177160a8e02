package dev.fairlead.intake.bind;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;

/**
 * Reads short decimal numbers, of which a case has hundreds, without a text between. Up to fifteen digits are a whole
 * number that a double holds exactly, and so is the power of ten; one division then rounds correctly (Clinger 1990,
 * "How to read floating point numbers accurately").
 */
public final class Decimals {
    private static final int MOST_DIGITS = 15;
    private static final double[] TENS = new double[MOST_DIGITS + 1];

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private Decimals() {}

    /**
     * The number at the current token of JSON; NaN for a long one, and for one with an exponent, which are read with
     * care.
     */
    public static double read(JsonParser parser) throws IOException {
        if (parser.currentToken() == JsonToken.VALUE_NUMBER_INT) {
            return parser.getDoubleValue();
        }
        char[] text = parser.getTextCharacters();
        int from = parser.getTextOffset();
        int to = from + parser.getTextLength();
        boolean minus = text[from] == '-';
        long digits = 0;
        int n = 0;
        int point = -1;
        for (int i = minus ? from + 1 : from; i < to; i++) {
            int digit = text[i] - '0';
            if (digit >= 0 && digit <= 9) {
                digits = digits * 10 + digit;
                n++;
            } else if (text[i] == '.' && point < 0) {
                point = n;
            } else {
                return Double.NaN;
            }
            if (n > MOST_DIGITS) {
                return Double.NaN;
            }
        }
        double value = digits / TENS[point < 0 ? 0 : n - point];
        return minus ? -value : value;
    }
}
