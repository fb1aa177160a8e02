package dev.fairlead.audit.source;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * A mapping proposed from the headings and first rows of somebody's own table, for a person to read and correct.
 *
 * @param json text of the mapping file
 * @param matched heading to the field that it is taken for
 * @param unmatched headings for which no field was found; they are ignored unless the file is changed
 * @param unsure what only a person can tell
 */
public record MappingProposal(String json, Map<String, String> matched, List<String> unmatched, List<String> unsure) {
    /** Below, heading and field have too little in common. */
    private static final double LEAST = 0.9;

    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("code", "id"),
            Map.entry("case", "id"),
            Map.entry("pseudonym", "id"),
            Map.entry("operator", "resident"),
            Map.entry("student", "resident"),
            Map.entry("trainee", "resident"),
            Map.entry("day", "date"),
            Map.entry("oj", "overjet"),
            Map.entry("ob", "overbite"),
            Map.entry("visit", "visits"),
            Map.entry("impa", "incisor mandibular"),
            Map.entry("fma", "mandibular plane"));
    private static final Set<String> IDLE =
            Set.of("mm", "deg", "degrees", "percent", "the", "of", "in", "at", "on", "weeks", "months", "years", "no");
    private static final Set<String> MISSING = Set.of("n/a", "na", "-", "–", "?", "unknown", "missing", "k.a.", "none");
    private static final Set<String> YES = Set.of("y", "j", "ja", "oui", "si", "x", "1", "true");
    private static final Set<String> NO = Set.of("n", "nein", "non", "0", "false");

    private record Match(String heading, String field, double score) {}

    /** Of a table in CSV or of a workbook. */
    public static MappingProposal of(Path file, TableOptions options) throws IOException, TableException {
        List<List<String>> rows = rows(file, options);
        int heading = options.headingRow() > 0 ? options.headingRow() - 1 : fullest(rows);
        if (heading >= rows.size()) {
            throw new TableException(file + ": there is no row of headings");
        }
        return of(rows.get(heading), rows.subList(heading + 1, rows.size()));
    }

    private static List<List<String>> rows(Path file, TableOptions options) throws IOException, TableException {
        if (file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            XlsxGuard.check(file);
            try (ReadableWorkbook book =
                    new ReadableWorkbook(file.toFile(), new ReadingOptions(XlsxGuard.styled(file), true))) {
                Sheet sheet = options.sheet().isEmpty()
                        ? book.getFirstSheet()
                        : book.findSheet(options.sheet())
                                .orElseThrow(() -> new TableException(
                                        "no sheet is called " + TableFields.quoted(options.sheet())));
                return XlsxTable.first(sheet);
            }
        }
        List<List<String>> rows = new ArrayList<>();
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file));
                CsvTable.Rows table = new CsvTable.Rows(in)) {
            for (List<String> row = table.next();
                    row != null && rows.size() < HeadingRow.SEARCHED;
                    row = table.next()) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** The first row with the most texts: headings have no gaps, titles have one cell. */
    private static int fullest(List<List<String>> rows) {
        int best = 0;
        long most = -1;
        for (int r = 0; r < rows.size(); r++) {
            long texts = rows.get(r).stream()
                    .filter(c -> c != null && c.matches(".*\\p{L}.*"))
                    .distinct()
                    .count();
            if (texts > most) {
                most = texts;
                best = r;
            }
        }
        return best;
    }

    static MappingProposal of(List<String> headings, List<List<String>> rows) {
        List<Match> matches = new ArrayList<>();
        List<String> own = headings.stream()
                .map(h -> h == null ? "" : h.strip())
                .filter(h -> !h.isEmpty() && TableFields.pointer(h) == null)
                .toList();
        Map<String, Set<String>> fields = new LinkedHashMap<>();
        TableFields.headings().forEach((key, shape) -> fields.put(key, words(key)));
        for (String h : own) {
            Set<String> words = words(h);
            fields.forEach((key, field) -> {
                double score = score(words, field);
                if (score >= LEAST) {
                    matches.add(new Match(h, key, score));
                }
            });
        }
        matches.sort(Comparator.comparingDouble((Match m) -> -m.score()).thenComparing(Match::field));
        Map<String, String> matched = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>(headings);
        for (Match m : matches) {
            if (!matched.containsKey(m.heading()) && taken.add(m.field())) {
                matched.put(m.heading(), m.field());
            }
        }
        List<String> unmatched =
                own.stream().filter(h -> !matched.containsKey(h)).toList();
        return written(headings, rows, matched, unmatched);
    }

    private static double score(Set<String> heading, Set<String> field) {
        if (heading.isEmpty()) {
            return 0;
        }
        long hits = heading.stream().filter(field::contains).count();
        return (double) hits / heading.size() + 0.5 * hits / field.size();
    }

    private static Set<String> words(String text) {
        String plain = text.replaceAll("\\(.*?\\)", " ")
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\bv(?:isit)?\\s?(\\d)\\b", "visits $1")
                .replaceAll("[^\\p{L}\\d]+", " ")
                .strip();
        Set<String> words = new LinkedHashSet<>();
        for (String w : plain.split(" ")) {
            if (!w.isEmpty() && !IDLE.contains(w)) {
                words.addAll(Arrays.asList(SYNONYMS.getOrDefault(w, w).split(" ")));
            }
        }
        return words;
    }

    private static MappingProposal written(
            List<String> headings, List<List<String>> rows, Map<String, String> matched, List<String> unmatched) {
        Set<String> dates = new TreeSet<>();
        Set<String> missing = new TreeSet<>();
        Set<String> yes = new TreeSet<>();
        Set<String> no = new TreeSet<>();
        List<String> unsure = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            String heading = headings.get(i) == null ? "" : headings.get(i).strip();
            FieldShape field = TableFields.headings().get(matched.getOrDefault(heading, heading));
            Set<String> cells = new TreeSet<>();
            for (List<String> row : rows) {
                String cell = i < row.size() && row.get(i) != null ? row.get(i).strip() : "";
                String low = cell.toLowerCase(Locale.ROOT);
                if (MISSING.contains(low)) {
                    missing.add(cell);
                } else if (field != null && field.kind() == Kind.ANSWER && YES.contains(low)) {
                    yes.add(cell);
                } else if (field != null && field.kind() == Kind.ANSWER && NO.contains(low)) {
                    no.add(cell);
                } else {
                    cells.add(cell);
                }
            }
            if (field != null && field.kind() == Kind.DATE) {
                form(heading, cells, dates, unsure);
            }
        }
        JsonMapper json = JsonMapper.builder()
                .defaultPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")))
                .build();
        ObjectNode root = json.createObjectNode();
        matched.forEach(root.putObject("columns")::put);
        root.set("ignore", json.valueToTree(unmatched));
        Map.of("dates", dates, "missing", missing, "yes", yes, "no", no).entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .filter(e -> !e.getValue().isEmpty())
                .forEach(e -> root.set(e.getKey(), json.valueToTree(e.getValue())));
        try {
            return new MappingProposal(
                    json.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n", matched, unmatched, unsure);
        } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
            throw new IllegalStateException("a tree can always be written", e);
        }
    }

    private static void form(String heading, Set<String> cells, Set<String> dates, List<String> unsure) {
        for (String mark : List.of(".", "/", "-")) {
            String m = java.util.regex.Pattern.quote(mark);
            List<String[]> days = cells.stream()
                    .filter(c -> c.matches("\\d{1,2}" + m + "\\d{1,2}" + m + "\\d{4}"))
                    .map(c -> c.split(m))
                    .toList();
            if (days.isEmpty()) {
                continue;
            }
            boolean dayFirst = mark.equals(".") || days.stream().anyMatch(d -> Integer.parseInt(d[0]) > 12);
            boolean monthFirst = days.stream().anyMatch(d -> Integer.parseInt(d[1]) > 12);
            if (dayFirst == monthFirst) {
                unsure.add(TableFields.quoted(heading) + ": day or month first? Write d" + mark + "M" + mark
                        + "yyyy or M" + mark + "d" + mark + "yyyy under \"dates\"");
            } else {
                dates.add((dayFirst ? "d" + mark + "M" : "M" + mark + "d") + mark + "yyyy");
            }
        }
    }
}
