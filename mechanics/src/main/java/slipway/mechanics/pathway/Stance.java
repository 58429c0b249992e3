package slipway.mechanics.pathway;

import java.util.Arrays;
import java.util.Collection;
import slipway.mechanics.body.Posture;

/** Where a block of draws stands: the last posture and the one before with their slides. In the reference posture at first. */
final class Stance {
    /** How far a move may be taken to go on, in lengths of the move before. */
    private static final double FURTHEST = 2;

    private final double[][] slideM;
    private final double[][] beforeM;
    private Posture at = Posture.reference();
    private Posture before = Posture.reference();

    Stance(int nodes, int lanes) {
        slideM = new double[nodes][lanes];
        beforeM = new double[nodes][lanes];
    }

    /** Slides of every node, m. */
    double[][] slideM() {
        return slideM;
    }

    /** Back to the reference posture, whose slides are 0. */
    void reset() {
        for (int i = 0; i < slideM.length; i++) {
            Arrays.fill(slideM[i], 0);
            Arrays.fill(beforeM[i], 0);
        }
        at = Posture.reference();
        before = Posture.reference();
    }

    /**
     * Goes on to a posture with a guess of its slides: the last change of them goes on by the share of the last move that
     * the new move repeats. In even steps along a motion this leaves little to solve.
     *
     * @param arms the joints that count
     */
    void guess(Posture next, Collection<BedArm> arms) {
        double factor = repeated(next, arms);
        for (int i = 0; i < slideM.length; i++) {
            ahead(slideM[i], beforeM[i], factor);
        }
        before = at;
        at = next;
    }

    /** The new move projected on the last one, in lengths of that. */
    private double repeated(Posture next, Collection<BedArm> arms) {
        double along = 0;
        double square = 0;
        for (BedArm arm : arms) {
            double last = at.angleDeg(arm.joint(), arm.limb()) - before.angleDeg(arm.joint(), arm.limb());
            double move = next.angleDeg(arm.joint(), arm.limb()) - at.angleDeg(arm.joint(), arm.limb());
            along += last * move;
            square += last * last;
        }
        return square > 0 ? Math.max(-1, Math.min(FURTHEST, along / square)) : 0;
    }

    private static void ahead(double[] slide, double[] before, double factor) {
        for (int l = 0; l < slide.length; l++) {
            double now = slide[l];
            slide[l] = now + factor * (now - before[l]);
            before[l] = now;
        }
    }
}
