package slipway.documents.sheet;

import java.util.List;
import slipway.documents.pdf.Svg;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;
import slipway.pictures.figure.Figure;
import slipway.pictures.figure.FigureScene;
import slipway.pictures.figure.Pose;
import slipway.pictures.figure.PropUse;
import slipway.pictures.look.Look;
import slipway.pictures.space.Bounds;
import slipway.pictures.svg.Words;

/** Start and end of a movement by the program's figure, both in the same frame. */
final class SampleFigures {
    private SampleFigures() {}

    static SheetExercise.Pictures lying(
            String start, String end, Arms arms, String movement, String startShows, String endShows) {
        return pictures(FigureScene.of(Support.LYING, Posture.parse(start), arms), end, movement, startShows, endShows);
    }

    static SheetExercise.Pictures standing(
            String start, String end, String movement, String startShows, String endShows) {
        FigureScene scene = FigureScene.of(Support.STANDING, Posture.parse(start), Arms.SWINGING);
        return pictures(scene, end, movement, startShows, endShows);
    }

    private static SheetExercise.Pictures pictures(
            FigureScene scene, String end, String movement, String startShows, String endShows) {
        boolean strap = scene.pose().arms() == Arms.HOLD_STRAP;
        FigureScene before = strap
                ? scene.withProps(PropUse.STRAP, PropUse.PILLOW_UNDER_HEAD)
                : scene.withProps(
                        scene.pose().support() == Support.LYING
                                ? new PropUse[] {PropUse.PILLOW_UNDER_HEAD}
                                : new PropUse[0]);
        FigureScene after = new FigureScene(
                        before.ownSide(),
                        new Pose(
                                scene.pose().support(),
                                Posture.parse(end),
                                scene.pose().arms()),
                        before.props(),
                        before.view(),
                        before.start(),
                        before.nerve())
                .from(scene.pose());
        Figure first = Figure.of(before);
        Figure second = Figure.of(after);
        Bounds frame = Figure.commonBounds(List.of(first, second));
        return new SheetExercise.Pictures(
                Svg.parse(first.svg(Look.print(), new Words("start", "Start", startShows), frame)),
                Svg.parse(second.svg(Look.print(), new Words("end", "End", endShows), frame)),
                movement,
                startShows,
                endShows);
    }
}
