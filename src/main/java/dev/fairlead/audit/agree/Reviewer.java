package dev.fairlead.audit.agree;

import dev.fairlead.audit.source.PlainTable;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.rules.catalogue.Catalogue;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Reviewers' own verdicts.
 *
 * @param byCase case to criterion to reviewer to verdict; the empty criterion stands for the case as a whole
 * @param names of the reviewers, in order; one empty name where the table does not tell them
 * @param plain warnings are given without their weight
 */
public record Reviewer(Map<String, Map<String, Map<String, Word>>> byCase, List<String> names, boolean plain) {
    /**
     * Reads a table with the columns case, verdict and perhaps criterion and reviewer; rows without a verdict are
     * passed over. The message of a failure is for people.
     */
    public static Reviewer read(Path file, Catalogue catalogue) throws IOException, TableException {
        Map<String, Map<String, Map<String, Word>>> all = new LinkedHashMap<>();
        Set<String> names = new TreeSet<>();
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
            if (cells.get("verdict").isEmpty()) {
                continue;
            }
            String reviewer = cells.getOrDefault("reviewer", "");
            names.add(reviewer);
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
                            .computeIfAbsent(criterion, c -> new TreeMap<>())
                            .putIfAbsent(reviewer, verdict)
                    != null) {
                throw new TableException(file + ": row " + row + ": a second verdict on the same"
                        + (criterion.isEmpty() ? " case" : " criterion of the same case"));
            }
        }
        if (plain && weighted) {
            throw new TableException(file + ": warnings are either all warn, or each caution or stop");
        }
        return new Reviewer(all, List.copyOf(names), plain);
    }
}
