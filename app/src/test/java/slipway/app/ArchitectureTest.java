package slipway.app;

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
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/** This module is the one program. Nothing stands on it. */
@AnalyzeClasses(packages = "slipway.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> MODULES_HERE_AND_BELOW = Set.of(
            "slipway.app.",
            "slipway.mechanics.",
            "slipway.reasoning.",
            "slipway.exercises.",
            "slipway.pictures.",
            "slipway.care.",
            "slipway.store.",
            "slipway.exchange.",
            "slipway.documents.",
            "slipway.study.",
            "slipway.web.");

    @ArchTest
    static final ArchRule DEPENDENCIES_POINT_ONE_WAY = noClasses()
            .should()
            .dependOnClassesThat(describe("belong to a module that is not below", ArchitectureTest::isAbove));

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES =
            slices().matching("slipway.app.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    /** One JSON library: the older one comes along with others and would read things another way. */
    @ArchTest
    static final ArchRule ONE_JSON_LIBRARY =
            noClasses().should().dependOnClassesThat().resideInAPackage("com.fasterxml.jackson.databind..");

    private static boolean isAbove(JavaClass type) {
        String name = type.getPackageName() + ".";
        return name.startsWith("slipway.") && MODULES_HERE_AND_BELOW.stream().noneMatch(name::startsWith);
    }
}
