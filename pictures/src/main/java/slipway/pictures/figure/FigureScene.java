package slipway.pictures.figure;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.body.Support;
import slipway.pictures.skeleton.Ground;

/**
 * What a figure shows.
 *
 * @param ownSide the side of the nerve: it is turned to the viewer
 * @param pose how the body is
 * @param props the things around it
 * @param view from where it is seen
 * @param start where the movement came from: drawn as a dashed ghost, with an arrow from there to the pose
 * @param nerve the nerve, if it is to be drawn
 */
public record FigureScene(
        Side ownSide, Pose pose, Set<PropUse> props, View view, Optional<Pose> start, Optional<NerveMark> nerve) {
    public FigureScene {
        props = props.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(props));
    }

    /** A body at rest in its usual view, without things. */
    public static FigureScene of(Support support, Posture posture, Arms arms) {
        return new FigureScene(
                Side.RIGHT,
                new Pose(support, posture, arms),
                Set.of(),
                View.usual(support),
                Optional.empty(),
                Optional.empty());
    }

    public FigureScene withProps(PropUse... uses) {
        Set<PropUse> all = EnumSet.noneOf(PropUse.class);
        all.addAll(Set.of(uses));
        return new FigureScene(ownSide, pose, all, view, start, nerve);
    }

    public FigureScene withSide(Side side) {
        return new FigureScene(side, pose, props, view, start, nerve);
    }

    public FigureScene withView(View other) {
        return new FigureScene(ownSide, pose, props, other, start, nerve);
    }

    /** The same scene as the end of a movement from a posture; support and arms stay. */
    public FigureScene from(Posture posture) {
        return from(new Pose(pose.support(), posture, pose.arms()));
    }

    /** The same scene as the end of a movement from a pose. */
    public FigureScene from(Pose before) {
        return new FigureScene(ownSide, pose, props, view, Optional.of(before), nerve);
    }

    public FigureScene withNerve(NerveMark mark) {
        return new FigureScene(ownSide, pose, props, view, start, Optional.of(mark));
    }

    /** The same things around another posture; without a movement. */
    FigureScene at(Pose other) {
        return new FigureScene(ownSide, other, props, view, Optional.empty(), nerve);
    }

    Ground ground() {
        return new Ground(
                rests(Limb.OWN),
                rests(Limb.OTHER),
                props.contains(PropUse.PILLOW_UNDER_HEAD),
                props.contains(PropUse.TABLE));
    }

    /** A foot may be laid flat unless the movement is in its ankle. */
    private boolean rests(Limb limb) {
        return start.map(before -> before.posture().angleDeg(Joint.ANKLE, limb)
                        == pose.posture().angleDeg(Joint.ANKLE, limb))
                .orElse(true);
    }
}
