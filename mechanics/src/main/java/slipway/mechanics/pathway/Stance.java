package slipway.mechanics.pathway;

import java.util.List;
import slipway.mechanics.body.Posture;

/**
 * Where a block of draws stands: the last three postures with their slides, and where the last two motions began. All are
 * the reference posture at first.
 *
 * <p>A motion begins with a move much longer than the one before. Who tries one motion after another begins each near the
 * beginning of the last, not near its end, so that a new one starts from whichever is nearer.
 */
final class Stance {
    private final List<BedArm> arms;
    private Footing now;
    private Footing before;
    private Footing earlier;
    private Footing began;
    private Footing beganBefore;

    /** Whether the posture that is stood in began a motion, and is not kept as that yet. */
    private boolean beginning;

    /**
     * @param arms the joints that count
     */
    Stance(List<BedArm> arms, int nodes, int lanes) {
        this.arms = arms;
        now = new Footing(arms.size(), nodes, lanes);
        before = new Footing(arms.size(), nodes, lanes);
        earlier = new Footing(arms.size(), nodes, lanes);
        began = new Footing(arms.size(), nodes, lanes);
        beganBefore = new Footing(arms.size(), nodes, lanes);
    }

    /** Slides of every node, m. */
    double[][] slideM() {
        return now.slideM;
    }

    /** Back to the reference posture, whose slides are 0. */
    void reset() {
        for (Footing footing : List.of(now, before, earlier, began, beganBefore)) {
            footing.reset();
        }
        beginning = false;
    }

    /** Goes on to a posture with a guess of its slides, which {@link #slideM} then gives. */
    void guess(Posture next) {
        double[] angles = new double[arms.size()];
        for (int a = 0; a < angles.length; a++) {
            angles[a] = Math.toRadians(
                    next.angleDeg(arms.get(a).joint(), arms.get(a).limb()));
        }
        keepBeginning();
        if (length(began.moveTo(angles)) < length(now.moveTo(angles))) {
            goBack();
        }
        double[] move = now.moveTo(angles);
        double[] last = before.moveTo(now);
        beginning = length(move) > Foresight.FURTHEST * length(last);
        step(Foresight.of(move, last, earlier.moveTo(before)));
        now.standAt(angles);
    }

    private void keepBeginning() {
        if (beginning) {
            Footing free = beganBefore;
            beganBefore = began;
            began = free;
            began.copy(now);
            beginning = false;
        }
    }

    private void goBack() {
        now.copy(began);
        before.copy(beganBefore);
        earlier.copy(beganBefore);
    }

    /** Slides of the next posture, put where those of the earliest were. */
    private void step(Foresight guess) {
        for (int i = 0; i < now.slideM.length; i++) {
            ahead(guess.last(), guess.first(), now.slideM[i], before.slideM[i], earlier.slideM[i]);
        }
        Footing next = earlier;
        earlier = before;
        before = now;
        now = next;
    }

    private static void ahead(double last, double first, double[] now, double[] before, double[] earlier) {
        for (int l = 0; l < now.length; l++) {
            double s = now[l];
            double b = before[l];
            double e = earlier[l];
            earlier[l] = s + last * (s - b) + first * (b - e);
        }
    }

    private static double length(double[] move) {
        double square = 0;
        for (double part : move) {
            square += part * part;
        }
        return Math.sqrt(square);
    }
}
