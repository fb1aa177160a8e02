package dev.fairlead.audit.run;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Makes rows fit to be shared: new codes for cases, residents and sites under a key that is thrown away, all days
 * shifted by the same number, no source, no reason in words. Residents and sites with fewer than five cases lose their
 * code.
 */
public final class Recoder {
    /** Counts below this are not told. */
    public static final int FEWEST = 5;

    private static final int MOST_SHIFT = 400;
    private static final int LEAST_SHIFT = 30;

    private final byte[] key;
    private final long shift;
    private final Map<String, Integer> residents = new HashMap<>();
    private final Map<String, Integer> sites = new HashMap<>();
    private long number;

    /** With a new key, and a new shift of one to thirteen months to either side. */
    public Recoder() {
        SecureRandom random = new SecureRandom();
        key = new byte[32];
        random.nextBytes(key);
        int days = LEAST_SHIFT + random.nextInt(MOST_SHIFT - LEAST_SHIFT + 1);
        shift = random.nextBoolean() ? days : -days;
    }

    /** Counts the case of a row; all have to be counted before the first is made anew. */
    public void count(CaseRow row) {
        if (row.judged() && !row.superseded()) {
            residents.merge(row.resident(), 1, Integer::sum);
            sites.merge(row.details().site(), 1, Integer::sum);
        }
    }

    /** The row to be shared. */
    public CaseRow of(CaseRow row) {
        String source = "case " + ++number;
        if (!row.judged()) {
            return CaseRow.not(row.kind(), source, "", "not told");
        }
        CaseRow.Details d = row.details();
        return new CaseRow(
                source,
                row.kind(),
                "",
                code("c", row.id()),
                "",
                row.stage(),
                group("r", row.resident(), residents),
                day(row.day()),
                row.endings(),
                row.waived(),
                row.missing(),
                row.notes().stream()
                        .map(n -> new CaseRow.Note(n.criterion(), n.kind(), ""))
                        .toList(),
                List.of(),
                row.doubts(),
                List.of(),
                day(row.recorded()),
                row.course(),
                new CaseRow.Details(
                        group("s", d.site(), sites),
                        d.waivers().stream()
                                .map(w -> new CaseRow.Answered(
                                        w.criterion(), w.by(), day(w.date()), day(w.expires()), ""))
                                .toList(),
                        d.attained(),
                        d.values()),
                row.superseded());
    }

    private String group(String letter, String code, Map<String, Integer> cases) {
        return code.isEmpty() || cases.getOrDefault(code, 0) < FEWEST ? "" : code(letter, code);
    }

    private String day(String day) {
        return day.isEmpty() ? "" : LocalDate.parse(day).plusDays(shift).toString();
    }

    private String code(String letter, String old) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            byte[] made = mac.doFinal((letter + old).getBytes(StandardCharsets.UTF_8));
            return letter + HexFormat.of().formatHex(made, 0, 6);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has HmacSHA256", e);
        }
    }
}
