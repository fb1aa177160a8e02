package dev.fairlead.picture.read;

import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.intake.landmarks.LandmarkCsv;
import dev.fairlead.intake.spelling.PlainNumber;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.model.Landmark;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Reads tables of named points: a CSV with point,x,y,z and perhaps unit; the landmark CSV with tooth, point, x, y, z;
 * the FCSV and the JSON list of named points that viewers of images write. The content decides, never the name.
 */
public final class PointTables {
    private static final int MOST_BYTES = 1_000_000;
    private static final int LONGEST_LINE = 1000;
    private static final JsonMapper JSON = JsonMapper.builder(new JsonFactoryBuilder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(12)
                            .maxStringLength(10_000)
                            .maxNumberLength(40)
                            .maxTokenCount(200_000)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
                    .build())
            .build();

    private PointTables() {}

    /** The points of a table; throws with the reason when it cannot be read. */
    public static PointTable read(byte[] bytes) throws UnfitFileException {
        if (bytes.length > MOST_BYTES) {
            throw new UnfitFileException("a table of more than 1 MB", "Export only the points that are measured on.");
        }
        String text = text(bytes);
        String start = text.stripLeading();
        if (start.startsWith("{") || start.startsWith("[")) {
            return json(text);
        }
        List<String> lines = text.lines().toList();
        if (lines.stream().anyMatch(l -> l.length() > LONGEST_LINE)) {
            throw new UnfitFileException("a line of more than 1,000 characters", "A table has one point on a line.");
        }
        if (start.startsWith("#")) {
            return fcsv(lines);
        }
        String header =
                lines.stream().filter(l -> !l.isBlank()).findFirst().orElse("").toLowerCase(Locale.ROOT);
        return header.matches(".*\\btooth\\b.*") ? landmarks(bytes) : plain(lines);
    }

    private static String text(byte[] bytes) throws UnfitFileException {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') < 0) {
                return text.startsWith("\uFEFF") ? text.substring(1) : text;
            }
        } catch (CharacterCodingException e) {
            // what is no text is told below, whatever it is
        }
        throw new UnfitFileException(
                "no table of points",
                "Pictures, films and scans are measured on the page: serve, then Measure in the case.");
    }

    // ---- own CSV: point,x,y[,z][,unit] ----

    private static PointTable plain(List<String> lines) throws UnfitFileException {
        PointTable.Collector all = new PointTable.Collector();
        List<String> heads = null;
        String divider = ",";
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isBlank()) {
                continue;
            }
            if (heads == null) {
                divider = lines.get(i).contains(";") ? ";" : lines.get(i).contains("\t") ? "\t" : ",";
                heads = cells(lines.get(i).toLowerCase(Locale.ROOT), divider);
                if (!heads.containsAll(List.of("point", "x", "y"))
                        || !List.of("point", "x", "y", "z", "unit").containsAll(heads)) {
                    throw new UnfitFileException(
                            "a heading other than point,x,y,z,unit", "Begin with a line: point,x,y,z,unit");
                }
                continue;
            }
            List<String> row = cells(lines.get(i), divider);
            if (row.size() > heads.size()) {
                throw new UnfitFileException(
                        "line " + (i + 1) + " has " + row.size() + " values, the heading " + heads.size(),
                        "Write decimal points, or divide the table by semicolons.");
            }
            double factor = factor(cell(row, heads, "unit"), i + 1);
            String z = cell(row, heads, "z");
            all.add(
                    cell(row, heads, "point"),
                    i + 1,
                    factor * number(cell(row, heads, "x"), i + 1),
                    factor * number(cell(row, heads, "y"), i + 1),
                    z.isEmpty() ? 0 : factor * number(z, i + 1));
        }
        return all.table();
    }

    private static List<String> cells(String line, String divider) {
        List<String> all = new ArrayList<>();
        for (String c : line.split(divider, -1)) {
            String s = c.strip();
            all.add(s.length() > 1 && s.startsWith("\"") && s.endsWith("\"") ? s.substring(1, s.length() - 1) : s);
        }
        return all;
    }

    private static String cell(List<String> row, List<String> heads, String key) {
        int i = heads.indexOf(key);
        return i < 0 || i >= row.size() ? "" : row.get(i);
    }

    private static double factor(String unit, int line) throws UnfitFileException {
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "", "mm" -> 1;
            case "cm" -> 10;
            default -> throw new UnfitFileException("line " + line + " has a unit other than mm or cm", "Write mm.");
        };
    }

    private static double number(String text, int line) throws UnfitFileException {
        BigDecimal n = PlainNumber.is(text) ? PlainNumber.read(text) : null;
        if (n == null && text.matches("[-+]?\\d{1,6},\\d{1,12}")) {
            n = new BigDecimal(text.replace(',', '.'));
        }
        if (n == null) {
            throw new UnfitFileException("line " + line + " has no number where a coordinate stands", "Write mm.");
        }
        return n.doubleValue();
    }

    // ---- the landmark CSV of cases ----

    private static PointTable landmarks(byte[] bytes) throws UnfitFileException {
        LandmarkCsv.Points read = LandmarkCsv.read(bytes, "");
        if (read.value().isEmpty()) {
            throw new UnfitFileException(
                    read.problems().stream().limit(5).map(Problem::toString).collect(Collectors.joining("; ")),
                    "A landmark table has the columns tooth, point, x, y and perhaps z.");
        }
        PointTable.Collector all = new PointTable.Collector();
        read.problems().forEach(p -> all.remark(0, p.toString()));
        for (Landmark l : read.value().get()) {
            String kind = l.point()
                    .value()
                    .map(p -> switch (p) {
                        case MESIAL -> "M";
                        case DISTAL -> "D";
                        case LABIAL -> "L";
                        case TUBE -> "T";
                        case BRACKET -> "B";
                        case INCISAL, CUSP -> "E";
                    })
                    .orElse("L");
            if (!l.x().known() || !l.y().known()) {
                all.remark(0, "a point of " + l.tooth().get() + " that no number is taken from");
            } else {
                all.add(kind + l.tooth().get(), 0, l.x().value(), l.y().value(), l.z().known() ? l.z().value() : 0);
            }
        }
        return all.table();
    }

    // ---- lists of viewers ----

    private static PointTable fcsv(List<String> lines) throws UnfitFileException {
        PointTable.Collector all = new PointTable.Collector();
        String system = "";
        List<String> columns = List.of("id", "x", "y", "z", "ow", "ox", "oy", "oz", "vis", "sel", "lock", "label");
        for (int i = 0; i < lines.size(); i++) {
            String l = lines.get(i).strip();
            if (l.startsWith("#")) {
                String[] said = l.substring(1).split("=", 2);
                if (said.length == 2 && said[0].strip().equals("CoordinateSystem")) {
                    system = said[1].strip();
                } else if (said.length == 2 && said[0].strip().equals("columns")) {
                    columns = cells(said[1], ",");
                }
            } else if (!l.isEmpty()) {
                List<String> row = cells(l, ",");
                add(
                        all,
                        system,
                        cell(row, columns, "label"),
                        i + 1,
                        number(cell(row, columns, "x"), i + 1),
                        number(cell(row, columns, "y"), i + 1),
                        number(cell(row, columns, "z"), i + 1));
            }
        }
        return all.table();
    }

    /**
     * Patient axes: LPS has x to the left and y to the back, RAS (0 in old files) x to the right and y to the front.
     */
    private static void add(
            PointTable.Collector all, String system, String label, int line, double x, double y, double z)
            throws UnfitFileException {
        switch (system) {
            case "LPS", "1" -> all.add(label, line, x, -y, z);
            case "RAS", "0" -> all.add(label, line, -x, y, z);
            default ->
                throw new UnfitFileException(
                        "a list of points that does not say which way its axes run",
                        "It says CoordinateSystem LPS or RAS; export it anew.");
        }
    }

    private static PointTable json(String text) throws UnfitFileException {
        JsonNode root;
        try {
            root = JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new UnfitFileException(
                    "no JSON that can be read, from line "
                            + (e.getLocation() == null ? 1 : e.getLocation().getLineNr()) + " on",
                    "Export the list of points anew.");
        }
        PointTable.Collector all = new PointTable.Collector();
        if (root.isArray()) {
            for (JsonNode p : root) {
                all.add(
                        p.path("point").asText(""),
                        0,
                        coordinate(p.path("x")),
                        coordinate(p.path("y")),
                        p.has("z") ? coordinate(p.path("z")) : 0);
            }
            return all.table();
        }
        for (JsonNode markup : root.path("markups")) {
            String system = markup.path("coordinateSystem").asText("");
            for (JsonNode p : markup.path("controlPoints")) {
                JsonNode at = p.path("position");
                if (!p.path("positionStatus").asText("defined").equals("defined")) {
                    all.remark(0, "a point that was never placed");
                } else if (at.size() == 3) {
                    add(
                            all,
                            system,
                            p.path("label").asText(""),
                            0,
                            coordinate(at.get(0)),
                            coordinate(at.get(1)),
                            coordinate(at.get(2)));
                } else {
                    all.remark(0, "a point without x, y and z");
                }
            }
        }
        return all.table();
    }

    private static double coordinate(JsonNode n) {
        return n.isNumber() ? n.doubleValue() : Double.NaN;
    }
}
