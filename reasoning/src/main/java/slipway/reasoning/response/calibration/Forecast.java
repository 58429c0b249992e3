package slipway.reasoning.response.calibration;

/**
 * What was predicted after a report.
 *
 * @param minute when the report came, minutes since 1970
 * @param chance of at least one flare in the 7 days after, with the doses then in force and rest included; 0 to 1
 */
public record Forecast(long minute, double chance) {
    public Forecast {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("a predicted chance must be within 0 and 1, was " + chance);
        }
    }
}
