package dev.fairlead.rules.catalogue;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.base.StrictJson;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.NullUnmarked;

/** Makes the catalogue of the texts of a rulebase; collects every problem before it gives up. */
@NullUnmarked // whatever a file leaves out is told as a problem, and no catalogue with one is given out
public final class CatalogueReader {
    /** What stands in {@code rulebase.json}: version, criteria that share a cause, and their order by stage. */
    private record Head(String version, Map<String, List<String>> causes, Map<String, List<String>> order) {}

    /** An entry of {@code sources.json}. */
    private record SourceText(String citation, Source.Kind kind, String named) {}

    /** What stands in a {@code criterion.json}. */
    private record CriterionText(
            String title,
            String asks,
            String why,
            String about,
            List<String> needs,
            String passes,
            Map<String, Reason> reasons,
            Map<String, String> exemptions,
            Map<String, ThresholdText> thresholds,
            List<String> sources,
            String dispute) {}

    private record ThresholdText(
            String says,
            String unit,
            double value,
            double low,
            double high,
            double step,
            boolean inclusive,
            Threshold.Bound bound,
            List<String> sources) {}

    private final RuleFiles files;
    private final List<String> problems = new ArrayList<>();
    private final Map<String, Source> sources = new LinkedHashMap<>();

    private CatalogueReader(RuleFiles files) {
        this.files = files;
    }

    /** The catalogue of {@code files}; throws with all problems when there are any. */
    public static Catalogue read(RuleFiles files) {
        CatalogueReader reader = new CatalogueReader(files);
        Catalogue read = reader.catalogue();
        RulebaseException.throwIfAny(reader.problems);
        return read;
    }

    private Catalogue catalogue() {
        Head head = json(RuleFiles.RULEBASE, new TypeReference<>() {}, new Head("", Map.of(), Map.of()));
        json(RuleFiles.SOURCES, new TypeReference<>() {}, Map.<String, SourceText>of())
                .forEach((key, s) -> sources.put(key, new Source(key, s.citation(), s.kind(), s.named())));
        Map<String, Criterion> criteria = new LinkedHashMap<>();
        inOrder(head.order()).forEach((folder, stage) -> {
            String path = folder + "/" + RuleFiles.TEXTS;
            if (files.text(folder + "/" + RuleFiles.DRL) == null) {
                problems.add(folder + ": there is no " + RuleFiles.DRL + ", so there is no such criterion");
                return;
            }
            CriterionText text = json(path, new TypeReference<>() {}, null);
            if (text != null) {
                Criterion c = criterion(stage, folder.substring(folder.indexOf('/') + 1), path + ": ", text);
                problemIf(criteria.put(c.id(), c) != null, c.id() + ": two stages have a criterion of this name");
            }
        });
        problemIf(criteria.isEmpty() && problems.isEmpty(), "the rulebase holds no criterion: nothing could be judged");
        checkCauses(head.causes(), criteria.keySet());
        return new Catalogue(head.version(), List.copyOf(criteria.values()), sources, head.causes());
    }

    /**
     * Folders by stage, in the order of the head; folders that the head leaves out come after the others of their
     * stage, by name.
     */
    private Map<String, Stage> inOrder(Map<String, List<String>> order) {
        List<String> folders = files.folders();
        Map<String, Stage> ordered = new LinkedHashMap<>();
        for (Stage stage : Stage.values()) {
            String home = stage.word() + "/";
            order.getOrDefault(stage.word(), List.of()).forEach(id -> ordered.put(home + id, stage));
            folders.stream().filter(f -> f.startsWith(home)).forEach(f -> ordered.put(f, stage));
        }
        ordered.keySet().retainAll(folders);
        folders.forEach(f -> problemIf(!ordered.containsKey(f), f + ": " + f.split("/")[0] + " is no stage of care"));
        return ordered;
    }

    private void checkCauses(Map<String, List<String>> causes, Set<String> ids) {
        Set<String> named = new HashSet<>();
        boolean whole = problems.isEmpty();
        causes.forEach((cause, shared) -> shared.forEach(id -> {
            String at = RuleFiles.RULEBASE + ": causes: ";
            problemIf(whole && !ids.contains(id), at + cause + ": no criterion is called " + id);
            problemIf(!named.add(id), at + id + " stands under two causes");
        }));
    }

    private Criterion criterion(Stage stage, String id, String path, CriterionText f) {
        Class<? extends CaseFact> about = CaseFact.type(f.about());
        problemIf(about == null, path + "about: " + f.about() + " is no type of fact");
        List<Need> needs = new ArrayList<>();
        for (String component : about == null ? List.<String>of() : f.needs()) {
            Need need = Need.of(about, component);
            if (need == null) {
                problems.add(path + "needs: " + f.about() + " has no " + component + " that could be known or missing");
            } else {
                needs.add(need);
            }
        }
        problemIf(f.needs().isEmpty(), path + "needs: a criterion that needs nothing would pass on an empty case");
        Map<String, Threshold> thresholds = new LinkedHashMap<>();
        f.thresholds().forEach((name, t) -> thresholds.put(name, threshold(path, id + "." + name, t)));
        checkCited(path, f.sources());
        return new Criterion(
                id,
                stage,
                f.title(),
                f.asks(),
                f.why(),
                about,
                needs,
                f.passes(),
                f.reasons(),
                f.exemptions(),
                thresholds,
                f.sources(),
                f.dispute());
    }

    private Threshold threshold(String path, String name, ThresholdText t) {
        Unit unit = Unit.of(t.unit());
        problemIf(unit == null, path + name + ": " + t.unit() + " is no unit");
        Threshold threshold = new Threshold(
                name,
                t.says(),
                unit == null ? Unit.RATIO : unit,
                t.value(),
                t.low(),
                t.high(),
                t.step(),
                t.inclusive(),
                t.bound(),
                t.sources());
        String fault = threshold.fault(t.value());
        problemIf(fault != null, path + fault);
        problemIf(!(t.step() > 0), path + name + ": the step must be above zero");
        checkCited(path, t.sources());
        return threshold;
    }

    private void checkCited(String path, List<String> keys) {
        problemIf(
                keys.isEmpty(), path + "sources: where nothing is published, say so by a key such as common-practice");
        keys.forEach(k ->
                problemIf(!sources.containsKey(k), path + "sources: " + k + " does not stand in " + RuleFiles.SOURCES));
    }

    private <T> T json(String path, TypeReference<T> type, T otherwise) {
        String text = files.text(path);
        problemIf(text == null, path + ": there is no such file");
        T read = text == null ? null : StrictJson.read(path, text, type, problems);
        return read == null ? otherwise : read;
    }

    private void problemIf(boolean wrong, String problem) {
        if (wrong) {
            problems.add(problem);
        }
    }
}
