package slipway.mechanics.motion;

import java.util.ArrayList;
import java.util.List;
import slipway.mechanics.body.Posture;

/**
 * Joint angles over time: key postures, between which every angle changes in proportion to time. Immutable. A posture
 * that is held appears twice.
 *
 * @param keys at least one; times in seconds from the start, the first 0, then rising
 */
public record Motion(List<Key> keys) {

    /**
     * A posture at a moment.
     *
     * @param secondsFromStart 0 or more
     */
    public record Key(Posture posture, double secondsFromStart) {
        public Key {
            if (!(secondsFromStart >= 0 && secondsFromStart < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "the time of a key posture must be 0 s or more, was " + secondsFromStart + " s");
            }
        }
    }

    public Motion {
        keys = List.copyOf(keys);
        if (keys.isEmpty()) {
            throw new IllegalArgumentException("a motion needs at least one key posture, had none");
        }
        if (keys.get(0).secondsFromStart() != 0) {
            throw new IllegalArgumentException("the first key posture of a motion must be at 0 s, was at "
                    + keys.get(0).secondsFromStart() + " s");
        }
        for (int i = 1; i < keys.size(); i++) {
            if (!(keys.get(i).secondsFromStart() > keys.get(i - 1).secondsFromStart())) {
                throw new IllegalArgumentException(
                        "key postures must follow each other in time: key %d at %s s, key %d at %s s"
                                .formatted(
                                        i,
                                        keys.get(i - 1).secondsFromStart(),
                                        i + 1,
                                        keys.get(i).secondsFromStart()));
            }
        }
    }

    /** A body that stays as it is. */
    public static Motion still(Posture posture) {
        return new Motion(List.of(new Key(posture, 0)));
    }

    /** Duration in seconds; 0 if nothing moves. */
    public double seconds() {
        return keys.get(keys.size() - 1).secondsFromStart();
    }

    /**
     * The posture at a moment.
     *
     * @param seconds from the start, within 0 and {@link #seconds()}
     */
    public Posture at(double seconds) {
        if (!(seconds >= 0 && seconds <= seconds())) {
            throw new IllegalArgumentException(
                    "the moment must be within 0 and %s s, was %s s".formatted(seconds(), seconds));
        }
        int next = 0;
        while (keys.get(next).secondsFromStart() < seconds) {
            next++;
        }
        Key to = keys.get(next);
        if (next == 0 || to.secondsFromStart() == seconds) {
            return to.posture();
        }
        Key from = keys.get(next - 1);
        double fraction = (seconds - from.secondsFromStart()) / (to.secondsFromStart() - from.secondsFromStart());
        return from.posture().towards(to.posture(), fraction);
    }

    /**
     * Postures at even steps of time, the first and the last included. A key posture between two steps is not hit
     * exactly: take {@link #keys()} for extremes.
     *
     * @param count how many, at least 2
     */
    public List<Posture> sampled(int count) {
        if (count < 2) {
            throw new IllegalArgumentException("a motion is sampled at 2 moments or more, was " + count);
        }
        var postures = new ArrayList<Posture>(count);
        for (int i = 0; i < count; i++) {
            // The last moment is set rather than computed, so that rounding cannot pass the end.
            postures.add(at(i == count - 1 ? seconds() : seconds() * i / (count - 1)));
        }
        return List.copyOf(postures);
    }
}
