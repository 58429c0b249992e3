package slipway.pictures.skeleton;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;
import slipway.pictures.space.V3;

/** A whole body at rest in the room: what pictures draw and tests measure. */
public record Body(Resting resting, Arm ownArm, Arm otherArm) {

    /** The body of a posture on its support, hands where they are needed. */
    public static Body of(Support support, Posture posture, Arms arms, Ground ground) {
        Resting resting = Rest.of(support, posture, ground);
        return new Body(resting, Reach.of(resting, arms, Limb.OWN), Reach.of(resting, arms, Limb.OTHER));
    }

    /** The same body elsewhere in the room. */
    public Body moved(V3 by) {
        Resting there = new Resting(resting.support(), bones().moved(by), resting.standingOn());
        return new Body(there, ownArm.moved(by), otherArm.moved(by));
    }

    /** A joint by its name, as in {@link #joints}. */
    public V3 joint(String name) {
        V3 joint = joints().get(name);
        if (joint == null) {
            throw new IllegalArgumentException("unknown joint of a body: " + name);
        }
        return joint;
    }

    public Skeleton bones() {
        return resting.skeleton();
    }

    public Arm arm(Limb limb) {
        return limb == Limb.OWN ? ownArm : otherArm;
    }

    /** The joints by name, for comparing bodies: those of the other side with the prefix {@code other-}. */
    public Map<String, V3> joints() {
        var joints = new LinkedHashMap<String, V3>();
        joints.put("hips", bones().trunk().hips());
        joints.put("neck", bones().trunk().neckBase());
        joints.put("head", bones().headCentre());
        for (Limb limb : Limb.values()) {
            String prefix = limb == Limb.OWN ? "" : "other-";
            Leg leg = bones().leg(limb);
            joints.put(prefix + "hip", leg.hip());
            joints.put(prefix + "knee", leg.knee());
            joints.put(prefix + "ankle", leg.ankle());
            joints.put(prefix + "toe", leg.toe());
            joints.put(prefix + "shoulder", arm(limb).shoulder());
            joints.put(prefix + "elbow", arm(limb).elbow());
            joints.put(prefix + "wrist", arm(limb).wrist());
        }
        return joints;
    }

    /** Height of the lowest point of trunk, head and legs over the floor. */
    public double lowest() {
        return Upright.lowest(bones());
    }

    /** Trunk, neck and head, both legs and both arms, without clothes. */
    public List<Solid> solids() {
        var solids = new ArrayList<Solid>();
        solids.add(Flesh.trunk(bones().trunk()));
        solids.add(Flesh.neck(bones()));
        solids.add(Flesh.head(bones()));
        for (Limb limb : Limb.values()) {
            solids.addAll(Flesh.leg(bones().leg(limb)));
            solids.add(Flesh.upperArm(arm(limb)));
            solids.add(Flesh.forearm(arm(limb)));
            solids.addAll(Flesh.hand(arm(limb)));
        }
        return solids;
    }
}
