package slipway.mechanics.calibration.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.evidence.BundledTable;

/**
 * An angle that the source of a row does not state (column {@code assumed} of {@code nerve-motion.csv}).
 *
 * @param row the row
 * @param joint whose angle was assumed
 * @param end which posture of the row it is moved in
 */
record AssumedAngle(EvidenceRow row, Joint joint, End end) {
    /** Which posture of a row. */
    enum End {
        /** The same angle is held in both. */
        HELD,
        /** The joint moves, and its angle at the start is in doubt. */
        START,
        /** The joint moves, and its angle at the end is in doubt. */
        FINISH
    }

    private static final List<Joint> MODELLED = List.of(Joint.SPINE, Joint.HIP, Joint.KNEE, Joint.ANKLE, Joint.NECK);

    /** The assumed angles of the rows; the ends of a moving joint count one by one. */
    static List<AssumedAngle> list(List<EvidenceRow> rows) {
        var found = new ArrayList<AssumedAngle>();
        for (EvidenceRow row : rows) {
            for (Joint joint : joints(row)) {
                if (used(row.motion().from(), joint) == used(row.motion().to(), joint)) {
                    found.add(new AssumedAngle(row, joint, End.HELD));
                } else {
                    found.add(new AssumedAngle(row, joint, End.START));
                    found.add(new AssumedAngle(row, joint, End.FINISH));
                }
            }
        }
        return found;
    }

    /** The joints of a row whose angle was assumed; "angles" alone stands for every joint that is not 0. */
    static List<Joint> joints(EvidenceRow row) {
        String assumed = BundledTable.read("nerve-motion.csv").stream()
                .filter(record -> record.get("id").equals(row.id()))
                .map(record -> record.get("assumed"))
                .findFirst()
                .orElse("");
        boolean all = assumed.equals("angles");
        return MODELLED.stream()
                .filter(joint -> all
                        ? used(row.motion().from(), joint) != 0
                                || used(row.motion().to(), joint) != 0
                        : assumed.contains(joint.key()))
                .toList();
    }

    private static double used(Posture posture, Joint joint) {
        return posture.angleDeg(joint);
    }

    /** The row with the angle moved; empty if that leaves the range of the joint. */
    Optional<EvidenceRow> moved(String id, double byDeg) {
        try {
            Posture from =
                    end == End.FINISH ? row.motion().from() : move(row.motion().from(), byDeg);
            Posture to =
                    end == End.START ? row.motion().to() : move(row.motion().to(), byDeg);
            return Optional.of(new EvidenceRow(
                    id,
                    row.use(),
                    row.study(),
                    row.site(),
                    new EvidenceRow.Motion(from, to),
                    row.quantity(),
                    row.relation(),
                    row.published()));
        } catch (IllegalArgumentException outOfRange) {
            return Optional.empty();
        }
    }

    /** Moves both limbs where the row moves both alike, else the own one. */
    private Posture move(Posture posture, double byDeg) {
        Posture moved = posture.with(joint, Limb.OWN, posture.angleDeg(joint) + byDeg);
        return joint.paired() && bothAlike()
                ? moved.with(joint, Limb.OTHER, posture.angleDeg(joint, Limb.OTHER) + byDeg)
                : moved;
    }

    private boolean bothAlike() {
        Posture to = row.motion().to();
        return to.angleDeg(joint, Limb.OTHER) != 0 && to.angleDeg(joint, Limb.OTHER) == to.angleDeg(joint, Limb.OWN);
    }
}
