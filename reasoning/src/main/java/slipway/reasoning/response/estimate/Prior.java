package slipway.reasoning.response.estimate;

import slipway.reasoning.irritability.Irritability;

/**
 * What is believed before the first report; normal in each of the three. Loads and tolerance
 * may be in any one unit: % strain above rest, or shares of the tolerance that the examination gave.
 *
 * @param logToleranceMean of the tolerance
 * @param logSettleMean of the minutes to settle for each point of rise
 * @param gainMean of log tolerance, per day
 */
public record Prior(
        double logToleranceMean,
        double logToleranceSd,
        double logSettleMean,
        double logSettleSd,
        double gainMean,
        double gainSd) {
    public Prior {
        if (!Double.isFinite(logToleranceMean) || !Double.isFinite(logSettleMean) || !Double.isFinite(gainMean)) {
            throw new IllegalArgumentException("a prior needs finite means");
        }
        if (!(logToleranceSd >= 0 && logSettleSd >= 0 && gainSd >= 0)) {
            throw new IllegalArgumentException("a prior must not have negative spreads");
        }
    }

    /**
     * After an examination.
     *
     * @param logToleranceMean of the tolerance that it gave; 0 if loads are told as shares of that tolerance
     * @param examinedLogSd how well it is known, in log; the prior is wider by what a test leaves open about an exercise
     */
    public static Prior of(double logToleranceMean, double examinedLogSd, Irritability irritability) {
        return new Prior(
                logToleranceMean,
                Math.hypot(examinedLogSd, FilterModel.DATA.value("transfer-sd")),
                Math.log(FilterModel.DATA.value("settle-" + irritability.key())),
                FilterModel.DATA.value("settle-spread"),
                FilterModel.DATA.value("gain-mean"),
                FilterModel.DATA.value("gain-sd"));
    }
}
