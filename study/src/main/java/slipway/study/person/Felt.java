package slipway.study.person;

import slipway.study.data.Settings;

/**
 * What a session truly felt like.
 *
 * @param before symptom before, 0 to 10
 * @param rise how much it rose at worst
 * @param settleMinutes until it was back
 * @param overload discomfort that added up, without unit; 0 below the threshold
 */
public record Felt(double before, double rise, double settleMinutes, double overload) {
    private static final Settings CARE = Settings.load("care.csv");
    private static final double FLARE_RISE = CARE.value("flare-rise");
    private static final double FLARE_SETTLE_MINUTES = CARE.value("flare-settle");
    private static final double GOOD_RISE = CARE.value("good-rise");
    private static final double GOOD_SETTLE_MINUTES = CARE.value("good-settle");

    /** Far above the level before, or long to settle; the next morning counts on its own. */
    public boolean flare() {
        return rise >= FLARE_RISE || settleMinutes > FLARE_SETTLE_MINUTES;
    }

    /** Hardly a rise, and settled soon. */
    public boolean good() {
        return rise <= GOOD_RISE && settleMinutes <= GOOD_SETTLE_MINUTES;
    }
}
