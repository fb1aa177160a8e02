package dev.fairlead.audit.agree;

import dev.fairlead.audit.source.PlainTable;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.rules.catalogue.Catalogue;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A reviewer's own verdicts.
 *
 * @param byCase case to criterion to verdict; the empty criterion stands for the case as a whole
 * @param plain the reviewer speaks of warnings without their weight
 */
public record Reviewer(Map<String, Map<String, Word>> byCase, boolean plain) {
    /**
     * Reads a table with the columns case, verdict and, for verdicts on single criteria, criterion; the message of a
     * failure is for people.
     */
    public static Reviewer read(Path file, Catalogue catalogue) throws IOException, TableException {
        Map<String, Map<String, Word>> all = new LinkedHashMap<>();
        boolean plain = false;
        boolean weighted = false;
        int row = 1;
        List<Map<String, String>> rows = PlainTable.read(file);
        for (Map<String, String> cells : rows) {
            row++;
            if (!cells.containsKey("case") || !cells.containsKey("verdict")) {
                throw new TableException(
                        file + ": a table of verdicts has the columns case, verdict and perhaps criterion");
            }
            String criterion = cells.getOrDefault("criterion", "");
            Word verdict = Word.of(cells.get("verdict"));
            if (verdict == null || !criterion.isEmpty() && catalogue.criterion(criterion) == null) {
                throw new TableException(file + ": row " + row + ": "
                        + (verdict == null
                                ? "a verdict is one of " + Word.all()
                                : "no criterion is called " + criterion));
            }
            plain |= verdict == Word.WARN;
            weighted |= verdict == Word.CAUTION || verdict == Word.STOP;
            if (all.computeIfAbsent(cells.get("case"), c -> new LinkedHashMap<>())
                            .putIfAbsent(criterion, verdict)
                    != null) {
                throw new TableException(file + ": row " + row + ": a second verdict on the same"
                        + (criterion.isEmpty() ? " case" : " criterion of the same case"));
            }
        }
        if (plain && weighted) {
            throw new TableException(file + ": warnings are either all warn, or each caution or stop");
        }
        return new Reviewer(all, plain);
    }
}
