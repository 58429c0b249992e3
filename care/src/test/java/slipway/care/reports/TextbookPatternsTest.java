package slipway.care.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.Locator;
import slipway.reasoning.locate.SitePrior;
import slipway.reasoning.screening.Region;

/** Every lesion pattern of the textbooks leads to its own site (evidence 2c, from memory). */
class TextbookPatternsTest {
    private static final Locator LOCATOR = Locator.load(Region.LEG, SitePrior.load(SitePrior.SCORING));

    static Iterable<PublishedCase> patterns() throws IOException {
        try (InputStream file = TextbookPatternsTest.class.getResourceAsStream("textbook-patterns.yaml")) {
            return PublishedCases.readAll("textbook-patterns.yaml", Objects.requireNonNull(file));
        }
    }

    @ParameterizedTest
    @MethodSource("patterns")
    void leadsToItsSite(PublishedCase pattern) {
        Location location = LOCATOR.locate(CaseScores.request(pattern));
        assertThat(location.notUsed()).isEmpty();
        assertThat(location.scored().get(0).site())
                .isEqualTo(pattern.diagnosisSite().orElseThrow());
    }
}
