package dev.fairlead.measure.mechanics.answer;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.fairlead.measure.mechanics.answer.Setup.Seat;
import dev.fairlead.measure.mechanics.answer.Setup.TailSupport;
import dev.fairlead.measure.mechanics.answer.Setup.Theory;
import dev.fairlead.measure.mechanics.answer.Setup.Ties;
import dev.fairlead.measure.mechanics.geometry.ArchGeometry;
import dev.fairlead.measure.mechanics.geometry.BetaCurve;
import dev.fairlead.measure.mechanics.geometry.FoldSpec;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * One case of mechanics/cases.json: inputs and the numbers expected, from a handbook formula or an independent
 * reference model.
 */
record ReferenceCase(JsonNode inputs, JsonNode outputs) {

    static ReferenceCase of(String id) {
        try (InputStream in = ReferenceCase.class.getResourceAsStream("/mechanics/cases.json")) {
            for (JsonNode c : new ObjectMapper().readTree(in).get("cases")) {
                if (c.get("id").asText().equals(id)) {
                    return new ReferenceCase(c.get("inputs"), c.get("outputs"));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        throw new IllegalArgumentException("no case " + id);
    }

    double in(String key) {
        return number(inputs, key);
    }

    double out(String key) {
        return number(outputs, key);
    }

    List<Double> list(String key) {
        List<Double> values = new ArrayList<>();
        outputs.get(key).forEach(v -> values.add(v.doubleValue()));
        return values;
    }

    private static double number(JsonNode node, String key) {
        JsonNode v = node.get(key);
        if (v == null || !v.isNumber()) {
            throw new IllegalArgumentException("no number " + key);
        }
        return v.doubleValue();
    }

    WireSpec wire() {
        return new WireSpec(in("d"), in("E"), in("nu"));
    }

    FoldSpec fold() {
        return new FoldSpec(in("r"), in("L"), in("L3"), in("g"), in("tau"));
    }

    /** The whole wire of a case that has one, on a fine mesh. */
    Setup setup() {
        var arch = new ArchGeometry(new BetaCurve(in("W"), in("D")), in("Lt"), in("sc"), in("sl"));
        Theory theory = inputs.get("theory").asText().equals("linear") ? Theory.LINEAR : Theory.LARGE_ROTATIONS;
        return new Setup(
                wire(),
                arch,
                fold(),
                fold(),
                in("alpha_rad"),
                in("alphaL_rad"),
                TailSupport.TWO_POINT,
                Ties.FOUR,
                Seat.LEVEL,
                theory,
                Mesh.FINE);
    }
}
