package dev.fairlead.web.form;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Contacts;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lays out the records of a section: fields below each other, right beside left, teeth beside each other, entries of
 * lists.
 */
public final class FormBuilder {
    /** So many entries of a list are shown open. */
    private static final int FEW = 3;

    private static final List<String> SIDES = List.of("Right", "Left");

    private final Fields fields;
    private final String more;

    /** {@code more} is the pointer of a list that is to show one more entry, empty for none. */
    public FormBuilder(Fields fields, String more) {
        this.fields = fields;
        this.more = more;
    }

    /** The blocks of a section. */
    public List<Block> of(FormSection section) {
        List<Block> blocks = new ArrayList<>();
        List<FieldView> loose = new ArrayList<>();
        for (String root : section.roots()) {
            FieldShape shape = CasePaths.field(root).orElseThrow();
            if (shape.kind().fact() || shape.kind() == Kind.ID) {
                loose.add(fields.at(root, shape));
            } else if (shape.element() == Contacts.class) {
                blocks.add(contacts(FormWords.label(shape), root, shape.nested()));
            } else if (shape.kind() == Kind.RECORD) {
                String title = section.roots().size() == 1 ? "" : FormWords.label(shape);
                blocks.addAll(record(title, root, shape.nested()));
            } else if (shape.kind() == Kind.LIST) {
                blocks.add(list(root, shape));
            } else {
                blocks.addAll(new TeethBlocks(fields).teeth(root, shape.nested()));
            }
        }
        if (!loose.isEmpty()) {
            blocks.add(0, new Block.Fields("", loose));
        }
        return blocks;
    }

    /**
     * The blocks of one record: what comes before the sides, the sides beside each other, other single fields, then
     * records within.
     */
    public List<Block> record(String title, String pointer, RecordShape shape) {
        List<Block.Row> pairs = new ArrayList<>();
        List<FieldView> first = new ArrayList<>();
        List<FieldView> single = new ArrayList<>();
        List<Block> nested = new ArrayList<>();
        Set<String> done = new LinkedHashSet<>();
        for (FieldShape f : shape.fields()) {
            String at = pointer + "/" + RecordShape.escape(f.key());
            String base = side(f.key());
            FieldShape other = base == null ? null : shape.field(twin(f.key()));
            if (done.contains(f.key())) {
                continue;
            }
            if (other != null && f.kind() == Kind.RECORD) {
                done.add(other.key());
                String right = pointer + "/" + (f.key().equals("right") ? f.key() : other.key());
                String left = pointer + "/" + (f.key().equals("right") ? other.key() : f.key());
                f.nested()
                        .fields()
                        .forEach(n -> pairs.add(row(n, List.of(right + "/" + n.key(), left + "/" + n.key()))));
            } else if (base != null && other != null) {
                done.add(other.key());
                boolean isRight = f.key().toLowerCase(java.util.Locale.ROOT).endsWith("right");
                String twin = pointer + "/" + other.key();
                pairs.add(
                        pair(base, isRight ? at : twin, isRight ? twin : at, isRight ? f : other, isRight ? other : f));
            } else if (f.element() == Contacts.class) {
                nested.add(contacts(FormWords.label(f), at, f.nested()));
            } else if (f.kind() == Kind.RECORD) {
                nested.addAll(record(FormWords.label(f), at, f.nested()));
            } else if (f.kind() == Kind.TOOTH_MAP) {
                nested.addAll(new TeethBlocks(fields).incisors(FormWords.label(f), at, f.nested(), Set.of()));
            } else if (f.kind() == Kind.LIST) {
                nested.add(list(at, f));
            } else {
                // what is asked before the sides stands before them: the day of a visit, say
                (pairs.isEmpty() ? first : single).add(fields.at(at, f));
            }
        }
        List<Block> blocks = new ArrayList<>();
        if (!first.isEmpty()) {
            blocks.add(new Block.Fields(title, first));
        }
        if (!pairs.isEmpty()) {
            blocks.add(new Block.Grid(
                    first.isEmpty() && !title.isEmpty() ? title : FormWords.sides(pointer), SIDES, pairs, false));
        }
        if (!single.isEmpty()) {
            blocks.add(new Block.Fields(pairs.isEmpty() ? "" : FormWords.whole(pointer), single));
        }
        blocks.addAll(nested);
        return blocks;
    }

    /** The five contact points of the lower front teeth beside each other, as they stand in the mouth. */
    private Block contacts(String title, String pointer, RecordShape shape) {
        List<String> columns = shape.fields().stream().map(FieldShape::key).toList();
        List<FieldView> cells = shape.fields().stream()
                .map(f -> fields.at(pointer + "/" + RecordShape.escape(f.key()), f))
                .toList();
        return new Block.Grid(
                title,
                columns,
                List.of(new Block.Row(
                        "Displacement", "Between the anatomic contact points, in the horizontal plane.", "mm", cells)),
                true);
    }

    private Block.Row row(FieldShape f, List<String> pointers) {
        List<FieldView> cells = pointers.stream().map(p -> fields.at(p, f)).toList();
        return new Block.Row(
                cells.get(0).label(), cells.get(0).help(), cells.get(0).unit(), cells);
    }

    private Block.Row pair(String base, String right, String left, FieldShape rightShape, FieldShape leftShape) {
        List<FieldView> cells = List.of(fields.at(right, rightShape), fields.at(left, leftShape));
        String label = base.isEmpty()
                ? "Buccal segment"
                : FormWords.capital(base.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT));
        String help = help(rightShape.about().value(), leftShape.about().value());
        return new Block.Row(label, help, cells.get(0).unit(), cells);
    }

    /** One help for two sides where they differ in nothing but the side. */
    private static String help(String right, String left) {
        boolean alike = right.replace("on the right", "on the left").equals(left);
        return right.equals(left) ? right : alike ? right.replace("on the right", "on each side") : right + " " + left;
    }

    private Block list(String pointer, FieldShape shape) {
        List<Block.Entry> entries = new ArrayList<>();
        int n = fields.size(pointer) + (more.equals(pointer) ? 1 : 0);
        for (int i = 0; i < n; i++) {
            String at = pointer + "/" + i;
            boolean fresh = more.equals(pointer) && i == n - 1;
            entries.add(new Block.Entry(
                    entryTitle(shape, at, i), at, record("", at, shape.nested()), n <= FEW || fresh, fresh));
        }
        return new Block.Entries(FormWords.label(shape), shape.about().value(), pointer, entries, pointer + "/" + n);
    }

    /** What an entry is about: its tooth or its day where it has one. */
    private String entryTitle(FieldShape list, String at, int i) {
        String tooth = known(list, at, "tooth");
        if (!tooth.isEmpty()) {
            return "Film of tooth " + tooth;
        }
        String day = known(list, at, "date");
        return FormWords.label(list).replaceAll("s$", "") + " " + (i + 1) + (day.isEmpty() ? "" : ", " + day);
    }

    private String known(FieldShape list, String at, String key) {
        return list.nested().field(key) == null || at.startsWith("/landmarks")
                ? ""
                : fields.at(at + "/" + key).value();
    }

    /** What a key is about when it names a side; null when it names none. */
    private static @Nullable String side(String key) {
        for (String s : List.of("Left", "Right", "left", "right")) {
            if (key.equals(s) || Character.isUpperCase(s.charAt(0)) && key.endsWith(s)) {
                return key.substring(0, key.length() - s.length());
            }
        }
        return null;
    }

    private static String twin(String key) {
        return key.endsWith("eft")
                ? key.substring(0, key.length() - 4) + (key.endsWith("Left") ? "Right" : "right")
                : key.substring(0, key.length() - 5) + (key.endsWith("Right") ? "Left" : "left");
    }
}
