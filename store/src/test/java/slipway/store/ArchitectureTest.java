package slipway.store;

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

/** This module is the database. It knows the ports and types of care, and no web. */
@AnalyzeClasses(packages = "slipway.store", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> MODULES_HERE_AND_BELOW = Set.of(
            "slipway.store.",
            "slipway.care.",
            "slipway.mechanics.",
            "slipway.reasoning.",
            "slipway.exercises.",
            "slipway.pictures.");

    @ArchTest
    static final ArchRule DEPENDENCIES_POINT_ONE_WAY = noClasses()
            .should()
            .dependOnClassesThat(describe("belong to a module that is not below", ArchitectureTest::isAbove));

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("slipway.store.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    /** What a value of a record means is judged in care; here it is kept. */
    @ArchTest
    static final ArchRule NO_JUDGEMENT_AND_NO_WEB = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("slipway.reasoning..", "slipway.pictures..", "org.springframework..", "jakarta..");

    private static boolean isAbove(JavaClass type) {
        String name = type.getPackageName() + ".";
        return name.startsWith("slipway.") && MODULES_HERE_AND_BELOW.stream().noneMatch(name::startsWith);
    }
}
