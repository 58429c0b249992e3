package slipway.web.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slipway.care.loads.ExerciseLoads;
import slipway.exercises.catalogue.Catalogue;
import slipway.web.TestServer;
import slipway.web.shell.Numbers;

class ExercisePageTest {
    private static final TestServer SERVER = TestServer.shared();

    @Test
    void tellsGlideAndLoadAtThePlacesOfItsNerve() {
        String page = SERVER.signedIn("therapist")
                .get("/exercises/glide-knee-sitting")
                .body();
        ExerciseLoads.of(Catalogue.bundled().get("glide-knee-sitting"))
                .get(0)
                .places()
                .forEach(at -> assertThat(page)
                        .contains(
                                at.site().name(),
                                Numbers.one(at.loads().glideMm().median()),
                                at.loads().label().words()));
        assertThat(page).doesNotContain("Not validated");
    }

    @Test
    void saysThatTheFrontOfTheLegIsNotValidated() {
        TestServer.Visitor therapist = SERVER.signedIn("therapist");
        assertThat(therapist.get("/exercises/glide-front-knee-prone").body()).contains("Not validated", "groin");
        assertThat(therapist
                        .get("/exercises/writer?from=glide-front-knee-prone")
                        .body())
                .contains("Not validated", "groin");
    }

    @Test
    void everyExerciseHasItsPurposeAndPositionInWords() {
        assertThat(Catalogue.bundled().list())
                .allSatisfy(exercise -> assertThat(Names.purpose(exercise) + Names.position(exercise))
                        .isNotBlank());
    }
}
