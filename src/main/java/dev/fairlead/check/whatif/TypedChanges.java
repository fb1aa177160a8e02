package dev.fairlead.check.whatif;

import dev.fairlead.check.CheckOptions;
import dev.fairlead.check.Checker;
import dev.fairlead.findings.Words;
import dev.fairlead.intake.CaseReading;
import dev.fairlead.intake.text.Problem;
import dev.fairlead.intake.tree.CaseTree;
import dev.fairlead.intake.tree.TypedPath;
import dev.fairlead.model.Case;
import dev.fairlead.model.shape.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Values that a person wants to try, as typed: {@code path=value}. */
public final class TypedChanges {
    /** What was typed cannot be tried; each problem says why and what was probably meant. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient List<String> problems;

        Refused(List<String> problems) {
            super(String.join("; ", problems));
            this.problems = List.copyOf(problems);
        }

        public List<String> problems() {
            return problems;
        }
    }

    private TypedChanges() {}

    /**
     * Sets the values and checks the case before and after. The text of a value is read as it would be in a case file.
     */
    public static Difference difference(Case c, String hash, List<String> typed, Checker checker, CheckOptions options)
            throws Refused {
        List<String> problems = new ArrayList<>();
        CaseTree tree = CaseTree.of(c);
        List<TypedPath> paths = new ArrayList<>();
        for (String one : typed) {
            int equals = one.indexOf('=');
            if (equals < 1) {
                problems.add(one + ": write it as path=value, such as plan.standOff=1.5");
                continue;
            }
            TypedPath path = TypedPath.of(one.substring(0, equals));
            if (path.field().isEmpty()) {
                problems.add(path.pointer() + " is no single fact of a case"
                        + path.nearest().map(n -> "; did you mean " + n + "?").orElse(""));
            } else {
                set(c, tree, path, one.substring(equals + 1).strip(), problems);
                paths.add(path);
            }
        }
        if (!problems.isEmpty()) {
            throw new Refused(problems);
        }
        CaseReading reading = tree.read("the case as changed");
        if (!reading.read()) {
            throw new Refused(reading.errors().stream().map(TypedChanges::text).toList());
        }
        Case changed = reading.value().get();
        Predicate<String> plan =
                PlanVariables.isPlan(c, options.reach(c).day(), options.reach(c).judged());
        List<Difference.Given> given = paths.stream()
                .map(p -> new Difference.Given(
                        p.pointer(),
                        Words.of(p.pointer()),
                        Change.text(c, p.pointer()),
                        Change.text(changed, p.pointer()),
                        plan.test(p.pointer())))
                .toList();
        List<GaugeEstimate> estimates =
                GaugeEstimate.of(c, changed, checker.parts().force());
        return Difference.of(
                given,
                estimates,
                checker.check(c, hash, options),
                checker.check(GaugeEstimate.in(changed, estimates), hash, options));
    }

    private static void set(Case c, CaseTree tree, TypedPath path, String value, List<String> problems) {
        try {
            Edit.get(c, path.pointer());
            tree.set(path.pointer(), value.isEmpty() ? "unknown" : value);
        } catch (IllegalArgumentException e) {
            // the format has such a place, and this case has not: a visit that never was
            problems.add(e.getMessage());
        }
    }

    /** Lines and columns would be those of no file that anybody has. */
    private static String text(Problem p) {
        return p.pointer() + ": expected " + p.expected() + ", found " + p.found()
                + p.slip().map(s -> "; likely " + s).orElse("");
    }
}
