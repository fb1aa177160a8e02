package dev.fairlead.audit.write;

import dev.fairlead.audit.run.CaseRow;
import dev.fairlead.audit.summary.Heading;
import dev.fairlead.audit.summary.Summary;
import java.io.Closeable;
import java.io.IOException;

/** Takes the rows of an audit in order, and what they say together at the end. */
public interface RowSink extends Closeable {
    void row(CaseRow row) throws IOException;

    /** All rows have come. */
    default void end(Heading heading, Summary summary) throws IOException {}
}
