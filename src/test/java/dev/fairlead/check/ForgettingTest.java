package dev.fairlead.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.fairlead.audit.cohort.Cohort;
import dev.fairlead.intake.CaseReader;
import dev.fairlead.intake.text.CaseFormat;
import dev.fairlead.intake.write.CaseWriter;
import dev.fairlead.measure.gather.Calculations;
import dev.fairlead.model.Case;
import dev.fairlead.model.CaseValue;
import dev.fairlead.model.Stage;
import dev.fairlead.model.shape.Edit;
import dev.fairlead.rules.guard.ProjectRules;
import dev.fairlead.rules.verdict.CriterionResult;
import dev.fairlead.rules.verdict.Judgement;
import dev.fairlead.rules.verdict.PlaceResult;
import dev.fairlead.rules.verdict.Status;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * On whole cases: to leave out a fact, or two facts of one place, never reassures. What warned or was not assessed does
 * not pass, and does not cease to apply.
 */
class ForgettingTest {
    private static final int COHORT = 200;
    private static final long SEED = 20261128;

    /**
     * Criteria that lose a warning with the optional reading that it was about, and why. Nothing else rests on these
     * readings.
     */
    private static final Map<String, String> OPTIONAL = Map.of(
            "tooth-widths-plausible", "/teeth/\\d+/width",
            "antimeres-agree", "/teeth/\\d+/(width|state)");

    private final Checker checker = new Checker(ProjectRules.rulebase(), Calculations.full());
    private final CheckOptions options =
            CheckOptions.USUAL.at(Stage.HOLDING).withoutWorkings().withoutForces();
    /** Kinds of fault with one example and how many there are. */
    private final Map<String, String> examples = new ConcurrentHashMap<>();

    private final Map<String, Integer> counts = new ConcurrentHashMap<>();

    @Test
    void whatIsForgottenNeverReassures() throws IOException {
        List<Case> cases = cases();
        IntStream.range(0, cases.size()).parallel().forEach(i -> forget(cases.get(i), i < cases.size() - COHORT));
        TreeMap<String, String> told = new TreeMap<>();
        examples.forEach((kind, example) -> told.put(kind, counts.get(kind) + " times, first " + example));
        assertThat(told.entrySet()).isEmpty();
    }

    private static List<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("cases"))) {
            for (Path f : files.sorted().toList()) {
                exact(Files.readAllBytes(f), f.toString()).ifPresent(cases::add);
            }
        }
        assertThat(cases).hasSizeGreaterThan(15);
        for (int i = 0; i < COHORT; i++) {
            byte[] text = CaseWriter.line(Cohort.one(SEED, i).made()).getBytes(StandardCharsets.UTF_8);
            cases.add(exact(text, "cohort.json").orElseThrow());
        }
        return cases;
    }

    /** Without errors of measurement, which decide nothing here. */
    private static Optional<Case> exact(byte[] text, String name) {
        return CaseReader.readExact(text, name, name.endsWith(".yaml") ? CaseFormat.YAML : CaseFormat.JSON)
                .value();
    }

    private void forget(Case c, boolean demo) {
        Judgement whole = checker.judge(c, options);
        Map<String, List<String>> places = new TreeMap<>();
        for (String pointer : Edit.factPointers(c)) {
            if (Edit.get(c, pointer) instanceof CaseValue k
                    && (k.known() || k.doesNotApply())
                    && !pointer.equals("/stage")) {
                places.computeIfAbsent(pointer.substring(0, pointer.lastIndexOf('/')), p -> new ArrayList<>())
                        .add(pointer);
            }
        }
        for (List<String> facts : places.values()) {
            for (int a = 0; a < facts.size(); a++) {
                Case one = Edit.forget(c, facts.get(a));
                compare(c, whole, checker.judge(one, options), facts.get(a));
                for (int b = a + 1; b < facts.size(); b++) {
                    compare(
                            c,
                            whole,
                            checker.judge(Edit.forget(one, facts.get(b)), options),
                            facts.get(a) + " " + facts.get(b));
                }
            }
        }
    }

    private void compare(Case c, Judgement whole, Judgement fewer, String left) {
        fewer.errors().forEach(e -> fault(c, "error " + e, left));
        for (int i = 0; i < whole.results().size(); i++) {
            CriterionResult was = whole.results().get(i);
            CriterionResult is = fewer.results().get(i);
            if (reassures(was.status(), is.status())) {
                fault(c, was.criterion().id() + " " + was.status() + " -> " + is.status(), left);
                continue;
            }
            Map<String, PlaceResult> after = new HashMap<>();
            is.places().forEach(p -> after.put(p.place().toString(), p));
            for (PlaceResult p : was.places()) {
                PlaceResult now = after.get(p.place().toString());
                if (now != null && reassures(p.status(), now.status())) {
                    fault(c, was.criterion().id() + " at a place " + p.status() + " -> " + now.status(), left);
                }
            }
        }
    }

    private static boolean reassures(Status was, Status is) {
        boolean open = was == Status.WARN || was == Status.NOT_ASSESSED;
        return open && (is == Status.PASS || is == Status.DOES_NOT_APPLY);
    }

    private void fault(Case c, String kind, String left) {
        String id = kind.substring(0, kind.indexOf(' '));
        String optional = OPTIONAL.get(id);
        if (optional != null && left.matches("(" + optional + " ?)+|(" + optional + " \\S+)|(\\S+ " + optional + ")")) {
            return;
        }
        String of = kind + " without " + left.replaceAll("/\\d+", "/n");
        counts.merge(of, 1, Integer::sum);
        examples.putIfAbsent(of, c.id() + " without " + left);
    }
}
