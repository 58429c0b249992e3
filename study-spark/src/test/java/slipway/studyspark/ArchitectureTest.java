package slipway.studyspark;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import org.jspecify.annotations.NullMarked;

/** This module only hands the study out to machines: it simulates nothing by itself. */
@AnalyzeClasses(packages = "slipway.studyspark", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule ONLY_THE_STUDY_IS_USED = noClasses()
            .should()
            .dependOnClassesThat(describe(
                    "belong to another module than the study",
                    type -> type.getPackageName().startsWith("slipway.")
                            && !type.getPackageName().equals("slipway.studyspark")
                            && !type.getPackageName().startsWith("slipway.study.")));

    @ArchTest
    static final ArchRule EVERY_PACKAGE_IS_NULL_MARKED = classes()
            .should(ArchCondition.from(describe(
                    "be in a null-marked package", type -> type.getPackage().isAnnotatedWith(NullMarked.class))));

    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
}
