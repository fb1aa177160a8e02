package dev.fairlead.intake;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;

/**
 * One record's place in a case: its pointers and what stands for its absent components, worked out once for all files,
 * since making them anew would cost more than the parsing.
 */
final class Place {
    private static final int KEPT = 64;
    private static final Place ROOT = new Place(RecordShape.ofCase(), "");

    final RecordShape shape;
    final String pointer;
    /** True when a component of the record must be there. */
    final boolean demanding;
    /** Keys of the fields, in their order. */
    final SerializableString[] keys;

    private final String[] pointers;
    private final Object[] blanks;
    // filled as they are met; a race makes an equal place twice, which does no harm since places never change
    private final Place[][] inner;

    private Place(RecordShape shape, String pointer) {
        this.shape = shape;
        this.pointer = pointer;
        int n = shape.fields().size();
        keys = new SerializableString[n];
        pointers = new String[n];
        blanks = new Object[n];
        inner = new Place[n][];
        boolean some = false;
        for (FieldShape f : shape.fields()) {
            some |= f.about().required();
            keys[f.index()] = new SerializedString(f.key());
            pointers[f.index()] = pointer + '/' + RecordShape.escape(f.key());
            blanks[f.index()] = RecordShape.blankOf(f, pointers[f.index()]);
            inner[f.index()] = new Place
                    [switch (f.kind()) {
                        case RECORD -> 1;
                        case LIST -> KEPT;
                        case TOOTH_MAP -> 90;
                        default -> 0;
                    }];
        }
        demanding = some;
    }

    static Place root() {
        return ROOT;
    }

    String pointer(FieldShape f) {
        return pointers[f.index()];
    }

    /** What stands for the component when it is absent. */
    Object blank(FieldShape f) {
        return blanks[f.index()];
    }

    /** A new row of component values, all absent. */
    Object[] blanks() {
        return blanks.clone();
    }

    Place nested(FieldShape f) {
        return inner(f, 0);
    }

    Place element(FieldShape f, int index) {
        return index < KEPT ? inner(f, index) : new Place(f.nested(), pointer(f) + '/' + index);
    }

    Place tooth(FieldShape f, Tooth tooth) {
        return inner(f, tooth.number());
    }

    private Place inner(FieldShape f, int slot) {
        Place known = inner[f.index()][slot];
        if (known == null) {
            known = new Place(f.nested(), f.kind() == Kind.RECORD ? pointer(f) : pointer(f) + '/' + slot);
            inner[f.index()][slot] = known;
        }
        return known;
    }
}
