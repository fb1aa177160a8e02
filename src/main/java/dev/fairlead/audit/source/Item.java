package dev.fairlead.audit.source;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Problem;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One case as it stands in what is audited, not read yet.
 *
 * @param source where it stands, for people: file, line or row, entry
 * @param content its text, or what there is instead
 * @param reached bytes of all sources that were passed with it
 */
public record Item(String source, Content content, long reached) {
    /** Leaving a fact out may bring up another: a few times, not for ever. */
    private static final int ROUNDS = 4;

    /** What stands there. */
    public sealed interface Content permits Text, Row, Trouble {}

    /** The text of a case. */
    public record Text(byte[] bytes, CaseFormat format) implements Content {}

    /** A row of a table; text is made of it only by the thread that reads it. */
    public record Row(RowCase row) implements Content {}

    /** Nothing that could be read, and why. */
    public record Trouble(String why) implements Content {}

    /** Makes the text of a case of a table row, or throws with the reason why it cannot. */
    public interface RowCase {
        /** The text without what stands in the columns of these fields. */
        byte[] json(Set<String> leftOut) throws TableException;

        /** What is to be told of the row itself, such as cells that hold an error of the sheet. */
        default List<String> notes() {
            return List.of();
        }

        /** Words for the column of a field that may be left out because its cell cannot be read; empty for others. */
        default Optional<String> mayLeaveOut(String pointer) {
            return Optional.empty();
        }
    }

    /**
     * A case as it was read.
     *
     * @param text all of it
     * @param lost facts of a row that could not be read, with reasons; the case is read without them
     */
    public record Read(byte[] text, CaseReading reading, List<String> lost) {}

    /** The text of the case; throws when there is none. */
    public byte[] text() throws TableException {
        if (content instanceof Text t) {
            return t.bytes();
        }
        if (content instanceof Row r) {
            return r.row().json(Set.of());
        }
        throw new TableException(((Trouble) content).why());
    }

    /**
     * Reads the case; a cell of a table that cannot be read loses its fact and not the case. {@code verdicts} reads for
     * verdicts alone, without errors of measurement, unless the case may tell how it ended: what was foretold is held
     * against that with its error.
     */
    public Read read(boolean verdicts) throws TableException {
        byte[] text = text();
        boolean exact = verdicts && !mayEnd(text);
        CaseReading reading = exact ? readExact(text) : read(text);
        if (!(content instanceof Row r)) {
            return new Read(text, reading, List.of());
        }
        List<String> lost = new ArrayList<>(r.row().notes());
        Set<String> leftOut = new HashSet<>();
        CaseReading first = reading;
        for (int round = 0; round < ROUNDS && !reading.read(); round++) {
            for (Problem p : reading.errors()) {
                Optional<String> column = r.row().mayLeaveOut(p.pointer());
                if (column.isEmpty()) {
                    return new Read(text, first, lost);
                }
                if (leftOut.add(p.pointer())) {
                    lost.add(column.get() + ": expected " + p.expected() + ", found " + p.found());
                }
            }
            byte[] rest = r.row().json(leftOut);
            reading = exact ? readExact(rest) : read(rest);
        }
        return new Read(text, reading.read() ? reading : first, lost);
    }

    /** A backslash may spell any word. */
    private static boolean mayEnd(byte[] text) {
        String read = new String(text, StandardCharsets.UTF_8);
        return read.contains("holding") || read.indexOf('\\') >= 0;
    }

    /** Reads the case from its text. */
    public CaseReading read(byte[] text) {
        return CaseReader.read(text, source, format());
    }

    /** Reads the case for its verdicts alone, without errors of measurement. */
    public CaseReading readExact(byte[] text) {
        return CaseReader.readExact(text, source, format());
    }

    private CaseFormat format() {
        return content instanceof Text t ? t.format() : CaseFormat.JSON;
    }

    /** True when lines and columns of problems are those of a file that people can open. */
    public boolean hasLines() {
        return content instanceof Text;
    }
}
