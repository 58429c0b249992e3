package slipway.pictures.skeleton;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.space.Frame;
import slipway.pictures.space.V3;

/**
 * The line from between the hip joints to the base of the neck, bent mostly in the low back.
 *
 * @param line points at even steps, from the hips up
 * @param frames the directions at these points; the first is the pelvis, {@code out} towards the own side
 */
public record Trunk(List<V3> line, List<Frame> frames) {
    private static final int STEPS = 12;

    static Trunk of(V3 hips, Frame pelvis, double flexionRad, double sideRad) {
        var line = new ArrayList<V3>(STEPS + 1);
        var frames = new ArrayList<Frame>(STEPS + 1);
        V3 at = hips;
        for (int i = 0; i <= STEPS; i++) {
            double share = bentShare((i + 0.5) / STEPS);
            Frame frame = i == 0 ? pelvis : pelvis.pitched(flexionRad * share).leaned(sideRad * share);
            line.add(at);
            frames.add(frame);
            at = at.plus(frame.up(), BodyRatios.TRUNK / STEPS);
        }
        return new Trunk(List.copyOf(line), List.copyOf(frames));
    }

    /** Share of the whole bend that has happened at a fraction of the way up: most of it in the low back. */
    private static double bentShare(double t) {
        double u = Math.min(1, Math.max(0, (t - 0.08) / 0.84));
        return 1 - Math.pow(1 - u, 1.35);
    }

    Trunk moved(V3 by) {
        return new Trunk(line.stream().map(point -> point.plus(by)).toList(), frames);
    }

    public Frame pelvis() {
        return frames.get(0);
    }

    public Frame thorax() {
        return frames.get(STEPS);
    }

    public V3 hips() {
        return line.get(0);
    }

    public V3 neckBase() {
        return line.get(STEPS);
    }

    /** The point at a fraction of the way up; below 0 it lies under the hips. */
    public V3 at(double fraction) {
        if (fraction <= 0) {
            return hips().plus(pelvis().up(), fraction * BodyRatios.TRUNK);
        }
        int i = Math.min(STEPS - 1, (int) (fraction * STEPS));
        return line.get(i).towards(line.get(i + 1), fraction * STEPS - i);
    }

    Frame frameAt(double fraction) {
        return frames.get((int) Math.round(Math.min(1, Math.max(0, fraction)) * STEPS));
    }
}
