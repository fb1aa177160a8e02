package dev.fairlead.web.page;

import dev.fairlead.report.sheet.Paper;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/**
 * On which paper sheets are printed: the one that was last asked for while the program runs; until then the usual one
 * of the browser's country.
 */
final class PaperChoice {
    /** Countries that print on Letter: Unicode CLDR, supplemental data, paper size US-Letter. */
    private static final Set<String> LETTER =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

    private final AtomicReference<Paper> last = new AtomicReference<>();

    /** The paper that a request names; without a name, or with one that is none, what is usual. */
    Paper asked(String name, String acceptLanguage) {
        for (Paper p : Paper.values()) {
            if (p.name().equalsIgnoreCase(name)) {
                last.set(p);
                return p;
            }
        }
        return usual(acceptLanguage);
    }

    /** All papers, the likely one first. */
    List<Paper> all(String acceptLanguage) {
        return usual(acceptLanguage) == Paper.LETTER
                ? List.of(Paper.LETTER, Paper.A4)
                : List.of(Paper.A4, Paper.LETTER);
    }

    private Paper usual(String acceptLanguage) {
        Paper known = last.get();
        if (known != null) {
            return known;
        }
        String first = acceptLanguage == null ? "" : acceptLanguage.split("[,;]")[0].strip();
        return LETTER.contains(Locale.forLanguageTag(first).getCountry()) ? Paper.LETTER : Paper.A4;
    }

    /** How a paper reads. */
    static String words(Paper paper) {
        return paper == Paper.A4 ? "A4" : "Letter";
    }
}
