package dev.fairlead.audit.source;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.model.shape.RecordShape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;

/**
 * Names of fields as headings of a table: keys with points between, such as {@code teeth.42.width}; entries of lists
 * are counted from 1, so that {@code visits.1.date} is the first visit. A JSON Pointer is taken too, with entries from
 * 0.
 */
public final class TableFields {
    /** How many entries of a list a table has columns for. */
    private static final Map<String, Integer> ENTRIES = Map.of("visits", 4, "images", 4, "waivers", 1);

    private static final List<Tooth> TEETH = Stream.of(
                    42, 41, 31, 32, 43, 44, 45, 46, 47, 33, 34, 35, 36, 37, 13, 12, 11, 21, 22, 23, 75, 85)
            .map(Tooth::of)
            .toList();
    private static final int NEAR = 3;
    private static final Map<String, FieldShape> ALL = all();

    private TableFields() {}

    /** Headings of a table with a column for every field that one row can hold, and the field of each. */
    public static Map<String, FieldShape> headings() {
        return ALL;
    }

    /** The JSON Pointer of a heading, or null when it names no field. */
    static @Nullable String pointer(String heading) {
        String pointer = heading;
        if (!heading.startsWith("/")) {
            String[] steps = heading.split("\\.", -1);
            StringBuilder path = new StringBuilder();
            for (String step : steps) {
                boolean entry = CasePaths.field(path.toString())
                        .map(FieldShape::kind)
                        .filter(k -> k == Kind.LIST)
                        .isPresent();
                if (entry && !step.matches("[1-9][0-9]{0,2}")) {
                    return null;
                }
                path.append('/').append(entry ? Integer.toString(Integer.parseInt(step) - 1) : step);
            }
            pointer = path.toString();
        }
        Optional<FieldShape> field = CasePaths.field(pointer);
        return field.isPresent()
                        && (field.get().kind().fact()
                                || field.get().kind() == Kind.ID
                                || field.get().kind() == Kind.FORMAT)
                ? pointer
                : null;
    }

    /** Says that a heading names no field, and which one may be meant. */
    static String unknown(String heading) {
        LevenshteinDistance distance = new LevenshteinDistance(NEAR);
        String near = heading.length() > 80
                ? null
                : ALL.keySet().stream()
                        .filter(k -> distance.apply(k, heading) >= 0)
                        .min(java.util.Comparator.comparing(k -> distance.apply(k, heading)))
                        .orElse(null);
        return "no field is called " + quoted(heading)
                + (near == null
                        ? "; name it in a mapping file, or tell there to ignore it"
                        : "; likely " + near + " is meant");
    }

    static String quoted(String text) {
        String shown = FileNames.shown(text);
        return '"' + (shown.length() > 40 ? shown.substring(0, 40) + "…" : shown) + '"';
    }

    private static Map<String, FieldShape> all() {
        Map<String, FieldShape> all = new LinkedHashMap<>();
        record(RecordShape.ofCase(), "", all);
        return all;
    }

    private static void record(RecordShape shape, String path, Map<String, FieldShape> all) {
        for (FieldShape f : shape.fields()) {
            String key = path + f.key();
            switch (f.kind()) {
                case RECORD -> record(f.nested(), key + ".", all);
                case TOOTH_MAP -> {
                    List<Tooth> teeth = f.key().equals("teeth") ? TEETH : Tooth.LOWER_INCISORS;
                    for (Tooth t : teeth) {
                        boolean whole = Tooth.LOWER_INCISORS.contains(t);
                        List<FieldShape> fields = f.nested().fields();
                        (whole ? fields : fields.subList(0, 2)).forEach(x -> all.put(key + "." + t + "." + x.key(), x));
                    }
                }
                case LIST -> {
                    for (int i = 1; i <= ENTRIES.getOrDefault(f.key(), 0); i++) {
                        record(f.nested(), key + "." + i + ".", all);
                    }
                }
                case FORMAT -> {}
                default -> all.put(key, f);
            }
        }
    }

    /** What a field holds, in a few words, for the sheet that explains a table. */
    public static List<String> explained(String heading, FieldShape f) {
        List<String> row = new ArrayList<>(List.of(heading, f.about().value()));
        row.add(
                switch (f.kind()) {
                    case QUANTITY ->
                        "number in "
                                + (f.about().unit().symbol().isEmpty()
                                        ? f.about().unit().name().toLowerCase(java.util.Locale.ROOT)
                                        : f.about().unit().symbol())
                                + "; two readings as 5.4; 5.5";
                    case ANSWER -> "yes or no";
                    case CHOICE -> String.join(", ", f.words());
                    case DATE -> "day, such as 2026-03-09";
                    case TOOTH -> "tooth number";
                    default -> "text";
                });
        return row;
    }
}
