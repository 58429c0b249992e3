package slipway.reasoning.response.calibration;

import slipway.reasoning.tolerance.Interval;

/**
 * Weeks with about the same predicted chance.
 *
 * @param from lower end of the predicted chance
 * @param to upper end
 * @param weeks number of weeks, above 0
 * @param predicted mean predicted chance
 * @param flared weeks with a flare
 * @param observed share of weeks with a flare; its 95 % interval does not know that weeks of one person are alike
 */
public record Bin(double from, double to, int weeks, double predicted, int flared, Interval observed) {
    public Bin {
        if (weeks < 1 || flared < 0 || flared > weeks || !(from < to) || !(predicted >= from && predicted <= to)) {
            throw new IllegalArgumentException("a bin from %s to %s cannot have %d of %d weeks at %s"
                    .formatted(from, to, flared, weeks, predicted));
        }
    }

    /** Whether the predicted chance is within the interval of the observed one. */
    public boolean agrees() {
        return predicted >= observed.low() && predicted <= observed.high();
    }
}
