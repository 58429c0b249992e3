package slipway.pictures.figure;

import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Support;
import slipway.pictures.skeleton.Body;
import slipway.pictures.skeleton.Ground;
import slipway.pictures.space.V3;

/**
 * Puts all bodies of one picture so that what stays in place during the movement is in one place: under the origin.
 *
 * @param ground what they lie on
 * @param sameSupport whether start and end rest on the same thing; if not, the other foot is what stays
 * @param againstWall whether the back slides on a wall
 */
record Placing(Ground ground, boolean sameSupport, boolean againstWall) {

    static Placing of(FigureScene scene) {
        boolean same = scene.start()
                .map(start -> start.support() == scene.pose().support())
                .orElse(true);
        return new Placing(scene.ground(), same, slidesOnWall(scene));
    }

    private static boolean slidesOnWall(FigureScene scene) {
        return scene.pose().support() == Support.STANDING && scene.props().contains(PropUse.WALL);
    }

    Body body(Pose pose) {
        Body body = Body.of(pose.support(), pose.posture(), pose.arms(), ground);
        V3 stays = sameSupport ? stays(body) : body.bones().other().ankle();
        return body.moved(new V3(-stays.x(), 0, 0));
    }

    private V3 stays(Body body) {
        return switch (body.resting().support()) {
            case LYING -> body.bones().shoulder(Limb.OWN).towards(body.bones().shoulder(Limb.OTHER), 0.5);
            case STANDING ->
                againstWall
                        ? body.bones().trunk().hips()
                        : body.bones().leg(body.resting().standingOn()).ankle();
            case KNEELING, ALL_FOURS ->
                body.bones().leg(body.resting().standingOn()).knee();
            default -> body.bones().trunk().hips();
        };
    }
}
