package slipway.pictures;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "slipway.pictures", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule LAYERS = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("slipway.pictures..")
            .layer("space")
            .definedBy("slipway.pictures.space")
            .layer("skeleton")
            .definedBy("slipway.pictures.skeleton")
            .layer("look")
            .definedBy("slipway.pictures.look")
            .layer("svg")
            .definedBy("slipway.pictures.svg")
            .layer("drawing")
            .definedBy("slipway.pictures.drawing")
            .layer("charts")
            .definedBy(
                    "slipway.pictures.chart",
                    "slipway.pictures.ruler",
                    "slipway.pictures.nerve",
                    "slipway.pictures.course",
                    "slipway.pictures.motion")
            .layer("figure")
            .definedBy("slipway.pictures.figure")
            .whereLayer("figure")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("charts")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("drawing")
            .mayOnlyBeAccessedByLayers("figure")
            .whereLayer("skeleton")
            .mayOnlyBeAccessedByLayers("drawing", "figure")
            .whereLayer("space")
            .mayOnlyBeAccessedByLayers("skeleton", "svg", "drawing", "figure");
}
