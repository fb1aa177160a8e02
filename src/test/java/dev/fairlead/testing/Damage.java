package dev.fairlead.testing;

import java.util.List;
import java.util.Random;

/** Spoils texts as slips, bad transfers and malice do: seeded, so that a failure can be had again. */
public final class Damage {
    private static final List<String> BITS = List.of(
            "{",
            "}",
            "[",
            "]",
            "(",
            ")",
            ",",
            ";",
            ":",
            "\"",
            "'",
            "\\",
            "\n",
            "\r",
            "\t",
            "=",
            "&",
            "%",
            "%00",
            "../",
            "<script>",
            "\u0000",
            "\u001b[2J",
            "\u202e",
            "\uFEFF",
            "\uD800",
            "é",
            "null",
            "true",
            "-1",
            "1e999",
            "1e-99999999999",
            "NaN",
            "0x10",
            "999999999999999999999",
            "unknown",
            "does-not-apply",
            "&a",
            "*a",
            "!!",
            "|",
            ">",
            "@",
            "`",
            "---",
            "...",
            "? ",
            "<<: ",
            "-",
            ".",
            "_",
            "5",
            "\\u12",
            "\u2028",
            "\uD83D\uDE00",
            "2026-02-30",
            "/*",
            "//",
            "#",
            "$f",
            "eval(true)",
            "not");

    private final Random random;

    /** What is spoilt, with its part of all inputs in thousandths: what takes longest has the smaller part. */
    public enum Kind {
        CASE_TEXT(740),
        ACCEPTED(60),
        TABLE(100),
        SITE_RULES(50),
        REQUEST(50);

        private final int thousandths;

        Kind(int thousandths) {
            this.thousandths = thousandths;
        }

        /** How many inputs its test is to make: of 20,000 in every build, of a million by {@code -Pfuzz}. */
        public int inputs() {
            return (int) ((long) Integer.getInteger("fairlead.fuzz", 2000) * thousandths / 1000);
        }
    }

    /** Another {@code -Dfairlead.seed} than 0 makes other inputs. */
    public Damage(long seed) {
        random = new Random(seed + 1000L * Integer.getInteger("fairlead.seed", 0));
    }

    /** One to three spots of {@code text} cut, doubled, exchanged or put in. */
    public String of(String text) {
        StringBuilder s = new StringBuilder(text);
        for (int n = 1 + random.nextInt(3); n > 0 && !s.isEmpty(); n--) {
            int at = random.nextInt(s.length());
            int end = Math.min(s.length(), at + 1 + random.nextInt(12));
            switch (random.nextInt(6)) {
                case 0 -> s.delete(at, end);
                case 1 -> s.insert(at, pick(BITS));
                case 2 -> s.replace(at, end, pick(BITS));
                case 3 -> s.insert(at, s.substring(at, Math.min(s.length(), at + random.nextInt(200))));
                case 4 -> s.setCharAt(at, (char) (' ' + random.nextInt(95)));
                default -> s.setLength(Math.max(1, random.nextInt(8) == 0 ? at : s.length()));
            }
        }
        return s.toString();
    }

    /** The same of bytes. */
    public byte[] of(byte[] bytes) {
        byte[] spoilt = bytes.clone();
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(8) == 0 ? java.util.Arrays.copyOf(spoilt, random.nextInt(spoilt.length)) : spoilt;
    }

    public <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    public int below(int n) {
        return random.nextInt(n);
    }
}
