package slipway.documents;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.net.URL;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;

@AnalyzeClasses(packages = "slipway.documents", importOptions = DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule ONE_PACKAGE_KNOWS_THE_LAYOUT_ENGINE = noClasses()
            .that()
            .resideOutsideOfPackage("slipway.documents.pdf")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.batik..");

    @ArchTest
    static final ArchRule NO_CYCLES =
            slices().matching("slipway.documents.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule NOTHING_READS_THE_CLOCK_OR_THE_NETWORK = noClasses()
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(URL.class);
}
