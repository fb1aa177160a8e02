package dev.fairlead;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Nothing stands in the program that the program itself does not call: what tests alone call is no part of it. */
class UnusedTest {
    private static final JavaClasses PROGRAM = new ClassFileImporter().importPackages("dev.fairlead");

    /**
     * What tests alone call, because they look through it at what the program runs: one input of many set, one case or
     * criterion of many asked, a figure within a result.
     */
    private static final Set<String> WINDOWS = Set.of(
            "audit.cohort.Cohort.gaps",
            "audit.cohort.Cohort.generate",
            "audit.cohort.Cohort.with",
            "check.Doubts.of",
            "check.Doubts.outcomes",
            "check.whatif.Suggestion.in",
            "intake.text.UnreadableTextException.problem",
            "measure.Measures.of",
            "measure.archform.DigitisedPoint.flat",
            "measure.mechanics.answer.Mechanics.solve",
            "measure.mechanics.answer.Setup.with*",
            "measure.mechanics.geometry.FoldRange.measured",
            "measure.mechanics.geometry.PolylineCurve.of",
            "measure.mechanics.solver.Equilibrium.bending",
            "measure.mechanics.solver.Equilibrium.torsion",
            "measure.picture.PlacedPoint.flat",
            "measure.space.SideSpace.by",
            "measure.uncertainty.Flips.expected",
            "report.html.ReportPdf.pages",
            "rules.verdict.Judge.remembered",
            "rules.verdict.Judge.withoutMemo",
            "web.WebServer.address",
            "web.WebServer.port",
            "web.page.Checks.by");

    @Test
    void everyMethodIsCalled() {
        List<String> unused = PROGRAM.stream()
                .filter(UnusedTest::written)
                .flatMap(c -> c.getMethods().stream())
                .filter(m -> !m.getModifiers().contains(JavaModifier.SYNTHETIC)
                        && !m.getModifiers().contains(JavaModifier.BRIDGE)
                        && m.getAccessesToSelf().stream()
                                .allMatch(a -> a.getOrigin().equals(m) || ofTests(a.getOriginOwner()))
                        && m.getReferencesToSelf().stream().allMatch(r -> ofTests(r.getOriginOwner()))
                        && !inherited(m)
                        && !accessor(m)
                        && m.getAnnotations().isEmpty())
                .map(m -> m.getOwner().getName().replace("dev.fairlead.", "") + "." + m.getName())
                .map(name -> name.replaceAll("Setup\\.with\\w+", "Setup.with*"))
                .distinct()
                .sorted()
                .toList();
        assertThat(unused).containsExactlyElementsOf(WINDOWS.stream().sorted().toList());
    }

    /** By hand, and no test. */
    private static boolean written(JavaClass c) {
        return c.getSource().isPresent()
                && c.getSource().get().getUri().toString().contains("/classes/dev/")
                && !c.getPackageName().startsWith("dev.fairlead.rulebase")
                && !c.getPackageName().startsWith("dev.fairlead.templates")
                && !c.getName().matches("dev.fairlead.facts.\\w+Builder(\\$.*)?");
    }

    private static boolean ofTests(JavaClass c) {
        return c.getSource().orElseThrow().getUri().toString().contains("/test-classes/");
    }

    private static boolean accessor(JavaMethod m) {
        return m.getOwner().isRecord() && m.getRawParameterTypes().isEmpty()
                || m.getOwner().isEnum() && Set.of("values", "valueOf").contains(m.getName())
                || m.getName().equals("main");
    }

    private static boolean inherited(JavaMethod m) {
        Set<JavaClass> above = m.getOwner().getAllRawSuperclasses().stream().collect(Collectors.toSet());
        above.addAll(m.getOwner().getAllRawInterfaces());
        return above.stream()
                .anyMatch(c -> c.getMethods().stream()
                        .anyMatch(o -> o.getName().equals(m.getName())
                                && o.getRawParameterTypes().size()
                                        == m.getRawParameterTypes().size()));
    }
}
