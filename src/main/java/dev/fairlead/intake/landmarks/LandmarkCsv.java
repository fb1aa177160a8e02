package dev.fairlead.intake.landmarks;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import dev.fairlead.intake.bind.Input;
import dev.fairlead.intake.bind.Numbering;
import dev.fairlead.intake.bind.QuantityParts;
import dev.fairlead.intake.bind.RecordPlace;
import dev.fairlead.intake.crosscheck.SideSwaps;
import dev.fairlead.intake.spelling.CaseWords;
import dev.fairlead.intake.spelling.Nearest;
import dev.fairlead.intake.spelling.Privacy;
import dev.fairlead.intake.spelling.Quantities;
import dev.fairlead.intake.spelling.Slips;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.text.Decoding;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.text.Problems;
import dev.fairlead.intake.text.Severity;
import dev.fairlead.model.Landmark;
import dev.fairlead.model.Measured;
import dev.fairlead.model.Tooth;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.RecordShape;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Reads digitised points from a table with the columns tooth, x, y and perhaps point and z, in mm, divided by commas,
 * semicolons or tabs.
 */
public final class LandmarkCsv {
    /** The points, unless there was an error, and every problem; pointers are those that the points have in a case. */
    public record Points(String name, Optional<List<Landmark>> value, List<Problem> problems) {}

    private static final CsvFactory CSV = CsvFactory.builder()
            .enable(CsvParser.Feature.TRIM_SPACES)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .build();
    private static final RecordShape SHAPE = RecordShape.of(Landmark.class);
    private static final int MOST = 2000;

    private LandmarkCsv() {}

    /** Reads the bytes of a table; {@code name} is only passed on. */
    public static Points read(byte[] bytes, String name) {
        Problems problems = new Problems();
        String text = Decoding.text(bytes, problems);
        List<Landmark> points = new ArrayList<>();
        if (text != null) {
            rows(text, points, problems);
            if (SideSwaps.mirrored(points)) {
                problems.add(new Problem(
                        Severity.DOUBT,
                        "/landmarks",
                        1,
                        1,
                        "x that grows to the patient's left",
                        "x of the left teeth below that of the right teeth",
                        Optional.of("a mirrored model or photograph"),
                        "turn the sign of x if that is so"));
            }
        }
        List<Problem> all = problems.located("", CaseFormat.JSON);
        return new Points(name, problems.errors() ? Optional.empty() : Optional.of(List.copyOf(points)), all);
    }

    private static void rows(String text, List<Landmark> points, Problems problems) {
        String header = text.stripLeading().lines().findFirst().orElse("");
        char separator = header.indexOf(';') >= 0 ? ';' : header.indexOf('\t') >= 0 ? '\t' : ',';
        try (CsvParser p = CSV.createParser(text)) {
            p.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
            Map<Integer, FieldShape> columns = null;
            while (p.nextToken() == JsonToken.START_ARRAY) {
                Map<Integer, Cell> row = new HashMap<>();
                int line = -1;
                while (p.nextToken() == JsonToken.VALUE_STRING) {
                    line = line < 0 ? p.currentTokenLocation().getLineNr() : line;
                    row.put(
                            row.size(),
                            new Cell(
                                    p.getText().strip(),
                                    line,
                                    Math.max(1, p.currentTokenLocation().getColumnNr())));
                }
                if (columns == null) {
                    columns = header(row, problems);
                } else if (points.size() < MOST) {
                    points.add(point(row, columns, points.size(), problems));
                } else {
                    problems.add(new Problem(
                            Severity.ERROR, "", line, 1, "at most " + MOST + " points", "more", Optional.empty(), ""));
                    return;
                }
            }
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            problems.add(new Problem(
                    Severity.ERROR,
                    "",
                    line,
                    1,
                    "a table",
                    "text that is no table with " + separator,
                    Optional.empty(),
                    "look for an open quotation mark"));
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory cannot fail", e);
        }
        if (points.isEmpty() && !problems.any()) {
            problems.add(
                    new Problem(Severity.ERROR, "", 1, 1, "rows with points", "a heading only", Optional.empty(), ""));
        }
    }

    private record Cell(String text, int line, int column) {}

    private static Map<Integer, FieldShape> header(Map<Integer, Cell> row, Problems problems) {
        Map<Integer, FieldShape> columns = new HashMap<>();
        List<String> known = SHAPE.fields().stream().map(FieldShape::key).toList();
        row.forEach((i, cell) -> {
            FieldShape f = SHAPE.field(cell.text().toLowerCase(Locale.ROOT));
            Privacy.Refusal personal = Privacy.key(cell.text());
            if (f == null || columns.containsValue(f)) {
                Optional<String> near = Nearest.of(cell.text(), known);
                problems.add(new Problem(
                        Severity.ERROR,
                        "",
                        cell.line(),
                        cell.column(),
                        "a heading with " + String.join(", ", known) + ", each once",
                        personal != null ? personal.found() : Input.quoted(cell.text()),
                        near.map(n -> "a slip in writing " + n),
                        personal != null ? personal.mend() : "take the column out or name it"));
            } else {
                columns.put(i, f);
            }
        });
        for (String key : List.of("tooth", "x", "y")) {
            if (!columns.containsValue(SHAPE.field(key))) {
                problems.add(new Problem(
                        Severity.ERROR,
                        "",
                        0,
                        0,
                        "a column " + key,
                        "none",
                        Optional.empty(),
                        "begin with a line: tooth,x,y"));
            }
        }
        return columns;
    }

    private static Landmark point(
            Map<Integer, Cell> row, Map<Integer, FieldShape> columns, int index, Problems problems) {
        String pointer = "/landmarks/" + index;
        RecordPlace place = RecordPlace.root()
                .element(Objects.requireNonNull(RecordShape.ofCase().field("landmarks")), index);
        Object[] values = place.blanks();
        if (row.size() > columns.size() && !problems.any()) {
            Cell extra = Objects.requireNonNull(row.get(columns.size()));
            problems.add(new Problem(
                    Severity.ERROR,
                    pointer,
                    extra.line(),
                    extra.column(),
                    columns.size() + " values in a row",
                    row.size() + " values",
                    Optional.of("a decimal comma in a table that is divided by commas"),
                    "divide the table by semicolons, or write decimal points"));
        }
        columns.forEach((i, f) -> {
            Cell cell = row.get(i);
            if (cell == null || cell.text().isEmpty() || cell.text().equals(CaseWords.UNKNOWN)) {
                if (f.key().equals("tooth")) {
                    problems.add(new Problem(
                            Severity.ERROR,
                            place.pointer(f),
                            cell == null ? Objects.requireNonNull(row.get(0)).line() : cell.line(),
                            1,
                            Numbering.EXPECTED,
                            "nothing",
                            Optional.empty(),
                            ""));
                }
                return;
            }
            values[f.index()] = switch (f.key()) {
                case "tooth" -> tooth(cell, place.pointer(f), place.blank(f), problems);
                case "point" -> name(cell, f, place.pointer(f), place.blank(f), problems);
                default -> coordinate(cell, f, place.pointer(f), place.blank(f), problems);
            };
        });
        return (Landmark) SHAPE.make(values);
    }

    private static Object tooth(Cell cell, String pointer, Object blank, Problems problems) {
        Tooth tooth = Numbering.tooth(cell.text());
        if (tooth == null) {
            problems.add(Numbering.refusal(pointer, cell.text(), cell.line(), cell.column()));
            return blank;
        }
        return dev.fairlead.model.Fact.of(tooth);
    }

    private static Object name(Cell cell, FieldShape f, String pointer, Object blank, Problems problems) {
        int i = f.words().indexOf(cell.text().toLowerCase(Locale.ROOT));
        if (i < 0) {
            problems.add(new Problem(
                    Severity.ERROR,
                    pointer,
                    cell.line(),
                    cell.column(),
                    "one of " + String.join(", ", f.words()),
                    Input.quoted(cell.text()),
                    Nearest.of(cell.text(), f.words()).map(n -> "a slip in writing " + n),
                    "name the point, or leave it out"));
            return blank;
        }
        return dev.fairlead.model.Fact.of(f.choices().get(i));
    }

    private static Object coordinate(Cell cell, FieldShape f, String pointer, Object blank, Problems problems) {
        Quantities.Typed t = Quantities.read(cell.text(), f.about());
        boolean within =
                t.ok() && t.value() >= f.about().low() && t.value() <= f.about().high();
        if (!within) {
            problems.add(new Problem(
                    Severity.ERROR,
                    pointer,
                    cell.line(),
                    cell.column(),
                    QuantityParts.expected(f.about()),
                    t.ok() ? Input.quoted(cell.text()) : t.complaint(),
                    t.ok()
                            ? Slips.outOfRange(t.value(), f.about(), t.unitStated())
                            : t.slip().isEmpty() ? Optional.empty() : Optional.of(t.slip()),
                    t.mend()));
            return blank;
        }
        return Measured.of(
                t.value(), f.about().unit(), pointer, f.about().error().defaultSd());
    }
}
