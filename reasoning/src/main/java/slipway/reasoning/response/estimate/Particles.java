package slipway.reasoning.response.estimate;

import java.util.Arrays;
import slipway.reasoning.response.course.Flare;

/**
 * The particles of one person: the fast core. Arrays are reused; nothing is allocated after construction. For one thread.
 *
 * <p>Per particle: log tolerance (in the unit of the prior), log settle time (minutes for each point of rise), gain of log
 * tolerance per day, weight. Order of a step: {@link #advance}, any observations, {@link #refresh}.
 */
public final class Particles {
    private static final double LOG_FLARE_SETTLE = Math.log1p(Flare.SETTLE_MINUTES);
    private final FilterModel model;
    private final long seed;
    private final double[] logTolerance;
    private final double[] logSettle;
    private final double[] gain;
    private final double[] weight;
    private final double[] logLikelihood;
    private final int[] picked;
    private long steps;
    private double leastEffective;

    private Particles(FilterModel model, int count, long seed) {
        if (count < 2) {
            throw new IllegalArgumentException("at least 2 particles are needed, were " + count);
        }
        this.model = model;
        this.seed = seed;
        logTolerance = new double[count];
        logSettle = new double[count];
        gain = new double[count];
        weight = new double[count];
        logLikelihood = new double[count];
        picked = new int[count];
    }

    /** Particles of a prior; the same seed gives the same particles. */
    public static Particles of(FilterModel model, Prior prior, int count, long seed) {
        var particles = new Particles(model, count, seed);
        particles.restart(prior);
        return particles;
    }

    /** The same particles again, to go on from on their own. */
    public Particles copy() {
        var copy = new Particles(model, size(), seed);
        copy.setTo(state());
        return copy;
    }

    /** What is needed to go on after a restart of the program. */
    public FilterState state() {
        return new FilterState(
                steps, leastEffective, logTolerance.clone(), logSettle.clone(), gain.clone(), weight.clone());
    }

    /** Goes on from a stored state. */
    public static Particles from(FilterModel model, FilterState state, long seed) {
        var particles = new Particles(model, state.size(), seed);
        particles.setTo(state);
        return particles;
    }

    /** Goes back to a state of as many particles. */
    public void setTo(FilterState state) {
        if (state.size() != size()) {
            throw new IllegalArgumentException(
                    "%d particles cannot take a state of %d".formatted(size(), state.size()));
        }
        state.copyTo(logTolerance, logSettle, gain, weight);
        steps = state.steps();
        leastEffective = state.leastEffective();
    }

    /** Begins anew with a prior. Each quantity is spread evenly over its distribution. */
    public void restart(Prior prior) {
        int n = size();
        steps = 0;
        leastEffective = n;
        Arrays.fill(weight, 1.0 / n);
        spread(logTolerance, prior.logToleranceMean(), prior.logToleranceSd(), -1);
        spread(logSettle, prior.logSettleMean(), prior.logSettleSd(), -2);
        spread(gain, prior.gainMean(), prior.gainSd(), -3);
    }

    private void spread(double[] values, double mean, double sd, long column) {
        Seeds random = Seeds.of(seed, column);
        int n = values.length;
        for (int i = 0; i < n; i++) {
            values[i] = mean + sd * Normal.quantile((i + random.uniform()) / n);
        }
        for (int i = n - 1; i > 0; i--) {
            int j = (int) (random.uniform() * (i + 1));
            double kept = values[i];
            values[i] = values[j];
            values[j] = kept;
        }
    }

    /** Number of particles. */
    public int size() {
        return weight.length;
    }

    /** Steps made so far. */
    public long steps() {
        return steps;
    }

    /** Lets days pass: gain, day to day changes, set-backs. */
    public void advance(double days) {
        if (!(days >= 0)) {
            throw new IllegalArgumentException("days must not be negative, were " + days);
        }
        steps++;
        Seeds random = Seeds.of(seed, steps);
        double root = Math.sqrt(days);
        double daySd = model.daySd() * root;
        double driftSd = model.gainDriftSd() * root;
        double setback = 1 - Math.pow(1 - model.setbackPerDay(), days);
        for (int i = 0; i < weight.length; i++) {
            long bits = random.next();
            logTolerance[i] += gain[i] * days + daySd * Normal.draw(bits);
            gain[i] += driftSd * Normal.draw(bits >>> 12);
            // 40 bits are left for the rare event.
            if ((bits >>> 24) * 0x1.0p-40 < setback) {
                logTolerance[i] += model.setbackLog() * Math.log(1 - random.uniform());
            }
        }
    }

    /**
     * Weighs by what a session brought; what is not a number was not told.
     *
     * @param logStress of the dose, {@link Stress#log}
     * @param before level before, 0 to 10: rises beyond the end of the scale cannot be told
     * @param rise points, 0 or more
     * @param settleMinutes infinite if not settled when told
     * @param morning 1 worse, 0 not
     * @param restFlare chance of a worse morning without exercise
     */
    public void observe(
            double logStress, double before, double rise, double settleMinutes, double morning, double restFlare) {
        double most = 10 - before;
        for (int i = 0; i < weight.length; i++) {
            double mean = meanRise(logStress - logTolerance[i]);
            double log = Double.isNaN(rise) ? 0 : Math.log(chanceOfRise(rise, most, mean));
            double felt = positive(mean);
            if (!Double.isNaN(settleMinutes)) {
                log += logSettle(settleMinutes, Math.exp(logSettle[i]) * felt);
            }
            if (!Double.isNaN(morning)) {
                double worse = 1 - (1 - restFlare) * (1 - morningChance(felt));
                log += Math.log(morning == 1 ? worse : 1 - worse);
            }
            logLikelihood[i] = log;
        }
        weigh();
    }

    /** Weighs by a new measurement of the tolerance in the room: log of the load at onset, with its error. */
    public void observeOnset(double logLoad, double sd) {
        for (int i = 0; i < weight.length; i++) {
            double z = (logLoad - logTolerance[i]) / sd;
            logLikelihood[i] = -0.5 * z * z;
        }
        weigh();
    }

    private void weigh() {
        double best = Double.NEGATIVE_INFINITY;
        for (double log : logLikelihood) {
            best = Math.max(best, log);
        }
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            weight[i] *= Math.exp(logLikelihood[i] - best);
            sum += weight[i];
        }
        for (int i = 0; i < weight.length; i++) {
            weight[i] /= sum;
        }
        leastEffective = Math.min(leastEffective, effective());
    }

    private double meanRise(double logRatio) {
        return model.riseAtTolerance() + model.risePerLog() * logRatio;
    }

    private double positive(double mean) {
        double soft = model.riseSoftness();
        return 0.5 * (mean + Math.sqrt(mean * mean + soft * soft));
    }

    /** A rise is told in whole points, cut off at 0 and at the end of the scale. */
    private double chanceOfRise(double rise, double most, double mean) {
        double above = rise >= most ? 1 : Normal.below((rise + 0.5 - mean) / model.riseSd());
        double below = rise <= 0 ? 0 : Normal.below((rise - 0.5 - mean) / model.riseSd());
        return (1 - model.oddReport()) * Math.max(0, above - below) + model.oddReport() / 11;
    }

    private double logSettle(double minutes, double expectedMinutes) {
        double expected = Math.log1p(expectedMinutes);
        if (minutes == Double.POSITIVE_INFINITY) {
            double longer = 1 - Normal.below((LOG_FLARE_SETTLE - expected) / model.settleSd());
            return Math.log(longer + model.oddReport());
        }
        double z = (Math.log1p(minutes) - expected) / model.settleSd();
        return Math.log(Math.exp(-0.5 * z * z) + model.oddReport());
    }

    private double morningChance(double felt) {
        return Normal.below(model.morningAtNoRise() + model.morningPerPoint() * felt);
    }

    /**
     * The chance that one session of a dose flares, in every particle: by rise, by settle time, or the next morning above
     * what a day of rest brings.
     *
     * @param into gets a chance for each particle
     */
    public void flareChances(double logStress, double[] into) {
        double least = Flare.RISE - 0.5;
        for (int i = 0; i < weight.length; i++) {
            double mean = meanRise(logStress - logTolerance[i]);
            double felt = positive(mean);
            double noRise = Normal.below((least - mean) / model.riseSd());
            double expected = Math.log1p(Math.exp(logSettle[i]) * felt);
            double settles = Normal.below((LOG_FLARE_SETTLE - expected) / model.settleSd());
            into[i] = 1 - noRise * settles * (1 - morningChance(felt));
        }
    }

    /** Draws particles anew where few of them carry the weight: systematic, then spread by a kernel. */
    public void refresh() {
        if (effective() < model.resampleBelow() * weight.length) {
            Seeds random = Seeds.of(seed, Long.MIN_VALUE + steps);
            Resampling.systematic(weight, random.uniform(), picked);
            Resampling.take(logTolerance, picked, logLikelihood);
            Resampling.take(logSettle, picked, logLikelihood);
            Resampling.take(gain, picked, logLikelihood);
            Arrays.fill(weight, 1.0 / weight.length);
            Resampling.spread(logTolerance, model.kernelShrink(), random);
            Resampling.spread(logSettle, model.kernelShrink(), random);
            Resampling.spread(gain, model.kernelShrink(), random);
        }
    }

    /** How many equally weighted particles would say as much. */
    public double effective() {
        double squares = 0;
        for (double w : weight) {
            squares += w * w;
        }
        return 1 / squares;
    }

    /** The smallest effective number after any observation. */
    public double leastEffective() {
        return leastEffective;
    }

    /** The weights, adding up to 1; shared, not to be changed. */
    double[] weights() {
        return weight;
    }

    /** Mean log tolerance. */
    public double meanLogTolerance() {
        return mean(logTolerance);
    }

    /** Standard deviation of log tolerance. */
    public double sdLogTolerance() {
        return sd(logTolerance);
    }

    /** Mean gain of log tolerance per day. */
    public double meanGain() {
        return mean(gain);
    }

    /** Standard deviation of the gain. */
    public double sdGain() {
        return sd(gain);
    }

    /** Mean log of the minutes to settle for each point of rise. */
    public double meanLogSettle() {
        return mean(logSettle);
    }

    /** Standard deviation of the same. */
    public double sdLogSettle() {
        return sd(logSettle);
    }

    private double mean(double[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += weight[i] * values[i];
        }
        return sum;
    }

    private double sd(double[] values) {
        double mean = mean(values);
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            double d = values[i] - mean;
            sum += weight[i] * d * d;
        }
        return Math.sqrt(sum);
    }
}
