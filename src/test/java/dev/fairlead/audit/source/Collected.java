package dev.fairlead.audit.source;

import dev.fairlead.intake.CaseReading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** All that sources hand on, for tests. */
final class Collected {
    private Collected() {}

    static List<Item> items(Mapping mapping, Path... paths) throws IOException {
        List<Item> all = new ArrayList<>();
        new Sources(List.of(paths), mapping).each(all::add);
        return all;
    }

    static List<Item> items(Path... paths) throws IOException {
        return items(Mapping.NONE, paths);
    }

    /** The pseudonym of the case, or the reason why there is none. */
    static String told(Item item) {
        try {
            CaseReading r = item.read(false).reading();
            return r.read() ? r.value().orElseThrow().id() : r.errors().get(0).toString();
        } catch (TableException e) {
            return e.getMessage();
        }
    }
}
