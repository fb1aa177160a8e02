package dev.fairlead.intake.text;

import com.fasterxml.jackson.core.JsonToken;
import org.yaml.snakeyaml.resolver.Resolver;

/** What a bare word of YAML 1.1 stands for. */
final class YamlScalars {
    /** Longer words are texts (a limit of the library). */
    private static final int LONGEST = 1024;

    private YamlScalars() {}

    /**
     * The token of a word without quotation marks. Its yes, no, on and off are texts here: answers or refused, never
     * silently true.
     */
    static JsonToken token(String word) {
        if (word.isEmpty()) {
            return JsonToken.VALUE_STRING;
        }
        char first = word.charAt(0);
        if (first >= '0' && first <= '9' || first == '-' || first == '+' || first == '.') {
            return word.length() > LONGEST ? JsonToken.VALUE_STRING : number(word, first);
        }
        return switch (word) {
            case "~", "null", "Null", "NULL" -> JsonToken.VALUE_NULL;
            case "true", "True", "TRUE" -> JsonToken.VALUE_TRUE;
            case "false", "False", "FALSE" -> JsonToken.VALUE_FALSE;
            default -> JsonToken.VALUE_STRING;
        };
    }

    private static JsonToken number(String word, char first) {
        int from = first == '-' || first == '+' ? 1 : 0;
        int point = -1;
        for (int i = from; i < word.length(); i++) {
            char c = word.charAt(i);
            if (c == '.' && point < 0 && i > from) {
                point = i;
            } else if (c < '0' || c > '9') {
                return dateOrUnit(word, i) ? JsonToken.VALUE_STRING : odd(word);
            }
        }
        int digits = word.length() - from;
        return point > 0
                ? JsonToken.VALUE_NUMBER_FLOAT
                : digits == 1 || digits > 1 && word.charAt(from) != '0' ? JsonToken.VALUE_NUMBER_INT : odd(word);
    }

    /**
     * True when what stands there is in no number: a dash that does not follow an e, or a sign that numbers do not
     * have.
     */
    private static boolean dateOrUnit(String word, int at) {
        for (int i = at; i < word.length(); i++) {
            char c = word.charAt(i);
            if (c == '-' && i > 0 && Character.toLowerCase(word.charAt(i - 1)) != 'e') {
                return true;
            }
            if (!Character.isLetterOrDigit(c) && "_.:+-".indexOf(c) < 0) {
                return true;
            }
        }
        return false;
    }

    /** Octal, sexagesimal and other numbers that hardly any case holds, and words that only begin like one. */
    private static JsonToken odd(String word) {
        if (Resolver.INT.matcher(word).matches()) {
            return word.indexOf(':') < 0 ? JsonToken.VALUE_NUMBER_INT : JsonToken.VALUE_STRING;
        }
        return Resolver.FLOAT.matcher(word).matches() ? JsonToken.VALUE_NUMBER_FLOAT : JsonToken.VALUE_STRING;
    }
}
