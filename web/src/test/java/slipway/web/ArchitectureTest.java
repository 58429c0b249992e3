package slipway.web;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/** This module is the pages. It computes nothing that the command line could not compute, and writes no SQL. */
@AnalyzeClasses(packages = "slipway.web", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> MODULES_HERE_AND_BELOW = Set.of(
            "slipway.web.",
            "slipway.documents.",
            "slipway.exchange.",
            "slipway.store.",
            "slipway.care.",
            "slipway.pictures.",
            "slipway.exercises.",
            "slipway.reasoning.",
            "slipway.mechanics.");

    @ArchTest
    static final ArchRule DEPENDENCIES_POINT_ONE_WAY = noClasses()
            .should()
            .dependOnClassesThat(describe("belong to a module that is not below", ArchitectureTest::isAbove));

    @ArchTest
    static final ArchRule FEATURES_HAVE_NO_CYCLES =
            slices().matching("slipway.web.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    /** The records are reached through the ports of care; a statement in a page would pass by reach and trail. */
    @ArchTest
    static final ArchRule NO_SQL =
            noClasses().should().dependOnClassesThat().resideInAnyPackage("java.sql..", "javax.sql..", "org.jooq..");

    @ArchTest
    static final ArchRule ONE_JSON_LIBRARY =
            noClasses().should().dependOnClassesThat().resideInAPackage("com.fasterxml.jackson.databind..");

    private static boolean isAbove(JavaClass type) {
        String name = type.getPackageName() + ".";
        return name.startsWith("slipway.") && MODULES_HERE_AND_BELOW.stream().noneMatch(name::startsWith);
    }
}
