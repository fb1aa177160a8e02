package dev.fairlead.web.measure;

import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.fairlead.measure.picture.PictureMeasures;
import dev.fairlead.measure.picture.PictureResult;
import dev.fairlead.measure.picture.PictureScaling;
import dev.fairlead.measure.picture.PlacedPoint;
import dev.fairlead.measure.picture.Scales;
import dev.fairlead.model.Choices.PictureKind;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was placed on a picture so far, as the page sends it.
 *
 * @param again the points that were placed a second time
 * @param scaling empty scale means that only angles can be told
 * @param node everything that was sent, for what only one request asks
 */
public record Placing(
        PictureKind kind,
        List<PlacedPoint> points,
        List<PlacedPoint> again,
        PictureScaling scaling,
        double share,
        JsonNode node) {
    private static final int MOST_POINTS = 200;
    private static final JsonMapper JSON = JsonMapper.builder(new JsonFactoryBuilder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(6)
                            .maxStringLength(200)
                            .maxNumberLength(40)
                            .maxTokenCount(5000)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .build();

    /** Reads what the page sent; throws an {@link IllegalArgumentException} that says what is wrong with it. */
    public static Placing read(byte[] body) {
        JsonNode node;
        try {
            node = JSON.readTree(body);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("what was sent cannot be read", e);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("reading from memory cannot fail", e);
        }
        PictureKind kind = kind(node.path("kind").asText(""))
                .orElseThrow(() -> new IllegalArgumentException("the kind of picture is not known"));
        Map<String, PlacedPoint> first = points(node.path("points"));
        PictureScaling scaling = kind == PictureKind.SURFACE_SCAN
                ? new PictureScaling.Millimetres()
                : scaling(node.path("scale"), first, kind);
        // the ends of the known length and the corners of the frame are of the scale alone
        first.keySet().removeIf(n -> n.matches("[RK]\\d"));
        return new Placing(
                kind,
                List.copyOf(first.values()),
                List.copyOf(points(node.path("again")).values()),
                scaling,
                node.path("share").asDouble(PictureMeasures.USUAL_SHARE),
                node);
    }

    /** The kind of that word. */
    public static Optional<PictureKind> kind(String word) {
        return Arrays.stream(PictureKind.values())
                .filter(k -> k.word().equals(word))
                .findFirst();
    }

    /** What the points give. */
    public PictureResult result() {
        return PictureMeasures.of(kind, points, again, scaling, share);
    }

    private static Map<String, PlacedPoint> points(JsonNode all) {
        if (all.size() > MOST_POINTS) {
            throw new IllegalArgumentException("more than " + MOST_POINTS + " points");
        }
        Map<String, PlacedPoint> points = new LinkedHashMap<>();
        for (JsonNode p : all) {
            String name = p.path("name").asText("");
            if (!name.matches("[A-Za-z][A-Za-z0-9]{0,4}")) {
                throw new IllegalArgumentException("a point without a name");
            }
            points.put(name, new PlacedPoint(name, number(p, "x"), number(p, "y"), p.has("z") ? number(p, "z") : 0));
        }
        return points;
    }

    private static double number(JsonNode of, String key) {
        JsonNode n = of.path(key);
        if (!n.isNumber()) {
            throw new IllegalArgumentException(key + " is a number");
        }
        return n.doubleValue();
    }

    private static double asked(JsonNode of, String key) {
        return of.path(key).isNumber() ? of.path(key).doubleValue() : Double.NaN;
    }

    private static PictureScaling scaling(JsonNode s, Map<String, PlacedPoint> points, PictureKind kind) {
        switch (s.path("how").asText("")) {
            case "length" -> {
                PlacedPoint a = points.get("R1");
                PlacedPoint b = points.get("R2");
                if (a == null || b == null || Double.isNaN(asked(s, "mm"))) {
                    return new PictureScaling.Unknown();
                }
                // a film has no camera: its rays are those of the head beside the ruler
                boolean flat =
                        kind != PictureKind.ARCH_PICTURE || s.path("flatbed").asBoolean(false);
                return Scales.knownLength(
                        a.x(),
                        a.y(),
                        b.x(),
                        b.y(),
                        number(s, "mm"),
                        s.path("tooth").asBoolean(false),
                        asked(s, "below"),
                        flat ? Double.POSITIVE_INFINITY : asked(s, "distance"));
            }
            case "frame" -> {
                List<PlacedPoint> corners = new ArrayList<>();
                for (int i = 1; i <= 4 && points.containsKey("K" + i); i++) {
                    corners.add(points.get("K" + i));
                }
                return corners.size() < 4
                        ? new PictureScaling.Unknown()
                        : Scales.frame(corners, number(s, "width"), number(s, "height"));
            }
            case "spacing" -> {
                boolean corrected = s.path("corrected").asBoolean(false);
                double magnification = asked(s, "magnification");
                if (Double.isNaN(asked(s, "column")) || !corrected && Double.isNaN(magnification)) {
                    return new PictureScaling.Unknown();
                }
                double row = Double.isNaN(asked(s, "row")) ? number(s, "column") : number(s, "row");
                return Scales.spacing(number(s, "column"), row, corrected ? 1 : magnification, corrected);
            }
            default -> {
                return new PictureScaling.Unknown();
            }
        }
    }
}
