package dev.fairlead.audit.compare;

import dev.fairlead.audit.source.Item;
import dev.fairlead.audit.source.TableException;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.model.Case;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads a case and does something with it; a case that cannot be read becomes a reason. */
final class Reader {
    /** What came of a case, or why nothing did. */
    record Got<T>(String source, String id, @Nullable T value, String trouble) {}

    private Reader() {}

    static <T> Got<T> with(Item item, Function<Case, T> work) {
        try {
            CaseReading reading = item.read(false).reading();
            if (!reading.read()) {
                return new Got<>(
                        item.source(), "", null, reading.errors().get(0).toString());
            }
            Case c = reading.value().orElseThrow();
            return new Got<>(item.source(), c.id(), work.apply(c), "");
        } catch (TableException e) {
            return new Got<>(item.source(), "", null, e.getMessage());
        }
    }

    static <T> Got<T> givenUp(Item item) {
        return new Got<>(item.source(), "", null, "given up for time");
    }
}
