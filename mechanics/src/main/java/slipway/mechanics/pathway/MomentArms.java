package slipway.mechanics.pathway;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.parameters.ModelParameter;
import slipway.mechanics.parameters.ParameterVector;

/** How much a joint lengthens the bed of a branch. */
final class MomentArms {
    private MomentArms() {}

    /** Moment arm of the bed about a joint, scaled with the body, m: elongation of the bed per radian, positive when it lengthens. */
    static double armM(BedArm arm, ParameterVector parameters, double bodyScale) {
        return bodyScale * armM(arm.joint(), arm.branch(), parameters);
    }

    /** Width of the zone of a joint relative to {@code geometry.csv}. */
    static double zoneFactor(Joint joint, ParameterVector p) {
        return switch (joint) {
            case HIP -> p.get(ModelParameter.HIP_ZONE);
            case KNEE -> p.get(ModelParameter.KNEE_ZONE);
            case ANKLE -> p.get(ModelParameter.ANKLE_ZONE);
            default -> 1;
        };
    }

    private static double armM(Joint joint, Branch branch, ParameterVector p) {
        return switch (joint) {
            case HIP -> p.get(ModelParameter.HIP_ARM) * (isFront(branch) ? FrontArms.HIP_RATIO : 1);
            case KNEE -> p.get(ModelParameter.KNEE_ARM) * kneeRatio(branch, p);
            case ANKLE -> p.get(ModelParameter.ANKLE_ARM) * ankleRatio(branch, p);
            case SPINE -> p.get(ModelParameter.SPINE_ARM);
            case NECK -> p.get(ModelParameter.NECK_ARM);
            default -> 0;
        };
    }

    private static boolean isFront(Branch branch) {
        return branch.runsIn(Pathway.FRONT);
    }

    private static double kneeRatio(Branch branch, ParameterVector p) {
        return switch (branch) {
            case FEMORAL, SAPHENOUS -> 0;
            case QUADRICEPS -> FrontArms.KNEE_RATIO;
            // The nerve lies behind the knee: bending it shortens the bed.
            case COMMON_FIBULAR, DEEP_FIBULAR, SUPERFICIAL_FIBULAR -> -p.get(ModelParameter.FIBULAR_KNEE_RATIO);
            default -> -1;
        };
    }

    private static double ankleRatio(Branch branch, ParameterVector p) {
        return switch (branch) {
            case SURAL -> p.get(ModelParameter.SURAL_ANKLE_RATIO);
            // The fibular branches cross in front of the ankle: dorsiflexion shortens their bed.
            case COMMON_FIBULAR, DEEP_FIBULAR, SUPERFICIAL_FIBULAR -> -p.get(ModelParameter.FIBULAR_ANKLE_RATIO);
            default -> 1;
        };
    }

    /** The joints of a posture whose effect on a pathway the model leaves out, by name; empty when there are none. */
    static List<String> notModelled(Posture posture, Pathway pathway) {
        List<Joint> known = Geometry.joints(pathway);
        var left = new ArrayList<String>();
        for (Joint joint : Joint.values()) {
            for (Limb limb : Limb.values()) {
                boolean once = limb == Limb.OWN || joint.paired();
                if (once && !known.contains(joint) && posture.angleDeg(joint, limb) != 0) {
                    left.add((limb == Limb.OTHER ? "other-" : "") + joint.key());
                }
            }
        }
        return left;
    }
}
