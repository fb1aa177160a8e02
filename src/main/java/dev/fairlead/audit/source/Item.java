package dev.fairlead.audit.source;

import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.CaseFormat;

/**
 * One case as it stands in what is audited, not read yet.
 *
 * @param source where it stands, for people: file, line or row, entry
 * @param content its text, or what there is instead
 * @param reached bytes of all sources that were passed with it
 */
public record Item(String source, Content content, long reached) {
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
        byte[] json() throws TableException;
    }

    /** The text of the case; throws when there is none. */
    public byte[] text() throws TableException {
        if (content instanceof Text t) {
            return t.bytes();
        }
        if (content instanceof Row r) {
            return r.row().json();
        }
        throw new TableException(((Trouble) content).why());
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
