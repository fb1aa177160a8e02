package dev.fairlead.intake.spelling;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks for names of people in a text: titles, given names beside another word, pairs of capitalised words that are no
 * terms, initials, and scripts in which a name has no capital.
 */
final class PersonNames {
    /** How sure it is that a text names somebody. */
    enum Found {
        NONE,
        PERHAPS,
        SURELY
    }

    private static final Set<String> GIVEN = words("given-names.txt");
    private static final Set<String> TERMS = words("terms.txt");

    private static final Pattern TITLE = Pattern.compile(
            "(?u)\\b(?:Mr|Mrs|Ms|Miss|Mx|Dr|Prof|Herrn?|Frau|Mme|Mlle|Sr|Sra|Srta|Sig|Pan|Pani)\\b\\.? \\p{Lu}\\p{L}");
    private static final Pattern INTRODUCED = Pattern.compile(
            "(?iu)\\b(?:named|called|alias|aka|name(?: is)?|nom|nombre|nome)\\s*[:=]?\\s+(\\p{L}[\\p{L}'’-]+)");
    private static final Pattern KIN = Pattern.compile(
            "\\b(?:[Ss]on|[Dd]aughter|[Bb]rother|[Ss]ister|[Mm]other|[Ff]ather|[Mm]um|[Mm]om|[Dd]ad|[Pp]atient|[Ff]amily|[Nn]urse)"
                    + "(?: of)? (\\p{Lu}\\p{Ll}+)");
    /** A capitalised word, with the parts that names have: O’Neill, Garcia-Lopez, McKay, DOE. */
    private static final String WORD = "(?:\\p{Lu}[\\p{L}\\p{M}'’]*(?:-\\p{Lu}[\\p{L}\\p{M}'’]*)*)";

    private static final Pattern PAIR =
            Pattern.compile("(?<![\\p{L}.])(" + WORD + ")(?:, ?| |[-_.]|(?=\\p{Lu}\\p{Ll}))(" + WORD + ")(?![\\p{L}])");
    private static final Pattern JOINED = Pattern.compile("\\b(\\p{Lu}\\p{Ll}{2,})(\\p{Lu}\\p{Ll}{2,})\\b");
    private static final Pattern INITIAL =
            Pattern.compile("\\b(?:(\\p{Lu})\\. ?(" + WORD + ")|(" + WORD + "),? (\\p{Lu})\\.)");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}[\\p{L}\\p{M}'’-]*");
    private static final Pattern PARTICLE =
            Pattern.compile("(?i)\\b(?:van|von|de|da|del|der|di|le|la|bin|ibn|al|el|dos|ter|ten|zu|mac|mc)\\b ?");

    private static final Pattern PARTS = Pattern.compile("[^\\p{L}\\p{M}'’]+");
    /** Shorter ones are too often part of another word. */
    private static final int LEAST_ALONE = 4;

    private PersonNames() {}

    private static Set<String> words(String file) {
        try (InputStream in = PersonNames.class.getResourceAsStream(file)) {
            Set<String> all = new HashSet<>();
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                if (!line.startsWith("#")) {
                    all.addAll(List.of(line.strip().split(" +")));
                }
            }
            return all;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Found in(String text) {
        // a pseudonym as most are: small letters, digits and dashes, so that only given names remain to be looked for
        if (text.chars().allMatch(c -> c < 128 && !Character.isUpperCase(c) && c != ' ')) {
            return given(text);
        }
        if (TITLE.matcher(text).find() || introduced(text)) {
            return Found.SURELY;
        }
        Found found = foreign(text);
        String bare = PARTICLE.matcher(text).replaceAll("");
        for (Pattern pair : List.of(PAIR, JOINED)) {
            Matcher m = pair.matcher(bare);
            for (int from = 0; m.find(from); from = m.start(2)) {
                found = more(found, pair(m.group(1), m.group(2)));
            }
        }
        Matcher initial = INITIAL.matcher(text);
        while (initial.find()) {
            String word = initial.group(2) != null ? initial.group(2) : initial.group(3);
            String letter = initial.group(1) != null ? initial.group(1) : initial.group(4);
            // a class or grade in Roman numerals ends a sentence as an initial does
            boolean numeral = letter.matches("[IVX]");
            if (!term(word) && word.length() > 2 && !numeral) {
                found = more(found, Found.SURELY);
            }
        }
        return found == Found.SURELY ? found : more(found, given(text));
    }

    /** A given name among the parts of a code, or at the beginning of one that goes on like a family name. */
    static boolean inCode(String code) {
        // most are a letter and a number
        if (code.chars().filter(Character::isLetter).count() < LEAST_ALONE) {
            return false;
        }
        for (String part : PARTS.split(code)) {
            String word = plain(part);
            if (word.length() >= LEAST_ALONE && GIVEN.contains(word) && !TERMS.contains(word)) {
                return true;
            }
            for (int cut = LEAST_ALONE; cut <= word.length() - LEAST_ALONE; cut++) {
                if (GIVEN.contains(word.substring(0, cut)) && !term(word) && !term(word.substring(cut))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** In the name of a file any two words may have capitals: only a given name beside another word is sure. */
    static Found inFileName(String name) {
        String words = PARTS.matcher(name).replaceAll(" ").strip();
        Found given = given(words);
        return given == Found.SURELY || in(words) == Found.NONE ? given : Found.PERHAPS;
    }

    private static boolean introduced(String text) {
        Matcher m = INTRODUCED.matcher(text);
        while (m.find()) {
            if (!term(m.group(1))) {
                return true;
            }
        }
        Matcher k = KIN.matcher(text);
        while (k.find()) {
            if (!term(k.group(1))) {
                return true;
            }
        }
        return false;
    }

    /** Two capitalised words side by side. */
    private static Found pair(String a, String b) {
        boolean given = GIVEN.contains(plain(a)) || GIVEN.contains(plain(b));
        if (given && !(term(a) && term(b))) {
            return Found.SURELY;
        }
        if (term(a) || term(b) || a.length() < 2 || b.length() < 2) {
            return Found.NONE;
        }
        boolean capitals = a.equals(a.toUpperCase(Locale.ROOT)) && b.equals(b.toUpperCase(Locale.ROOT));
        boolean acronym = a.equals(a.toUpperCase(Locale.ROOT)) || b.equals(b.toUpperCase(Locale.ROOT));
        return capitals
                ? a.length() > 3 && b.length() > 3 ? Found.PERHAPS : Found.NONE
                : acronym && a.length() + b.length() < 8 ? Found.NONE : Found.SURELY;
    }

    /** A given name in any letters: sure beside a word that is none of the trade and no plain one, else perhaps. */
    private static Found given(String text) {
        List<String> words = LETTERS.matcher(text).results().map(r -> r.group()).toList();
        Found found = Found.NONE;
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (!GIVEN.contains(plain(word))) {
                continue;
            }
            boolean beside = i + 1 < words.size() && other(words.get(i + 1)) || i > 0 && other(words.get(i - 1));
            found = more(
                    found, beside ? Found.SURELY : Character.isUpperCase(word.charAt(0)) ? Found.PERHAPS : Found.NONE);
        }
        return found;
    }

    private static boolean other(String word) {
        return word.length() > 2 && !term(word);
    }

    /** Scripts without capitals: a few words alone are as good as a name; more of them cannot be told from one. */
    private static Found foreign(String text) {
        long letters = text.codePoints()
                .filter(c -> Character.isLetter(c)
                        && !Character.isUpperCase(c)
                        && !Character.isLowerCase(c)
                        && Character.UnicodeScript.of(c) != Character.UnicodeScript.LATIN)
                .count();
        if (letters == 0) {
            return Found.NONE;
        }
        return text.strip().split("[\\s·,、]+").length <= 3 && letters <= 24 ? Found.SURELY : Found.PERHAPS;
    }

    private static boolean term(String word) {
        String plain = plain(word);
        if (TERMS.contains(plain)) {
            return true;
        }
        if (plain.contains("-")) {
            return List.of(plain.split("-")).stream().allMatch(TERMS::contains);
        }
        for (String ending : List.of("s", "es", "ed", "d", "ing", "ly", "al", "er", "'s")) {
            if (plain.endsWith(ending) && TERMS.contains(plain.substring(0, plain.length() - ending.length()))) {
                return true;
            }
        }
        return plain.matches("[ivx]+");
    }

    private static String plain(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        return small.chars().allMatch(c -> c < 128)
                ? small
                : Normalizer.normalize(small.replace("ł", "l").replace("ø", "o"), Normalizer.Form.NFD)
                        .replaceAll("\\p{M}", "")
                        .replace('’', '\'');
    }

    private static Found more(Found a, Found b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
