package slipway.pictures.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.SvgReader;

class CoursePictureTest {
    private static final Pattern TEXT =
            Pattern.compile("<text x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" text-anchor=\"(\\w+)\"[^>]*>([^<]*)</text>");

    @ParameterizedTest
    @ValueSource(ints = {320, 390, 800, 2000})
    void everyWordLiesWithinThePicture(int width) {
        for (CourseStory story : List.of(
                CourseStories.usual(), CourseStories.crowded(), CourseStories.empty(), CourseStories.firstDay())) {
            String svg = CoursePicture.svg(story, Palette.PAPER, width, "course");
            double height = Double.parseDouble(SvgReader.of(svg).rootAttribute("height"));
            Matcher words = TEXT.matcher(svg);
            int found = 0;
            while (words.find()) {
                double x = Double.parseDouble(words.group(1));
                double y = Double.parseDouble(words.group(2));
                // Measured with the generous width that the layout uses; one letter of slack for the numbers at the
                // edge.
                double wide = LabelRows.widthOf(words.group(4).replaceAll("&[a-z]+;", "x"), Ground.TYPE);
                double start = x
                        - switch (words.group(3)) {
                            case "end" -> wide;
                            case "middle" -> wide / 2;
                            default -> 0;
                        };
                assertThat(start).as(words.group()).isGreaterThanOrEqualTo(-0.1);
                assertThat(start + wide).as(words.group()).isLessThanOrEqualTo(width + 0.1);
                assertThat(y).isBetween(8.0, height);
                found++;
            }
            assertThat(found).isGreaterThan(5);
        }
    }

    @Test
    void theWordsSayWhatThePictureShows() {
        String said = SvgReader.of(CoursePicture.svg(CourseStories.usual(), Palette.DARK, 800, "c"))
                .text("desc");
        assertThat(said)
                .contains("Dose from 2.1 to 3.6 % strain in 6 steps.")
                .contains("Tolerance about 4 at first, about 5.5 (4.6 to 6.6) in week 7.")
                .contains("2 flare", "1 stopped early", "the longest took 45 minutes to settle")
                .contains(
                        "Roland-Morris: 14 at first, 7 in week 7, error about 3.5, less is better; goal 5, chance about 54 %"
                                + " in week 9.")
                .contains("Decision 3, week 3: eased two steps");
        assertThat(SvgReader.of(CoursePicture.svg(CourseStories.empty(), Palette.PAPER, 400, "c"))
                        .text("desc"))
                .isEqualTo("No dose given yet.");
    }

    @Test
    void responsesHaveShapesOfTheirOwn() {
        assertThat(List.of(CourseStory.Response.values()))
                .extracting(response -> {
                    var ground = new Ground(Palette.PAPER.grey());
                    Marks.session(ground, 50, 50, response, OptionalDouble.of(5));
                    Matcher path = Pattern.compile(" d=\"([^\"]*)\"")
                            .matcher(ground.svg()
                                    .close()
                                    .document(new slipway.pictures.svg.Words("m", "m", "m"), 0, 0, 100, 100));
                    assertThat(path.find()).isTrue();
                    return path.group(1).replaceAll("[0-9.-]+", "");
                })
                .doesNotHaveDuplicates();
        assertThat(Marks.radius(OptionalDouble.of(2)))
                .isGreaterThan(Marks.radius(OptionalDouble.of(0)))
                .isLessThan(Marks.radius(OptionalDouble.of(30)));
    }

    @Test
    void forestSaysEachChangeInUnitsOfTheError() {
        var rows = List.of(
                new ChangeForest.Row("Roland-Morris", 1.6, 0.7, OptionalDouble.of(1), "14 to 6, important"),
                new ChangeForest.Row("Pain 0-10", -0.4, 0.7, OptionalDouble.empty(), ""));
        SvgReader forest = SvgReader.of(ChangeForest.svg(rows, Palette.PAPER, 360, "f"));
        assertThat(forest.text("desc"))
                .contains("Roland-Morris: +1.6 (+0.9 to +2.3), 14 to 6, important.", "Pain 0-10: -0.4 (-1.1 to +0.3).");
        assertThat(SvgReader.of(ChangeForest.svg(List.of(), Palette.PAPER, 360, "f"))
                        .text("desc"))
                .isEqualTo("Nothing was measured twice yet.");
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        assertThatThrownBy(() -> new CourseStory.Dot(3, Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new CourseStory.Dot(-1, 3)).hasMessageContaining("was day -1");
        assertThatThrownBy(() -> new CourseStory.Aim(3, 1, OptionalDouble.of(1.2)))
                .hasMessageContaining("within 0 and 1");
        assertThatThrownBy(() ->
                        new CourseStory.Strip("x", 5, 5, true, OptionalDouble.empty(), List.of(), Optional.empty()))
                .hasMessageContaining("low < high");
        assertThatThrownBy(() -> CoursePicture.svg(CourseStories.empty(), Palette.PAPER, 200, "c"))
                .hasMessageContaining("was 200");
    }
}
