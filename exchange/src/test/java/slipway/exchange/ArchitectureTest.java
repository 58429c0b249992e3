package slipway.exchange;

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
import java.net.URL;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/** This module is what goes to other systems and comes from them. One package knows FHIR. */
@AnalyzeClasses(packages = "slipway.exchange", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> MODULES_HERE_AND_BELOW = Set.of(
            "slipway.exchange.",
            "slipway.mechanics.",
            "slipway.reasoning.",
            "slipway.exercises.",
            "slipway.pictures.",
            "slipway.care.");

    @ArchTest
    static final ArchRule DEPENDENCIES_POINT_ONE_WAY = noClasses()
            .should()
            .dependOnClassesThat(describe("belong to a module that is not below", ArchitectureTest::isAbove));

    @ArchTest
    static final ArchRule ONE_PACKAGE_KNOWS_FHIR = noClasses()
            .that()
            .resideOutsideOfPackage("slipway.exchange.fhir")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("ca.uhn..", "org.hl7..", "com.fasterxml.jackson.databind..");

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES = slices().matching("slipway.exchange.(*)..")
            .should()
            .beFreeOfCycles()
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    @ArchTest
    static final ArchRule NOTHING_READS_THE_CLOCK_OR_THE_NETWORK = noClasses()
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(URL.class);

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    private static boolean isAbove(JavaClass type) {
        String name = type.getPackageName() + ".";
        return name.startsWith("slipway.") && MODULES_HERE_AND_BELOW.stream().noneMatch(name::startsWith);
    }
}
