package slipway.reasoning.response.estimate;

import slipway.reasoning.basis.Coefficients;

/**
 * The numbers of the model ({@code response/estimate.csv}); other numbers only in tests and studies.
 *
 * @param gainDriftSd per root day
 * @param daySd of log tolerance, per root day
 * @param setbackPerDay chance a day
 * @param setbackLog mean loss of log tolerance
 * @param riseAtTolerance points of rise at a load equal to the tolerance
 * @param risePerLog points per log unit of load over tolerance
 * @param riseSoftness points; rounds the corner of the positive part
 * @param settleSd of log (1 + minutes)
 * @param morningAtNoRise normal quantile
 * @param resampleBelow share of the particles
 */
public record FilterModel(
        double gainDriftSd,
        double daySd,
        double setbackPerDay,
        double setbackLog,
        double riseAtTolerance,
        double risePerLog,
        double riseSd,
        double riseSoftness,
        double oddReport,
        double settleSd,
        double morningAtNoRise,
        double morningPerPoint,
        double resampleBelow,
        double kernelShrink) {
    static final Coefficients DATA = Coefficients.load("response/estimate.csv");
    private static final FilterModel BUNDLED = load();

    public FilterModel {
        if (!(riseSd > 0 && settleSd > 0 && risePerLog > 0 && riseSoftness > 0)) {
            throw new IllegalArgumentException("spreads and slopes of the model must be above 0");
        }
        if (!(daySd >= 0 && gainDriftSd >= 0 && setbackPerDay >= 0 && setbackPerDay <= 1 && setbackLog >= 0)) {
            throw new IllegalArgumentException("changes from day to day must not be negative");
        }
        if (!(oddReport >= 0 && oddReport < 1 && resampleBelow >= 0 && resampleBelow <= 1)) {
            throw new IllegalArgumentException("shares must be within 0 and 1");
        }
        if (!(kernelShrink > 0 && kernelShrink <= 1)) {
            throw new IllegalArgumentException("the kernel must shrink to above 0 and at most 1, was " + kernelShrink);
        }
        if (!Double.isFinite(riseAtTolerance) || !Double.isFinite(morningAtNoRise) || !(morningPerPoint >= 0)) {
            throw new IllegalArgumentException("the observation of a session must have finite numbers");
        }
    }

    /** The model that ships with the program. */
    public static FilterModel bundled() {
        return BUNDLED;
    }

    private static FilterModel load() {
        return new FilterModel(
                DATA.value("gain-drift-sd"),
                DATA.value("day-sd"),
                DATA.value("setback-per-day"),
                DATA.value("setback-log"),
                DATA.value("rise-at-tolerance"),
                DATA.value("rise-per-log"),
                DATA.value("rise-sd"),
                DATA.value("rise-softness"),
                DATA.value("odd-report"),
                DATA.value("settle-sd"),
                DATA.value("morning-at-no-rise"),
                DATA.value("morning-per-point"),
                DATA.value("resample-below"),
                DATA.value("kernel-shrink"));
    }
}
