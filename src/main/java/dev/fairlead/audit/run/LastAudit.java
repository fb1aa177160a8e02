package dev.fairlead.audit.run;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.rules.catalogue.Catalogue;
import dev.fairlead.rules.catalogue.Criterion;
import dev.fairlead.rules.catalogue.Ending;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which warnings stood open at an earlier audit, from the rows that it wrote. */
public final class LastAudit {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final List<String> ids;
    private final Map<String, BitSet> open = new HashMap<>();

    private LastAudit(Catalogue catalogue) {
        ids = catalogue.criteria().stream().map(Criterion::id).toList();
    }

    /** Reads rows of an audit, one a line; states of which there was a later one are passed over. */
    public static LastAudit read(Path file, Catalogue catalogue) throws IOException, TableException {
        LastAudit last = new LastAudit(catalogue);
        int number = 0;
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                JsonNode row = JSON.readTree(line);
                if (!row.has("source") || !row.has("case") && !row.has("not")) {
                    throw new TableException(file + ":" + number
                            + ": no row of an audit; write it with audit --format ndjson -o " + file.getFileName());
                }
                if (row.has("case") && !row.path("superseded").asBoolean()) {
                    last.add(row);
                }
            }
        } catch (JsonProcessingException e) {
            throw new TableException(file + ":" + number + ": no row of an audit ("
                    + e.getOriginalMessage().split("\n")[0] + ")");
        }
        return last;
    }

    private void add(JsonNode row) {
        BitSet warned = new BitSet();
        for (String weight : List.of("stop", "caution")) {
            row.path(weight).forEach(id -> set(warned, id.asText(), true));
        }
        row.path("waived").forEach(id -> set(warned, id.asText(), false));
        open.put(row.path("case").asText(), warned);
    }

    /** A criterion that is no longer there is passed over. */
    private void set(BitSet to, String id, boolean value) {
        int at = ids.indexOf(id);
        if (at >= 0) {
            to.set(at, value);
        }
    }

    /**
     * What became of a case since.
     *
     * @param known it stood in the earlier audit
     * @param fresh warnings that are open now and were not then, all of a case that was not there
     * @param gone warnings that were open then and are not now
     */
    public record Change(boolean known, int fresh, int gone) {}

    public Change of(CaseRow row) {
        BitSet now = new BitSet();
        for (int i = 0; i < row.endings().length; i++) {
            Ending ending = row.ending(i);
            now.set(i, ending != null && ending.warns() && !row.waived().contains(ids.get(i)));
        }
        BitSet then = open.get(row.id());
        if (then == null) {
            return new Change(false, now.cardinality(), 0);
        }
        BitSet fresh = (BitSet) now.clone();
        fresh.andNot(then);
        BitSet gone = (BitSet) then.clone();
        gone.andNot(now);
        return new Change(true, fresh.cardinality(), gone.cardinality());
    }
}
