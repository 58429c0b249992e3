package slipway.reasoning.locate;

/**
 * Chance that a result is on the good side of a cut, as a function of the share f of fibres lost: (1 - falseAlarm) exp(-gain
 * f^power). Losses at two places multiply, so that the same curve serves single sites and pairs.
 *
 * @param gain 0 or more
 * @param power above 0
 * @param falseAlarm chance of the bad side without any loss, 0 to below 1
 */
record Curve(double gain, double power, double falseAlarm) {
    Curve {
        if (!(gain >= 0) || !(power > 0) || !(falseAlarm >= 0 && falseAlarm < 1)) {
            throw new IllegalArgumentException(
                    "curve needs gain >= 0, power > 0, false alarm within 0 and 1, was %s, %s, %s"
                            .formatted(gain, power, falseAlarm));
        }
    }

    /** The chance at a share of lost fibres. */
    double at(double lost) {
        return (1 - falseAlarm) * Math.exp(-gain * Math.pow(lost, power));
    }

    Curve scaled(double gainFactor, double falseAlarmFactor) {
        return new Curve(gain * gainFactor, power, Math.min(0.9, falseAlarm * falseAlarmFactor));
    }
}
