package slipway.pictures.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.body.Support;
import slipway.mechanics.motion.Motion;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.look.Look;
import slipway.pictures.svg.SvgReader;
import slipway.pictures.svg.Words;

class FigureTest {
    private static final Words WORDS = new Words("fig-1", "Leg raise & more", "A person <lying> raises a leg.");
    private static final int MOST_BYTES = 30_000;

    static Stream<String> names() {
        return Postures.all().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void isASmallWellFormedPictureWithWords(String name) {
        String svg = Figure.of(Postures.get(name)).svg(Look.paper(), WORDS);
        SvgReader picture = SvgReader.of(svg);
        assertThat(svg.length()).isLessThan(MOST_BYTES);
        assertThat(picture.text("title")).isEqualTo("Leg raise & more");
        assertThat(picture.text("desc")).isEqualTo("A person <lying> raises a leg.");
        assertThat(picture.rootAttribute("role")).isEqualTo("img");
        assertThat(picture.rootAttribute("aria-labelledby")).isEqualTo("fig-1-title fig-1-desc");
        assertThat(svg)
                .doesNotContain("style=")
                .doesNotContain("class=")
                .doesNotContain("NaN")
                .doesNotContain("href");
    }

    @ParameterizedTest
    @MethodSource("names")
    void everythingLiesInsideTheViewBox(String name) {
        SvgReader picture = SvgReader.of(Figure.of(Postures.get(name)).svg(Look.paper(), WORDS));
        assertThat(picture.pointsOutsideViewBox()).isEmpty();
    }

    @Test
    void isTheSameEveryTime() {
        for (FigureScene scene : Postures.all().values()) {
            assertThat(Figure.of(scene).svg(Look.paper(), WORDS))
                    .isEqualTo(Figure.of(scene).svg(Look.paper(), WORDS));
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void theOtherSideIsTheMirrorPicture(String name) {
        FigureScene scene = Postures.get(name);
        FigureGeometry right = Figure.of(scene.withSide(Side.RIGHT)).geometry();
        FigureGeometry left = Figure.of(scene.withSide(Side.LEFT)).geometry();
        right.joints().forEach((joint, place) -> {
            assertThat(left.joint(joint).x()).as(joint).isCloseTo(-place.x(), within(1e-9));
            assertThat(left.joint(joint).y()).as(joint).isCloseTo(place.y(), within(1e-9));
        });
        assertThat(left.bounds().right()).isCloseTo(-right.bounds().left(), within(1e-9));
    }

    @Test
    void theOwnLegIsNearerToTheViewer() {
        for (Side side : Side.values()) {
            Figure figure = Figure.of(FigureScene.of(Support.STANDING, Posture.reference(), Arms.ALONG_SIDES)
                    .withSide(side));
            // The camera of the side view looks along y.
            assertThat(figure.body().bones().own().hip().y())
                    .isLessThan(figure.body().bones().other().hip().y());
        }
    }

    @Test
    void handsReachTheStrapAndTheStrapTheFoot() {
        Figure figure = Figure.of(Postures.get("straight-leg raise with strap"));
        var own = figure.body().ownArm();
        var shoulderToToe = own.shoulder().distance(figure.body().bones().own().toe());
        assertThat(own.closed()).isTrue();
        assertThat(own.grip().distance(figure.body().bones().own().toe())).isLessThan(shoulderToToe);
    }

    @Test
    void framesOfAMotionStayInPlaceAndFitOneFrame() {
        Motion motion = new Motion(List.of(
                new Motion.Key(Posture.parse("hip 90 knee 90 neck 10"), 0),
                new Motion.Key(Posture.parse("hip 90 knee 15 neck 10"), 3)));
        FigureScene scene = FigureScene.of(Support.LYING, Posture.reference(), Arms.BEHIND_THIGH);
        List<Figure> frames = Figure.along(scene, motion, 8);
        var common = Figure.commonBounds(frames);
        for (Figure frame : frames) {
            assertThat(frame.geometry()
                            .joint("hip")
                            .distance(frames.get(0).geometry().joint("hip")))
                    .isLessThan(1e-9);
            frame.geometry()
                    .joints()
                    .values()
                    .forEach(p -> assertThat(common.contains(p, 0)).isTrue());
        }
        assertThat(frames.get(7).geometry().joint("toe").y())
                .isGreaterThan(frames.get(0).geometry().joint("toe").y() + 0.1);
    }

    @Test
    void framesOfAMotionHaveTheSameElements() {
        Motion motion = new Motion(List.of(
                new Motion.Key(Posture.parse("hip 90 knee 90"), 0),
                new Motion.Key(Posture.parse("hip 90 knee 15"), 3)));
        FigureScene scene = FigureScene.of(Support.LYING, Posture.reference(), Arms.BEHIND_THIGH);
        var shapes = Figure.along(scene, motion, 6).stream()
                .map(f -> f.svg(Look.paper(), WORDS).replaceAll("[-0-9. ]+", "#"))
                .distinct();
        assertThat(shapes).hasSize(1);
    }

    @Test
    void drawsTheNerveWithItsSite() {
        FigureScene scene = Postures.get("sitting knee straight")
                .withNerve(new NerveMark(Tract.SCIATIC_TIBIAL, Site.find("deep gluteal space")));
        String with = Figure.of(scene).svg(Look.paper(), WORDS);
        assertThat(with).contains("r=\"20\"");
        assertThat(SvgReader.of(with).pointsOutsideViewBox()).isEmpty();
    }

    @Test
    void looksAreColoursOnly() {
        FigureScene scene = Postures.get("bridge");
        String paper = Figure.of(scene).svg(Look.paper(), WORDS).replaceAll("#[0-9a-f]{6}", "#");
        for (Look look : List.of(Look.print(), Look.dark())) {
            assertThat(Figure.of(scene).svg(look, WORDS).replaceAll("#[0-9a-f]{6}", "#"))
                    .isEqualTo(paper);
        }
        assertThat(Figure.of(scene).svg(Look.print(), WORDS)).doesNotContain("#b3472f");
    }

    @Test
    void refusesWordsThatCannotName() {
        assertThatThrownBy(() -> new Words("1 a", "t", "d")).hasMessageContaining("id prefix");
        assertThatThrownBy(() -> new Words("a", " ", "d")).hasMessageContaining("title");
    }
}
