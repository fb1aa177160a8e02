package dev.fairlead.web.form;

import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Teeth beside each other as a dentist looks at them: the patient's right on the left. */
final class TeethBlocks {
    private static final List<Integer> LOWER = List.of(47, 46, 45, 44, 43, 42, 41, 31, 32, 33, 34, 35, 36, 37);
    private static final List<Integer> PRIMARY = List.of(85, 84, 83, 73, 74, 75);
    private static final List<Integer> UPPER = List.of(13, 12, 11, 21, 22, 23);
    private static final List<Integer> INCISORS = List.of(42, 41, 31, 32);
    private static final Set<String> EVERY_TOOTH = Set.of("state", "width");

    private final Fields fields;

    TeethBlocks(Fields fields) {
        this.fields = fields;
    }

    /** The lower chart, the gingiva of the lower incisors, upper front teeth, and whatever other teeth the case has. */
    List<Block> teeth(String pointer, RecordShape shape) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(chart("Lower teeth", pointer, shape, LOWER, EVERY_TOOTH));
        blocks.addAll(incisors("Gingiva of the lower incisors", pointer, shape, EVERY_TOOTH));
        blocks.add(chart("Lower primary canines and molars", pointer, shape, PRIMARY, EVERY_TOOTH));
        blocks.add(chart("Upper front teeth", pointer, shape, UPPER, EVERY_TOOTH));
        Set<Integer> others = new TreeSet<>();
        fields.keys(pointer).stream()
                .filter(k -> k.matches("[1-8][1-8]") && Tooth.exists(Integer.parseInt(k)))
                .map(Integer::valueOf)
                .forEach(others::add);
        others.removeAll(LOWER);
        others.removeAll(PRIMARY);
        others.removeAll(UPPER);
        if (!others.isEmpty()) {
            blocks.add(chart("Other teeth in this case", pointer, shape, List.copyOf(others), EVERY_TOOTH));
        }
        return blocks;
    }

    /** A table of the four lower incisors, without the fields named in {@code not}. */
    List<Block> incisors(String title, String pointer, RecordShape shape, Set<String> not) {
        List<FieldShape> wanted =
                shape.fields().stream().filter(f -> !not.contains(f.key())).toList();
        return List.of(new Block.Grid(
                title, INCISORS.stream().map(String::valueOf).toList(), rows(pointer, wanted, INCISORS), false));
    }

    private Block chart(String title, String pointer, RecordShape shape, List<Integer> teeth, Set<String> keys) {
        List<FieldShape> wanted =
                shape.fields().stream().filter(f -> keys.contains(f.key())).toList();
        return new Block.Grid(title, teeth.stream().map(String::valueOf).toList(), rows(pointer, wanted, teeth), true);
    }

    private List<Block.Row> rows(String pointer, List<FieldShape> wanted, List<Integer> teeth) {
        return wanted.stream()
                .map(f -> {
                    List<FieldView> cells = teeth.stream()
                            .map(t -> fields.at(pointer + "/" + t + "/" + f.key(), f))
                            .toList();
                    return new Block.Row(
                            cells.get(0).label(),
                            f.about().value(),
                            cells.get(0).unit(),
                            cells);
                })
                .toList();
    }
}
