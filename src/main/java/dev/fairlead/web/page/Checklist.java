package dev.fairlead.web.page;

import dev.fairlead.intake.tree.CasePaths;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import dev.fairlead.model.shape.FieldShape;
import dev.fairlead.model.shape.Kind;
import dev.fairlead.web.form.FieldView;
import dev.fairlead.web.form.Fields;
import dev.fairlead.web.form.FormWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The questions that a person works through at the bench or at the chair in the order of the hands, as they stand for a
 * case.
 *
 * @param part {@code bench} or {@code insertion}
 */
public record Checklist(String part, List<Question> questions) {
    /** Who answered and when: asked once, at the end. */
    private static final Set<String> WHO = Set.of("date", "answeredBy", "initials", "time");

    /**
     * What the hands do one after the other: protect before anything is cut, lay the wire in passive, seat, tie, cut
     * and catch, look again before the child leaves. {@code *} stands for right, then left. Common practice, no source.
     */
    private static final Map<String, List<String>> CHAIR = steps(
            "Before cutting", List.of("eyeProtection", "airwayGuard"),
            "Passive in the mouth", List.of("passiveGap"),
            "Seat", List.of("*/stopGap", "*/underHook"),
            "Tie", List.of("bracketsTied"),
            "Cut and catch", List.of("*/cutEndCaught", "*/endProud"),
            "Before the child leaves",
                    List.of("*/bentBehind", "*/cheekSore", "gingivalClearance", "blanching", "instructionsGiven"));

    private static final Map<String, List<String>> BENCH = steps(
            "Midline", List.of("midlineMarked"),
            "Right fold", List.of("right"),
            "Second side", List.of("otherSideMarkedSeated"),
            "Left fold", List.of("left"));

    /** Questions whose good answer is no; of all others it is yes. */
    private static final Set<String> BETTER_NOT = Set.of("bentBehind", "cheekSore", "blanching");

    private static final List<String> GAPS = List.of("0", "0.25", "0.5", "1");
    private static final List<String> CLEARANCES = List.of("0.5", "1", "1.5", "2");
    private static final List<String> ANGLES = List.of("0", "2", "5", "10");
    private static final Map<String, List<String>> PRESETS = Map.ofEntries(
            Map.entry("passiveGap", GAPS),
            Map.entry("stopGap", GAPS),
            Map.entry("endProud", GAPS),
            Map.entry("misfitRms", GAPS),
            Map.entry("misfitWorst", GAPS),
            Map.entry("misfitRmsAfter", GAPS),
            Map.entry("misfitWorstAfter", GAPS),
            Map.entry("gingivalClearance", CLEARANCES),
            Map.entry("clearGingiva", CLEARANCES),
            Map.entry("clearCheek", List.of("1", "2", "3", "4")),
            Map.entry("firstBendOffset", List.of("1", "1.5", "2", "2.5")),
            Map.entry("length", List.of("2.5", "3", "3.5", "4")),
            Map.entry("height", List.of("3", "3.5", "4", "4.5")),
            Map.entry("bendRadius", List.of("0.5", "0.75", "1", "1.25")),
            Map.entry("outOfSquare", ANGLES),
            Map.entry("legsOutOfParallel", ANGLES),
            Map.entry("buccalTip", List.of("0", "10", "20", "30")),
            Map.entry("bracketsTied", List.of("4", "3", "2", "1")),
            Map.entry("rebends", List.of("0", "1", "2", "3")));

    /**
     * One question.
     *
     * @param side {@code right}, {@code left}, or empty
     * @param step what the hands do then
     */
    public record Question(FieldView field, String side, String step) {
        /** The question itself, or what is measured in as few words as it has on the form. */
        public String text() {
            return field.label();
        }

        public boolean answered() {
            return !field.value().isEmpty() || !field.state().isEmpty();
        }

        /** True when that word is the answer given. */
        public boolean gave(String word) {
            return field.value().equals(word) || field.state().equals(word);
        }

        public boolean yesOrNo() {
            return field.kind() == Kind.ANSWER;
        }

        private String key() {
            return field.shape().key();
        }

        /** The answers in one order for all questions: as it should be on the left, then not so. */
        public List<String> answers() {
            return BETTER_NOT.contains(key()) ? List.of("no", "yes") : List.of("yes", "no");
        }

        /** Values that one press gives. */
        public List<String> presets() {
            return PRESETS.getOrDefault(key(), List.of());
        }

        /** The least that a press on minus leads to. */
        public String least() {
            return FormWords.number(field.shape().about().low());
        }

        /** How much a press on plus or minus changes. */
        public String stride() {
            Unit unit = field.shape().about().unit();
            return unit == Unit.MM ? "0.25" : "1";
        }
    }

    static Checklist of(String part, Fields fields) {
        Map<String, Question> left = new LinkedHashMap<>();
        for (FieldShape f : CasePaths.field("/" + part).orElseThrow().nested().fields()) {
            if (f.kind() == Kind.RECORD) {
                f.nested()
                        .fields()
                        .forEach(n -> left.put(f.key() + "/" + n.key(), question(fields, part, f.key(), n.key())));
            } else if (!WHO.contains(f.key())) {
                left.put(f.key(), question(fields, part, "", f.key()));
            }
        }
        List<Question> all = new ArrayList<>();
        (part.equals("bench") ? BENCH : CHAIR)
                .forEach((step, keys) ->
                        sides(keys, left).forEach(k -> all.add(in(step, Objects.requireNonNull(left.remove(k), k)))));
        String rest = part.equals("bench") ? "On the model" : "Also";
        left.values().forEach(q -> all.add(in(rest, q)));
        return new Checklist(part, List.copyOf(all));
    }

    /** The keys of one step, right before left, each side done before the other is begun. */
    private static List<String> sides(List<String> keys, Map<String, Question> there) {
        List<String> all = new ArrayList<>();
        for (String side : List.of("right", "left")) {
            keys.stream()
                    .filter(k -> k.startsWith("*/"))
                    .map(k -> side + k.substring(1))
                    .forEach(all::add);
        }
        for (String k : keys) {
            if (!k.startsWith("*")) {
                there.keySet().stream()
                        .filter(t -> t.equals(k) || t.startsWith(k + "/"))
                        .forEach(all::add);
            }
        }
        all.removeIf(k -> !there.containsKey(k));
        return all;
    }

    private static Question question(Fields fields, String part, String side, String key) {
        String at = "/" + part + (side.isEmpty() ? "" : "/" + side) + "/" + key;
        return new Question(fields.at(at), side, "");
    }

    private static Question in(String step, Question q) {
        return new Question(q.field(), q.side(), step);
    }

    private static Map<String, List<String>> steps(Object... all) {
        Map<String, List<String>> steps = new LinkedHashMap<>();
        for (int i = 0; i < all.length; i += 2) {
            @SuppressWarnings("unchecked")
            List<String> keys = (List<String>) all[i + 1];
            steps.put((String) all[i], keys);
        }
        return steps;
    }

    /** The stage that it belongs to. */
    public Stage stage() {
        return part.equals("bench") ? Stage.BENCH : Stage.INSERTION;
    }

    long answered() {
        return questions.stream().filter(Question::answered).count();
    }

    /** Questions without an answer, short. */
    List<String> open() {
        return questions.stream()
                .filter(q -> !q.answered())
                .map(q -> FormWords.capital(q.side().isEmpty() ? q.text() : q.side() + ": " + q.text()))
                .toList();
    }

    /** The first question without an answer from an index on, then from the start; the end when all have one. */
    int next(int from) {
        for (int i = 0; i < questions.size(); i++) {
            int at = (from + i) % questions.size();
            if (!questions.get(at).answered()) {
                return at;
            }
        }
        return questions.size();
    }
}
