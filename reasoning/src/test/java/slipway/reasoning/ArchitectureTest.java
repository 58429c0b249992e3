package slipway.reasoning;

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

/** This module is decisions from findings. It stands on mechanics alone. */
@AnalyzeClasses(packages = "slipway.reasoning", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final Set<String> MODULES_HERE_AND_BELOW = Set.of("slipway.reasoning.", "slipway.mechanics.");

    private static final Set<String> ASKS_THE_WORLD = Set.of(
            "System.currentTimeMillis",
            "System.nanoTime",
            "System.getenv",
            "System.getProperty",
            "Math.random",
            "UUID.randomUUID",
            "Instant.now",
            "LocalDate.now",
            "LocalDateTime.now",
            "ZonedDateTime.now",
            "ThreadLocalRandom.current");

    @ArchTest
    static final ArchRule DEPENDENCIES_POINT_ONE_WAY = noClasses()
            .should()
            .dependOnClassesThat(describe("belong to a module that is not below", ArchitectureTest::isAbove));

    @ArchTest
    static final ArchRule PACKAGES_HAVE_NO_CYCLES = slices().matching("slipway.reasoning.(*)..")
            .should()
            .beFreeOfCycles()
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    /** Reading what ships on the class path is allowed; the machine around the program is not there. */
    @ArchTest
    static final ArchRule NO_FILES_NETWORK_OR_DATABASE = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..", "javax..", "org.springframework..")
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.io\\.(File|RandomAccess).*");

    /** The same input gives the same result, today and tomorrow. */
    @ArchTest
    static final ArchRule NO_CLOCK_NO_CHANCE_NO_ENVIRONMENT = noClasses()
            .should()
            .callMethodWhere(describe(
                    "asks for time, chance or environment",
                    call -> ASKS_THE_WORLD.contains(call.getTargetOwner().getSimpleName() + "."
                            + call.getTarget().getName())))
            .orShould()
            .callConstructor(java.util.Random.class);

    private static boolean isAbove(JavaClass type) {
        String name = type.getPackageName() + ".";
        return name.startsWith("slipway.") && MODULES_HERE_AND_BELOW.stream().noneMatch(name::startsWith);
    }
}
