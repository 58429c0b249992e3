package slipway.pictures.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import slipway.mechanics.evidence.BundledTable;
import slipway.pictures.space.P2;

/** Known figures stay where they were, compared by geometry. */
class FigureGoldenTest {
    /** About 5 mm of a person: smaller shifts cannot be seen. */
    private static final double VISIBLE = 0.003;

    @Test
    void jointsAreWhereTheyWere() throws IOException {
        try (var stream = FigureGoldenTest.class.getResourceAsStream("/slipway/pictures/figure-geometry.csv")) {
            assertThat(stream).isNotNull();
            var rows = BundledTable.parseText(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            assertThat(rows).hasSize(Postures.all().size() * GoldenGeometry.JOINTS.size());
            for (var row : rows) {
                P2 golden = new P2(Double.parseDouble(row.get("x")), Double.parseDouble(row.get("y")));
                P2 now = Figure.of(Postures.get(row.get("figure"))).geometry().joint(row.get("joint"));
                assertThat(now.distance(golden))
                        .as("%s %s was at %s, is at %s", row.get("figure"), row.get("joint"), golden, now)
                        .isLessThan(VISIBLE);
            }
        }
    }
}
