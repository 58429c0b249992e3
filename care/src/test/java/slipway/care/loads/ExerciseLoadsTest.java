package slipway.care.loads;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Site;

class ExerciseLoadsTest {
    @Test
    void saysTheSameAsTheTableOfThePlace() {
        Site site = Site.get("deep gluteal space");
        Exercise exercise = Catalogue.bundled().get("glide-knee-sitting");
        ExerciseLoads.At page = ExerciseLoads.of(exercise).get(0).places().stream()
                .filter(at -> at.site().equals(site))
                .findFirst()
                .orElseThrow();
        GlideLoads.Row table = GlideLoads.at(site).rows().stream()
                .filter(row -> row.exercise().equals(exercise))
                .findFirst()
                .orElseThrow();
        assertThat(page.loads().label()).isEqualTo(table.loads().label());
        assertThat(page.loads().glideMm().median())
                .isCloseTo(table.loads().glideMm().median(), org.assertj.core.api.Assertions.within(1e-6));
        assertThat(page.loads().risePct().high())
                .isCloseTo(table.loads().risePct().high(), org.assertj.core.api.Assertions.within(1e-6));
    }

    @Test
    void readsOnlyPlacesOfItsOwnNerves() {
        List<ExerciseLoads> front = ExerciseLoads.of(Catalogue.bundled().get("glide-front-knee-prone"));
        assertThat(front).singleElement().satisfies(loads -> {
            assertThat(loads.pathway()).isEqualTo(Pathway.FRONT);
            assertThat(loads.places()).extracting(at -> at.site().name()).contains("front of thigh", "inner knee");
        });
        assertThat(ExerciseLoads.of(Catalogue.bundled().get("glide-tarsal-knee-lying")))
                .singleElement()
                .satisfies(loads -> assertThat(loads.places())
                        .extracting(at -> at.site().name())
                        .contains("conus", "tarsal tunnel")
                        .doesNotContain("fibular neck", "sural at ankle"));
    }

    @Test
    void nothingWhereNoNerveIsNamed() {
        assertThat(ExerciseLoads.of(Catalogue.bundled().get("strength-wall-slide")))
                .isEmpty();
    }
}
