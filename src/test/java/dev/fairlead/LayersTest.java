package dev.fairlead;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between packages, as DEVELOPERS.md draws them. */
class LayersTest {
    /**
     * Each rule that stands here as a field. They are run as tests of JUnit and not by the engine of the library: the
     * build ran none of what that one offers, and called it a success.
     */
    @TestFactory
    List<DynamicTest> arrows() throws IllegalAccessException {
        JavaClasses program = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("dev.fairlead");
        List<DynamicTest> tests = new ArrayList<>();
        for (Field field : LayersTest.class.getDeclaredFields()) {
            if (ArchRule.class.isAssignableFrom(field.getType())) {
                ArchRule rule = (ArchRule) field.get(null);
                tests.add(dynamicTest(field.getName(), () -> rule.check(program)));
            }
        }
        assertThat(tests).hasSizeGreaterThan(10);
        return tests;
    }

    /** The build looks for what may be null in marked packages alone. */
    @Test
    void everyPackageIsMarkedForNulls() {
        assertThat(new ClassFileImporter()
                        .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("dev.fairlead").stream()
                                .map(JavaClass::getPackage)
                                .filter(p -> !p.getName().startsWith("dev.fairlead.rulebase")
                                        && !p.getName().startsWith("dev.fairlead.templates"))
                                .filter(p -> !p.isAnnotatedWith(NullMarked.class))
                                .map(JavaPackage::getName))
                .isEmpty();
    }

    static final ArchRule LAYERS = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("model")
            .definedBy("dev.fairlead.model..")
            .layer("intake")
            .definedBy("dev.fairlead.intake..")
            .layer("facts")
            .definedBy("dev.fairlead.facts..")
            .layer("measure")
            .definedBy("dev.fairlead.measure..")
            .layer("rules")
            .definedBy("dev.fairlead.rules..", "dev.fairlead.rulebase..")
            .layer("findings")
            .definedBy("dev.fairlead.findings..")
            .layer("check")
            .definedBy("dev.fairlead.check..")
            .optionalLayer("report")
            .definedBy("dev.fairlead.report..")
            .optionalLayer("picture")
            .definedBy("dev.fairlead.picture..")
            .optionalLayer("web")
            .definedBy("dev.fairlead.web..")
            .optionalLayer("audit")
            .definedBy("dev.fairlead.audit..")
            .optionalLayer("cli")
            .definedBy("dev.fairlead.cli..")
            .whereLayer("facts")
            .mayOnlyAccessLayers("model")
            .whereLayer("model")
            .mayNotAccessAnyLayer()
            .whereLayer("intake")
            .mayOnlyAccessLayers("model")
            .whereLayer("measure")
            .mayOnlyAccessLayers("model", "facts")
            .whereLayer("rules")
            .mayOnlyAccessLayers("model", "facts")
            .whereLayer("findings")
            .mayOnlyAccessLayers("model", "facts", "measure", "rules")
            .whereLayer("check")
            .mayOnlyAccessLayers("model", "intake", "facts", "measure", "rules", "findings")
            .whereLayer("picture")
            .mayOnlyAccessLayers("model", "intake", "measure")
            .whereLayer("report")
            .mayOnlyAccessLayers("model", "intake", "facts", "measure", "rules", "findings", "check")
            .whereLayer("web")
            .mayOnlyAccessLayers(
                    "model", "intake", "facts", "measure", "rules", "findings", "check", "report", "picture")
            .whereLayer("audit")
            .mayOnlyAccessLayers("model", "intake", "facts", "measure", "rules", "findings", "check")
            .whereLayer("cli")
            .mayNotBeAccessedByAnyLayer()
            .withOptionalLayers(true);

    /** A reader goes through the rooms of the rulebase once. */
    static final ArchRule ROOMS_OF_RULES = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("catalogue")
            .definedBy("dev.fairlead.rules.catalogue..")
            .layer("language")
            .definedBy("dev.fairlead.rules.language..")
            .layer("engine")
            .definedBy("dev.fairlead.rules.engine..")
            .layer("verdict")
            .definedBy("dev.fairlead.rules.verdict..")
            .whereLayer("catalogue")
            .mayNotAccessAnyLayer()
            .whereLayer("language")
            .mayOnlyAccessLayers("catalogue")
            .whereLayer("engine")
            .mayOnlyAccessLayers("catalogue", "language")
            .whereLayer("verdict")
            .mayOnlyAccessLayers("catalogue", "language", "engine");

    static final ArchRule ONLY_RULES_KNOW_THE_ENGINE = noClasses()
            .that()
            .resideOutsideOfPackages("dev.fairlead.rules..", "dev.fairlead.rulebase..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie..");

    /** What reports of one case and of many share lies apart; nothing of a case's report is an audit's business. */
    static final ArchRule AUDITS_DO_WITHOUT_REPORTS_OF_A_CASE = noClasses()
            .that()
            .resideInAPackage("dev.fairlead.audit..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.fairlead.report..");

    static final ArchRule DRAWINGS_KNOW_NOTHING_OF_CASES = knowsNothingElse("dev.fairlead.drawing");

    static final ArchRule WHAT_ANY_PART_MAY_USE_KNOWS_NONE = knowsNothingElse("dev.fairlead.base");

    private static ArchRule knowsNothingElse(String name) {
        return noClasses()
                .that()
                .resideInAPackage(name + "..")
                .should()
                .dependOnClassesThat(com.tngtech.archunit.base.DescribedPredicate.describe(
                        "are of the program and not of " + name,
                        c -> c.getPackageName().startsWith("dev.fairlead")
                                && !c.getPackageName().equals(name)));
    }

    static final ArchRule NO_CYCLES_IN_REPORT = SlicesRuleDefinition.slices()
            .matching("dev.fairlead.report.(**)")
            .should()
            .beFreeOfCycles();

    static final ArchRule NO_CYCLES_IN_AUDIT = SlicesRuleDefinition.slices()
            .matching("dev.fairlead.audit.(**)")
            .should()
            .beFreeOfCycles();

    /** Rooms that can be read in one direction: each package on its own, also against the one around it. */
    private static final List<String> ONE_WAY = List.of(
            "dev.fairlead.model",
            "dev.fairlead.measure",
            "dev.fairlead.intake",
            "dev.fairlead.check",
            "dev.fairlead.findings",
            "dev.fairlead.picture",
            "dev.fairlead.cli");

    static final ArchRule NO_CYCLES = SlicesRuleDefinition.slices()
            .assignedFrom(new SliceAssignment() {
                @Override
                public SliceIdentifier getIdentifierOf(JavaClass c) {
                    return ONE_WAY.stream().anyMatch(c.getPackageName()::startsWith)
                            ? SliceIdentifier.of(c.getPackageName())
                            : SliceIdentifier.ignore();
                }

                @Override
                public String getDescription() {
                    return "packages of " + ONE_WAY;
                }
            })
            .should()
            .beFreeOfCycles();

    static final ArchRule NO_CYCLES_IN_WEB = SlicesRuleDefinition.slices()
            .matching("dev.fairlead.web.(**)")
            .should()
            .beFreeOfCycles();

    static final ArchRule PAGES_DO_NOT_KNOW_THE_SERVER = noClasses()
            .that()
            .resideInAPackage("dev.fairlead.web.*..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("dev.fairlead.web");

    static final ArchRule NOTHING_WRITES_TO_THE_CONSOLE_BUT_THE_COMMAND_LINE = noClasses()
            .that()
            .resideOutsideOfPackages("dev.fairlead.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err");
}
