package slipway.pictures.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelRowsTest {
    private static final double SIZE = 13;

    @Test
    void noTwoLabelsOverlapAndAllStayInside() {
        var random = new Random(11);
        for (int trial = 0; trial < 300; trial++) {
            var places = new ArrayList<Double>();
            var texts = new ArrayList<String>();
            int count = random.nextInt(14);
            for (int i = 0; i < count; i++) {
                places.add(random.nextInt(6) == 0 ? 100.0 : 360 * random.nextDouble());
                texts.add("x".repeat(1 + random.nextInt(60)));
            }
            assertApart(LabelRows.of(places, texts, SIZE, 0, 360));
        }
    }

    private static void assertApart(List<LabelRows.Placed> placed) {
        for (int i = 0; i < placed.size(); i++) {
            LabelRows.Placed a = placed.get(i);
            double half = LabelRows.widthOf(a.text(), SIZE) / 2;
            assertThat(a.middle() - half).isGreaterThanOrEqualTo(-1e-9);
            assertThat(a.middle() + half).isLessThanOrEqualTo(360 + 1e-9);
            for (LabelRows.Placed b : placed.subList(i + 1, placed.size())) {
                if (a.row() == b.row()) {
                    double apart = half + LabelRows.widthOf(b.text(), SIZE) / 2;
                    assertThat(Math.abs(a.middle() - b.middle())).isGreaterThan(apart);
                }
            }
        }
    }

    @Test
    void aLabelWiderThanThePictureIsShortened() {
        var placed = LabelRows.of(List.of(10.0), List.of("a long label that cannot fit"), SIZE, 0, 100);
        assertThat(placed.get(0).text()).endsWith("…").hasSizeLessThan(15);
    }

    @Test
    void ticksAreRound() {
        assertThat(new Scale(0, 7.9, 0, 100).ticks(4)).containsExactly(0.0, 2.0, 4.0, 6.0);
        assertThat(new Scale(-0.3, 1.1, 0, 100).ticks(4)).containsExactly(0.0, 0.5, 1.0);
    }
}
