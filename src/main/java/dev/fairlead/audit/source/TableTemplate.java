package dev.fairlead.audit.source;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.UnreadableTextException;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.write.BlankCase;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.FieldShape;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** A table to begin with: a column for every field of a case, and one invented row that shows how it is filled in. */
public final class TableTemplate {
    private static final CaseTree EXAMPLE = parsed();

    private TableTemplate() {}

    /** What a table is to have columns for: all that is filled in up to a stage, or only what the example fills in. */
    public record Wanted(Stage upTo, boolean minimal) {
        /** The headings of it, in the order of the columns, and the field of each. */
        Map<String, FieldShape> headings() {
            Map<String, FieldShape> all = new LinkedHashMap<>(TableFields.headings());
            all.keySet()
                    .removeIf(h -> !BlankCase.filledBy(h.replaceAll("\\..*", ""), upTo)
                            || minimal && example(h).isEmpty());
            return all;
        }
    }

    /** Heading and example, divided by commas. */
    public static String csv(Wanted wanted) {
        return wanted.headings().keySet().stream().collect(Collectors.joining(",")) + "\n"
                + example(wanted).stream()
                        .map(c -> c.contains(",") || c.contains("\"") ? '"' + c.replace("\"", "\"\"") + '"' : c)
                        .collect(Collectors.joining(","))
                + "\n";
    }

    /** The same as a workbook, with a second sheet that explains every column. */
    public static void xlsx(OutputStream to, Wanted wanted) throws IOException {
        try (Workbook book = new Workbook(to, "Fairlead", null)) {
            Worksheet cases = book.newWorksheet("cases");
            List<String> example = example(wanted);
            int column = 0;
            for (String heading : wanted.headings().keySet()) {
                cases.value(0, column, heading);
                cases.style(0, column).bold().set();
                if (!example.get(column).isEmpty()) {
                    cases.value(1, column, example.get(column));
                }
                cases.width(column, Math.max(10, heading.length() + 2));
                column++;
            }
            cases.freezePane(1, 1);
            Worksheet fields = book.newWorksheet("fields");
            List<String> head = List.of("column", "meaning", "how to fill it in");
            for (int i = 0; i < head.size(); i++) {
                fields.value(0, i, head.get(i));
                fields.style(0, i).bold().set();
                fields.width(i, new int[] {32, 80, 60}[i]);
            }
            int row = 1;
            for (Map.Entry<String, FieldShape> e : wanted.headings().entrySet()) {
                List<String> cells = TableFields.explained(e.getKey(), e.getValue());
                for (int i = 0; i < cells.size(); i++) {
                    fields.value(row, i, cells.get(i));
                }
                row++;
            }
        }
    }

    /** A mapping file that names some columns of a table of one's own; to be changed. */
    public static String mapping() {
        JsonMapper json = JsonMapper.builder()
                .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
                .build();
        ObjectNode root = json.createObjectNode();
        ObjectNode columns = root.putObject("columns");
        columns.put("Code", "id")
                .put("Stage", "stage")
                .put("Seen on", "date")
                .put("Planned by", "resident")
                .put("Overjet (mm)", "bite.overjet")
                .put("Visit 1: stand-off left", "visits.1.left.standOff");
        root.putObject("constants").put("plan.intervalWeeks", "4");
        root.putObject("words").putObject("Stage").put("1", "records").put("2", "indication");
        root.putArray("ignore").add("Remarks");
        try {
            return json.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    private static List<String> example(Wanted wanted) {
        List<String> row = new ArrayList<>();
        for (String heading : wanted.headings().keySet()) {
            row.add(example(heading).orElse(""));
        }
        return row;
    }

    /** What the example case says in the column of that heading. */
    private static Optional<String> example(String heading) {
        return EXAMPLE.get(Objects.requireNonNull(TableFields.pointer(heading)));
    }

    private static CaseTree parsed() {
        try {
            return CaseTree.parse(BlankCase.minimal(), CaseFormat.YAML);
        } catch (UnreadableTextException e) {
            throw new IllegalStateException("the example is a case", e);
        }
    }
}
