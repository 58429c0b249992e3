package slipway.exercises;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "slipway.exercises", importOptions = DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule packagesPointOneWay = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("yaml")
            .definedBy("..yaml..")
            .layer("exercise")
            .definedBy("..exercises.exercise..")
            .layer("readability")
            .definedBy("..readability..")
            .layer("format")
            .definedBy("..format..")
            .layer("catalogue")
            .definedBy("..catalogue..")
            .layer("unload")
            .definedBy("..unload..")
            .whereLayer("yaml")
            .mayNotAccessAnyLayer()
            .whereLayer("exercise")
            .mayNotAccessAnyLayer()
            .whereLayer("readability")
            .mayOnlyAccessLayers("exercise")
            .whereLayer("format")
            .mayOnlyAccessLayers("exercise", "yaml")
            .whereLayer("catalogue")
            .mayOnlyAccessLayers("exercise", "format", "yaml")
            .whereLayer("unload")
            .mayOnlyAccessLayers("exercise", "yaml");

    @ArchTest
    static final ArchRule noCycles =
            slices().matching("slipway.exercises.(*)..").should().beFreeOfCycles();
}
