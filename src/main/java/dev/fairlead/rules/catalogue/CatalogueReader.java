package dev.fairlead.rules.catalogue;

import com.fasterxml.jackson.core.type.TypeReference;
import dev.fairlead.facts.CaseFact;
import dev.fairlead.model.Stage;
import dev.fairlead.model.Unit;
import dev.fairlead.rules.catalogue.CriterionFile.Head;
import dev.fairlead.rules.catalogue.CriterionFile.ReasonFile;
import dev.fairlead.rules.catalogue.CriterionFile.SourceFile;
import dev.fairlead.rules.catalogue.CriterionFile.ThresholdFile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.NullUnmarked;

/** Makes the catalogue of the texts of a rulebase; collects every problem before it gives up. */
@NullUnmarked // whatever a file leaves out is told as a problem, and no catalogue with one is given out
public final class CatalogueReader {
    private final List<String> problems = new ArrayList<>();

    private CatalogueReader() {}

    /** The catalogue of {@code files}; throws with all problems when there are any. */
    public static Catalogue read(RuleFiles files) {
        CatalogueReader reader = new CatalogueReader();
        return reader.whole(reader.catalogue(reader.parse(files)));
    }

    /** The catalogue of texts that were read before. */
    public static Catalogue read(CatalogueFile file) {
        CatalogueReader reader = new CatalogueReader();
        return reader.whole(reader.catalogue(file));
    }

    /** The texts of {@code files} in one, without a look at what they mean. */
    public static CatalogueFile texts(RuleFiles files) {
        CatalogueReader reader = new CatalogueReader();
        return reader.whole(reader.parse(files));
    }

    private <T> T whole(T read) {
        if (!problems.isEmpty()) {
            throw new RulebaseException(problems.stream().distinct().toList());
        }
        return read;
    }

    private CatalogueFile parse(RuleFiles files) {
        Map<String, SourceFile> sources =
                file(files, RuleFiles.SOURCES, new TypeReference<LinkedHashMap<String, SourceFile>>() {});
        Head head = file(files, RuleFiles.RULEBASE, new TypeReference<Head>() {});
        Map<String, CriterionFile> criteria = new LinkedHashMap<>();
        for (String folder : files.folders()) {
            if (files.text(folder + "/" + RuleFiles.DRL) == null) {
                problems.add(folder + ": there is no " + RuleFiles.DRL + ", so there is no such criterion");
            } else {
                criteria.put(
                        folder, file(files, folder + "/" + RuleFiles.TEXTS, new TypeReference<CriterionFile>() {}));
            }
        }
        return new CatalogueFile(head, sources == null ? Map.of() : sources, criteria);
    }

    private Catalogue catalogue(CatalogueFile file) {
        Map<String, Source> sources = sources(file.sources());
        Head head = file.head();
        List<Criterion> criteria = new ArrayList<>();
        for (String folder : inOrder(head, file.criteria().keySet())) {
            CriterionFile f = file.criteria().get(folder);
            if (f != null) {
                criteria.add(criterion(folder, f, sources));
            }
        }
        if (criteria.isEmpty() && problems.isEmpty()) {
            problems.add("the rulebase holds no criterion: nothing could be judged");
        }
        return head == null
                ? new Catalogue("", criteria, sources, Map.of())
                : new Catalogue(head.version(), criteria, sources, causes(head, criteria));
    }

    private Map<String, List<String>> causes(Head head, List<Criterion> criteria) {
        List<String> ids = criteria.stream().map(Criterion::id).toList();
        List<String> named = new ArrayList<>();
        head.causes().forEach((cause, shared) -> {
            for (String id : shared) {
                if (problems.isEmpty() && !ids.contains(id)) {
                    problems.add(RuleFiles.RULEBASE + ": causes: " + cause + ": no criterion is called " + id);
                }
                if (named.contains(id)) {
                    problems.add(RuleFiles.RULEBASE + ": causes: " + id + " stands under two causes");
                }
                named.add(id);
            }
        });
        return head.causes();
    }

    /**
     * Folders by stage, in the order of the head; folders that the head leaves out come after the others of their
     * stage, by name.
     */
    private List<String> inOrder(Head head, Set<String> folders) {
        List<String> ordered = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            List<String> first = head == null ? List.of() : head.order().getOrDefault(stage.word(), List.of());
            first.stream()
                    .map(id -> stage.word() + "/" + id)
                    .filter(folders::contains)
                    .forEach(ordered::add);
            folders.stream()
                    .filter(f -> f.startsWith(stage.word() + "/") && !ordered.contains(f))
                    .forEach(ordered::add);
        }
        folders.stream()
                .filter(f -> !ordered.contains(f))
                .forEach(f -> problems.add(f + ": " + f.split("/")[0] + " is no stage of care"));
        ordered.stream()
                .map(f -> f.substring(f.indexOf('/') + 1))
                .filter(id -> ordered.stream().filter(f -> f.endsWith("/" + id)).count() > 1)
                .distinct()
                .forEach(id -> problems.add(id + ": two stages have a criterion of this name"));
        return ordered;
    }

    private Map<String, Source> sources(Map<String, SourceFile> read) {
        Map<String, Source> sources = new LinkedHashMap<>();
        read.forEach((key, s) -> {
            Source.Kind kind = word(Source.Kind.values(), s.kind());
            if (kind == null) {
                problems.add(RuleFiles.SOURCES + ": " + key + ": " + s.kind() + " is no kind of source");
            }
            sources.put(key, new Source(key, s.citation(), kind, s.named()));
        });
        return sources;
    }

    private Criterion criterion(String folder, CriterionFile f, Map<String, Source> sources) {
        String path = folder + "/" + RuleFiles.TEXTS;
        String id = folder.substring(folder.indexOf('/') + 1);
        Stage stage = word(Stage.values(), folder.substring(0, folder.indexOf('/')));
        Class<? extends CaseFact> about = factType(f.about());
        List<Need> needs = new ArrayList<>();
        if (about == null) {
            problems.add(path + ": about: " + f.about() + " is no type of fact");
        } else {
            for (String component : f.needs()) {
                Need need = Need.of(about, component);
                if (need == null) {
                    problems.add(path + ": needs: " + f.about() + " has no " + component
                            + " that could be known or missing");
                } else {
                    needs.add(need);
                }
            }
            if (f.needs().isEmpty()) {
                problems.add(path + ": needs: a criterion that needs nothing would pass on an empty case");
            }
        }
        Map<String, Threshold> thresholds = new LinkedHashMap<>();
        f.thresholds().forEach((name, t) -> {
            Threshold read = threshold(path, id + "." + name, t);
            if (read != null) {
                thresholds.put(name, read);
            }
        });
        Map<String, Reason> reasons = new LinkedHashMap<>();
        f.reasons().forEach((key, r) -> reasons.put(key, reason(path, key, r)));
        cited(path, f.sources(), sources);
        f.thresholds().values().forEach(t -> cited(path, t.sources(), sources));
        return new Criterion(
                id,
                stage,
                f.title(),
                f.asks(),
                f.why(),
                about,
                needs,
                f.passes(),
                reasons,
                f.exemptions(),
                thresholds,
                f.sources(),
                f.dispute());
    }

    private Reason reason(String path, String key, ReasonFile r) {
        Outcome weight = word(Outcome.values(), r.weight());
        if (weight != Outcome.CAUTION && weight != Outcome.STOP) {
            problems.add(path + ": reasons." + key + ": weight is caution or stop, not " + r.weight());
        }
        return new Reason(weight, r.title(), r.says(), r.todo());
    }

    private Threshold threshold(String path, String name, ThresholdFile t) {
        Unit unit = unit(t.unit());
        if (unit == null) {
            problems.add(path + ": " + name + ": " + t.unit() + " is no unit");
        }
        Threshold.Bound bound = word(Threshold.Bound.values(), t.bound());
        if (bound == null) {
            problems.add(path + ": " + name + ": bound is upper or lower, not " + t.bound());
        }
        if (!(t.step() > 0)) {
            problems.add(path + ": " + name + ": the step must be above zero");
        }
        if (unit == null) {
            return null;
        }
        Threshold threshold = new Threshold(
                name, t.says(), unit, t.value(), t.low(), t.high(), t.step(), t.inclusive(), bound, t.sources());
        String fault = threshold.fault(t.value());
        if (fault != null) {
            problems.add(path + ": " + fault);
        }
        return threshold;
    }

    private void cited(String path, List<String> keys, Map<String, Source> sources) {
        if (keys.isEmpty()) {
            problems.add(path + ": sources: where nothing is published, say so by a key such as common-practice");
        }
        keys.stream()
                .filter(k -> !sources.containsKey(k))
                .forEach(k -> problems.add(path + ": sources: " + k + " does not stand in " + RuleFiles.SOURCES));
    }

    private <T> T file(RuleFiles files, String path, TypeReference<T> type) {
        String text = files.text(path);
        if (text == null) {
            problems.add(path + ": there is no such file");
            return null;
        }
        return StrictJson.read(path, text, type, problems);
    }

    /** The fact type of that simple name, or null. */
    @SuppressWarnings("unchecked")
    private static Class<? extends CaseFact> factType(String name) {
        return (Class<? extends CaseFact>) Arrays.stream(CaseFact.class.getPermittedSubclasses())
                .filter(c -> c.getSimpleName().equals(name))
                .findFirst()
                .orElse(null);
    }

    /** A unit by its symbol, or by its name where the symbol is empty ("count", "ratio"). */
    private static Unit unit(String written) {
        for (Unit u : Unit.values()) {
            if (u.symbol().equals(written) || u.name().toLowerCase(Locale.ROOT).equals(written)) {
                return u;
            }
        }
        return null;
    }

    private static <E extends Enum<E>> E word(E[] values, String word) {
        for (E e : values) {
            if (e.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)) {
                return e;
            }
        }
        return null;
    }
}
