package slipway.study.policy;

import slipway.reasoning.response.estimate.EstimateSettings;
import slipway.reasoning.response.estimate.FilterModel;
import slipway.reasoning.response.estimate.Particles;
import slipway.reasoning.response.estimate.Prior;
import slipway.reasoning.response.estimate.Stress;
import slipway.reasoning.response.estimate.WeekAhead;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.study.data.Settings;
import slipway.study.load.LoadProfile;

/** The program's estimate of one person, followed day by day. */
final class Estimate {
    private static final Settings CARE = Settings.load("care.csv");
    private static final int PARTICLES = CARE.count("particles");
    private static final double EXAMINED_SD = CARE.value("examined-sd");
    private static final double ONSET_ERROR_DEG = CARE.value("onset-error");
    private static final double LEAST_ONSET_PCT = CARE.value("least-onset-load");

    private final LoadProfile loads;
    private final Particles particles;
    private final WeekAhead week = new WeekAhead(PARTICLES);
    private double restDays = EstimateSettings.REST_WEIGHT_DAYS;
    private double restFlares = EstimateSettings.REST_FLARE * EstimateSettings.REST_WEIGHT_DAYS;
    private double lastDay;

    Estimate(Intake intake) {
        loads = intake.loads();
        double sd = Math.hypot(EXAMINED_SD, onsetSd(intake.onsetRaiseDeg()));
        Prior prior = Prior.of(Math.log(onsetPct(intake.onsetRaiseDeg())), sd, intake.irritability());
        particles = Particles.of(FilterModel.bundled(), prior, PARTICLES, intake.seed());
    }

    private double onsetPct(double raiseDeg) {
        return Math.max(LEAST_ONSET_PCT, loads.atRaise(raiseDeg));
    }

    /** Error of the onset in log load, from the slope of the load there. */
    private double onsetSd(double raiseDeg) {
        double higher = onsetPct(raiseDeg + ONSET_ERROR_DEG);
        double lower = onsetPct(Math.max(0, raiseDeg - ONSET_ERROR_DEG));
        return Math.log(higher / lower) / 2;
    }

    /** A visit measured the onset again. */
    void onset(double day, double raiseDeg) {
        advance(day);
        particles.observeOnset(Math.log(onsetPct(raiseDeg)), Math.hypot(EXAMINED_SD, onsetSd(raiseDeg)));
        particles.refresh();
    }

    /** A session was told; what is not a number was not. */
    void session(double day, double logStress, double before, double rise, double settleMinutes, double morning) {
        advance(day);
        particles.observe(logStress, before, rise, settleMinutes, morning, EstimateSettings.REST_FLARE);
        particles.refresh();
    }

    /** A day of rest was told. */
    void rest(boolean worseMorning) {
        restDays++;
        restFlares += worseMorning ? 1 : 0;
    }

    private void advance(double day) {
        particles.advance(Math.max(0, day - lastDay));
        lastDay = Math.max(lastDay, day);
    }

    /** Excess over rest of the chance of a flare in the next week. */
    double excess(double peakLoadPct, HomeDose dose) {
        week.clear();
        week.add(particles, Stress.log(peakLoadPct, dose), dose.sessionsPerDay());
        return week.excess(particles, restFlares / restDays);
    }
}
