package dev.fairlead.intake.bind;

import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;

/**
 * One record's place in a case: its pointers and what stands for its absent components, worked out once for all files,
 * since making them anew would cost more than the parsing.
 */
public final class RecordPlace {
    private static final int KEPT = 64;
    private static final RecordPlace ROOT = new RecordPlace(RecordShape.ofCase(), "");

    final RecordShape shape;
    final String pointer;
    /** True when a component of the record must be there. */
    final boolean demanding;

    private final String[] pointers;
    private final Object[] blanks;
    // filled as they are met; a race makes an equal place twice, which does no harm since places never change
    private final RecordPlace[][] inner;

    private RecordPlace(RecordShape shape, String pointer) {
        this.shape = shape;
        this.pointer = pointer;
        int n = shape.fields().size();
        pointers = new String[n];
        blanks = new Object[n];
        inner = new RecordPlace[n][];
        boolean some = false;
        for (FieldShape f : shape.fields()) {
            some |= f.about().required();
            pointers[f.index()] = pointer + '/' + RecordShape.escape(f.key());
            blanks[f.index()] = RecordShape.blankOf(f, pointers[f.index()]);
            inner[f.index()] = new RecordPlace
                    [switch (f.kind()) {
                        case RECORD -> 1;
                        case LIST -> KEPT;
                        case TOOTH_MAP -> 90;
                        default -> 0;
                    }];
        }
        demanding = some;
    }

    public static RecordPlace root() {
        return ROOT;
    }

    public String pointer(FieldShape f) {
        return pointers[f.index()];
    }

    /** What stands for the component when it is absent. */
    public Object blank(FieldShape f) {
        return blanks[f.index()];
    }

    /** A new row of component values, all absent. */
    public Object[] blanks() {
        return blanks.clone();
    }

    RecordPlace nested(FieldShape f) {
        return inner(f, 0);
    }

    public RecordPlace element(FieldShape f, int index) {
        return index < KEPT ? inner(f, index) : new RecordPlace(f.nested(), pointer(f) + '/' + index);
    }

    RecordPlace tooth(FieldShape f, Tooth tooth) {
        return inner(f, tooth.number());
    }

    private RecordPlace inner(FieldShape f, int slot) {
        RecordPlace known = inner[f.index()][slot];
        if (known == null) {
            known = new RecordPlace(f.nested(), f.kind() == Kind.RECORD ? pointer(f) : pointer(f) + '/' + slot);
            inner[f.index()][slot] = known;
        }
        return known;
    }
}
