package slipway.pictures.figure;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

/** Scenes for contact sheets and tests: invented movements of common practice. */
final class Postures {
    private Postures() {}

    static FigureScene get(String name) {
        return Optional.ofNullable(all().get(name)).orElseThrow();
    }

    static Map<String, FigureScene> all() {
        var all = new LinkedHashMap<String, FigureScene>();
        all.put(
                "straight-leg raise with strap",
                lying("hip 62 knee 4 ankle 0 other-ankle -20 neck 15", Arms.HOLD_STRAP)
                        .withProps(PropUse.STRAP, PropUse.PILLOW_UNDER_HEAD)
                        .from(Posture.parse("hip 12 knee 4 ankle 0 other-ankle -20 neck 15")));
        all.put(
                "knee glide",
                lying("hip 90 knee 20 ankle 0 other-ankle -20 neck 10", Arms.BEHIND_THIGH)
                        .withProps(PropUse.PILLOW_UNDER_HEAD)
                        .from(Posture.parse("hip 90 knee 90 ankle 0 other-ankle -20 neck 10")));
        all.put(
                "ankle pumps lying",
                lying("ankle 15 other-ankle -20 neck 10", Arms.ALONG_SIDES)
                        .withProps(PropUse.PILLOW_UNDER_HEAD)
                        .from(Posture.parse("ankle -35 other-ankle -20 neck 10")));
        all.put(
                "lying knees bent",
                lying(Position.get("lying knees bent").posture().text(), Arms.ALONG_SIDES));
        all.put(
                "bridge",
                lying("hip 5 knee 85 other-hip 5 other-knee 85 neck 10", Arms.ALONG_SIDES)
                        .from(Posture.parse("hip 50 knee 95 other-hip 50 other-knee 95 neck 10")));
        all.put(
                "figure-four stretch",
                lying(
                        "hip 85 knee 95 hip-rotation -45 hip-abduction 30 other-hip 85 other-knee 90 neck 10",
                        Arms.BEHIND_THIGH));
        all.put(
                "knees to chest",
                lying("hip 125 knee 130 other-hip 125 other-knee 130 spine 15 neck 10", Arms.HOLD_KNEES)
                        .from(Posture.parse("hip 55 knee 100 other-hip 55 other-knee 100 neck 10")));
        all.put("prone", scene(Support.PRONE, Position.get("prone").posture().text(), Arms.UNDER_HEAD));
        all.put(
                "prone knee bend",
                scene(Support.PRONE, "knee 95 ankle -10 other-ankle -30", Arms.UNDER_HEAD)
                        .from(Posture.parse("knee 10 ankle -10 other-ankle -30")));
        all.put(
                "press-up on elbows",
                scene(Support.PRONE, "spine -38 neck -20 ankle -40 other-ankle -40", Arms.FOREARMS_ON_FLOOR));
        all.put(
                "press-up on hands",
                scene(
                        Support.PRONE,
                        "spine -40 hip -18 other-hip -18 neck -30 ankle -40 other-ankle -40",
                        Arms.ON_FLOOR));
        all.put(
                "slump with knee extension",
                scene(
                                Support.SITTING,
                                "spine 60 hip 90 knee 15 ankle 0 neck 40 other-hip 90 other-knee 90",
                                Arms.BEHIND_BACK)
                        .from(Posture.parse("spine 60 hip 90 knee 90 ankle 0 neck 40 other-hip 90 other-knee 90")));
        all.put(
                "sitting",
                scene(Support.SITTING, Position.get("sitting").posture().text(), Arms.ON_THIGHS));
        all.put(
                "sitting knee straight",
                scene(Support.SITTING, "hip 90 knee 10 ankle 5 other-hip 90 other-knee 90", Arms.ON_CHAIR));
        all.put(
                "sit to stand",
                scene(Support.STANDING, "", Arms.ALONG_SIDES)
                        .from(new Pose(
                                Support.SITTING,
                                Posture.parse("hip 115 knee 100 ankle 10 other-hip 115 other-knee 100 other-ankle 10"),
                                Arms.ALONG_SIDES)));
        all.put(
                "long sitting",
                scene(
                        Support.LONG_SITTING,
                        Position.get("long sitting").posture().text(),
                        Arms.ON_FLOOR));
        all.put("standing", scene(Support.STANDING, "", Arms.ALONG_SIDES));
        all.put(
                "standing front",
                scene(Support.STANDING, "hip-abduction 25", Arms.ON_HIPS).withView(View.FRONT));
        all.put(
                "standing bend",
                scene(Support.STANDING, Position.get("standing bend").posture().text(), Arms.ALONG_SIDES));
        all.put(
                "squat",
                scene(
                        Support.STANDING,
                        "hip 75 knee 70 ankle 22 other-hip 75 other-knee 70 other-ankle 22",
                        Arms.FORWARD));
        all.put(
                "kneeling",
                scene(Support.KNEELING, Position.get("kneeling").posture().text(), Arms.ALONG_SIDES));
        all.put("half kneeling", scene(Support.KNEELING, "hip 90 knee 90 other-knee 90 other-ankle -30", Arms.ON_HIPS));
        all.put(
                "all fours, leg back",
                scene(
                                Support.ALL_FOURS,
                                "hip 10 knee 10 ankle 0 other-hip 90 other-knee 90 other-ankle -30 neck -20",
                                Arms.ON_FLOOR)
                        .from(Posture.parse(
                                "hip 90 knee 90 ankle -30 other-hip 90 other-knee 90 other-ankle -30 neck -20")));
        all.put(
                "side-lying",
                scene(Support.SIDE_LYING, Position.get("side-lying").posture().text(), Arms.UNDER_HEAD)
                        .withProps(PropUse.PILLOW_UNDER_HEAD));
        all.put(
                "clam",
                scene(
                                Support.SIDE_LYING,
                                "hip 45 knee 85 hip-abduction 28 hip-rotation -30 other-hip 45 other-knee 85 neck 5",
                                Arms.UNDER_HEAD)
                        .withProps(PropUse.PILLOW_UNDER_HEAD)
                        .from(Posture.parse("hip 45 knee 85 other-hip 45 other-knee 85 neck 5")));
        all.put(
                "side-lying from above",
                scene(Support.SIDE_LYING, "hip 60 knee 20 ankle 0 other-hip 20 other-knee 30 neck 5", Arms.UNDER_HEAD)
                        .withProps(PropUse.PILLOW_UNDER_HEAD)
                        .withView(View.TOP)
                        .from(Posture.parse("hip 60 knee 80 ankle 0 other-hip 20 other-knee 30 neck 5")));
        all.put(
                "supine from above",
                lying("hip-abduction 25 neck 10", Arms.ALONG_SIDES)
                        .withView(View.TOP)
                        .from(Posture.parse("neck 10")));
        more(all);
        all.put(
                "calf stretch at wall",
                scene(
                                Support.STANDING,
                                "hip -15 knee 0 ankle 20 other-hip 35 other-knee 45 other-ankle 10",
                                Arms.ON_WALL)
                        .withProps(PropUse.WALL));
        return all;
    }

    private static void more(Map<String, FigureScene> all) {
        all.put(
                "figure-four sitting",
                scene(
                        Support.SITTING,
                        "hip 105 hip-abduction 30 hip-rotation -45 knee 95 other-hip 110 other-knee 90",
                        Arms.ON_THIGHS));
        all.put(
                "wall slide",
                scene(
                                Support.STANDING,
                                "hip 55 knee 60 ankle 5 other-hip 55 other-knee 60 other-ankle 5",
                                Arms.ALONG_SIDES)
                        .withProps(PropUse.WALL)
                        .from(Posture.parse("hip 15 knee 15 ankle -5 other-hip 15 other-knee 15 other-ankle -5")));
        all.put(
                "knee on step",
                scene(Support.STANDING, "hip 45 knee 10 ankle -10", Arms.ON_CHAIR)
                        .withProps(PropUse.STEP, PropUse.CHAIR)
                        .from(Posture.parse("hip 45 knee 60 ankle -10")));
        String fours = "hip 90 knee 90 ankle -30 other-hip 90 other-knee 90 other-ankle -30 ";
        all.put(
                "cat",
                scene(Support.ALL_FOURS, fours + "spine 35 neck 30", Arms.ON_FLOOR)
                        .from(Posture.parse(fours + "spine -15 neck -15")));
        all.put(
                "walking",
                scene(
                        Support.STANDING,
                        "hip 22 knee 8 ankle 0 other-hip -12 other-knee 6 other-ankle 5",
                        Arms.SWINGING));
        all.put(
                "heel raise",
                scene(Support.STANDING, "ankle -30 other-ankle -30", Arms.ALONG_SIDES)
                        .from(Posture.reference()));
        all.put(
                "press-up common",
                scene(Support.PRONE, "spine -35 neck -20 ankle -30 other-ankle -30", Arms.ON_FLOOR)
                        .from(Posture.parse("spine -5 ankle -30 other-ankle -30")));
        all.put(
                "nerve with site",
                lying("hip 60 knee 10 neck 10", Arms.ALONG_SIDES)
                        .withNerve(new NerveMark(Tract.SCIATIC_TIBIAL, Site.find("deep gluteal space"))));
    }

    private static FigureScene lying(String posture, Arms arms) {
        return scene(Support.LYING, posture, arms);
    }

    private static FigureScene scene(Support support, String posture, Arms arms) {
        return FigureScene.of(support, Posture.parse(posture), arms);
    }
}
