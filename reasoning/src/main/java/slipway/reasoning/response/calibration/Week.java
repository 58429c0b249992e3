package slipway.reasoning.response.calibration;

/**
 * One week of one person.
 *
 * @param predicted chance of at least one flare in it, rest included, as it was told at its beginning; 0 to 1
 * @param flared whether at least one was reported
 */
public record Week(double predicted, boolean flared) {
    public Week {
        if (!(predicted >= 0 && predicted <= 1)) {
            throw new IllegalArgumentException("a predicted chance must be within 0 and 1, was " + predicted);
        }
    }
}
