package slipway.study;

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

/** This module tries ways of dosing on simulated people. It knows no papers, no web, no command line, no files. */
@AnalyzeClasses(packages = "slipway.study", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> MODULES_HERE_AND_BELOW = Set.of(
            "slipway.study.",
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
            slices().matching("slipway.study.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    /** The people must not be made of the estimate that is tried on them, nor of the rules. */
    @ArchTest
    static final ArchRule PEOPLE_SHARE_NOTHING_WITH_THE_PROGRAM_S_REASONING = noClasses()
            .that()
            .resideInAnyPackage("slipway.study.person..", "slipway.study.world..", "slipway.study.load..")
            .should()
            .dependOnClassesThat(describe(
                    "reason about a person",
                    type -> type.getPackageName().startsWith("slipway.reasoning.")
                            && !type.getPackageName().equals("slipway.reasoning.basis")));

    /** Reading what ships on the class path is allowed; the machine around the program is not there. */
    @ArchTest
    static final ArchRule NO_FILES_NETWORK_OR_DATABASE = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..", "javax..", "org.springframework..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.io\\.(File|RandomAccess).*");

    private static boolean isAbove(JavaClass type) {
        String name = type.getPackageName() + ".";
        return name.startsWith("slipway.") && MODULES_HERE_AND_BELOW.stream().noneMatch(name::startsWith);
    }
}
