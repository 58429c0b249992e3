package slipway.reasoning.response.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/**
 * Tolerance and settle time on a fine grid, integrated exactly (Bayes' rule, Chapman and Kolmogorov's equation for the day
 * to day changes), against the particles: all that a session can tell, and the chance of a flare in the week ahead. The
 * model is written out here once more, with the normal distribution of Hipparchus 4.0.2 in place of the table.
 */
class GridReferenceTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final FilterModel MODEL = Models.without(FilterModel.bundled(), 0, 0.05);
    private static final Prior PRIOR = new Prior(0, 0.3, Math.log(1.5), 0.6, 0, 0);
    private static final double REST_FLARE = 0.02;
    private static final int TOLERANCES = 301;
    private static final int SETTLES = 61;
    private static final double TOLERANCE_SPAN = 1.8;
    private static final double SETTLE_SPAN = 3;

    /** Days before, log stress, level before, rise, settle minutes, morning. */
    private static final double[][] SESSIONS = {
        {0, -0.1, 2, 1, 3, 0},
        {1, -0.1, 2, 0, 1, 0},
        {2, 0.1, 1, 3, 8, Double.NaN},
        {1, 0.0, 3, 7, Double.POSITIVE_INFINITY, 1},
        {3, -0.4, 2, 0, 0, 0},
        {1, -0.2, Double.NaN, Double.NaN, Double.NaN, 0},
        {1, -0.2, 2, 2, 5, 0},
    };

    private final double[][] density = prior();

    @Test
    void agreesWithTheGrid() {
        var particles = Particles.of(MODEL, PRIOR, 1 << 15, 11);
        for (double[] session : SESSIONS) {
            particles.advance(session[0]);
            particles.observe(session[1], session[2], session[3], session[4], session[5], REST_FLARE);
            pass(session[0]);
            weigh(session);
            compare(particles);
            particles.refresh();
        }
    }

    private void compare(Particles particles) {
        double sd = Math.sqrt(mean(0, 2) - mean(0, 1) * mean(0, 1));
        double settleSd = Math.sqrt(mean(1, 2) - mean(1, 1) * mean(1, 1));
        assertThat(particles.meanLogTolerance()).isCloseTo(mean(0, 1), within(0.05 * sd));
        assertThat(particles.sdLogTolerance()).isCloseTo(sd, within(0.05 * sd));
        assertThat(particles.meanLogSettle()).isCloseTo(mean(1, 1), within(0.05 * settleSd));
        assertThat(particles.sdLogSettle()).isCloseTo(settleSd, within(0.05 * settleSd));
        for (double stress : new double[] {-0.6, -0.3, 0, 0.3}) {
            var week = new WeekAhead(particles.size());
            week.clear();
            week.add(particles, stress, 2);
            assertThat(week.excess(particles, REST_FLARE))
                    .as("week ahead at a log stress of %s", stress)
                    .isCloseTo(excess(stress, 2), within(0.01));
        }
    }

    private static double tolerance(int i) {
        return TOLERANCE_SPAN * (2.0 * i / (TOLERANCES - 1) - 1);
    }

    private static double settle(int j) {
        return PRIOR.logSettleMean() + SETTLE_SPAN * (2.0 * j / (SETTLES - 1) - 1);
    }

    private static double bell(double z) {
        return Math.exp(-0.5 * z * z);
    }

    private static double[][] prior() {
        double[][] density = new double[TOLERANCES][SETTLES];
        for (int i = 0; i < TOLERANCES; i++) {
            for (int j = 0; j < SETTLES; j++) {
                density[i][j] = bell(tolerance(i) / PRIOR.logToleranceSd())
                        * bell((settle(j) - PRIOR.logSettleMean()) / PRIOR.logSettleSd());
            }
        }
        return normalise(density);
    }

    private static double[][] normalise(double[][] density) {
        double sum = 0;
        for (double[] row : density) {
            for (double value : row) {
                sum += value;
            }
        }
        for (double[] row : density) {
            for (int j = 0; j < row.length; j++) {
                row[j] /= sum;
            }
        }
        return density;
    }

    private void pass(double days) {
        if (days == 0) {
            return;
        }
        double[][] before = new double[TOLERANCES][];
        for (int i = 0; i < TOLERANCES; i++) {
            before[i] = density[i].clone();
        }
        double sd = MODEL.daySd() * Math.sqrt(days);
        for (int i = 0; i < TOLERANCES; i++) {
            java.util.Arrays.fill(density[i], 0);
            for (int from = 0; from < TOLERANCES; from++) {
                double moved = bell((tolerance(i) - tolerance(from)) / sd);
                for (int j = 0; moved > 1e-12 && j < SETTLES; j++) {
                    density[i][j] += moved * before[from][j];
                }
            }
        }
        normalise(density);
    }

    private void weigh(double[] session) {
        for (int i = 0; i < TOLERANCES; i++) {
            double mean = rise(session[1] - tolerance(i));
            double felt = felt(mean);
            double first = likelihoodOfRise(session[3], 10 - session[2], mean) * likelihoodOfMorning(session[5], felt);
            for (int j = 0; j < SETTLES; j++) {
                density[i][j] *= first * likelihoodOfSettle(session[4], Math.exp(settle(j)) * felt);
            }
        }
        normalise(density);
    }

    private static double rise(double logRatio) {
        return MODEL.riseAtTolerance() + MODEL.risePerLog() * logRatio;
    }

    private static double felt(double mean) {
        return (mean + Math.hypot(mean, MODEL.riseSoftness())) / 2;
    }

    private static double likelihoodOfRise(double rise, double most, double mean) {
        if (Double.isNaN(rise)) {
            return 1;
        }
        double high = rise >= most ? Double.POSITIVE_INFINITY : rise + 0.5;
        double low = rise <= 0 ? Double.NEGATIVE_INFINITY : rise - 0.5;
        double normal = NORMAL.cumulativeProbability((high - mean) / MODEL.riseSd())
                - NORMAL.cumulativeProbability((low - mean) / MODEL.riseSd());
        return (1 - MODEL.oddReport()) * normal + MODEL.oddReport() / 11;
    }

    private static double likelihoodOfSettle(double minutes, double expected) {
        if (Double.isNaN(minutes)) {
            return 1;
        }
        if (minutes == Double.POSITIVE_INFINITY) {
            return longer(expected) + MODEL.oddReport();
        }
        return bell((Math.log1p(minutes) - Math.log1p(expected)) / MODEL.settleSd()) + MODEL.oddReport();
    }

    private static double longer(double expected) {
        return 1 - NORMAL.cumulativeProbability((Math.log(11) - Math.log1p(expected)) / MODEL.settleSd());
    }

    private static double morning(double felt) {
        return NORMAL.cumulativeProbability(MODEL.morningAtNoRise() + MODEL.morningPerPoint() * felt);
    }

    private static double likelihoodOfMorning(double told, double felt) {
        double same = (1 - REST_FLARE) * (1 - morning(felt));
        return Double.isNaN(told) ? 1 : told == 1 ? 1 - same : same;
    }

    private double mean(int quantity, int power) {
        double sum = 0;
        for (int i = 0; i < TOLERANCES; i++) {
            for (int j = 0; j < SETTLES; j++) {
                sum += density[i][j] * Math.pow(quantity == 0 ? tolerance(i) : settle(j), power);
            }
        }
        return sum;
    }

    private double excess(double stress, int sessionsPerDay) {
        double sum = 0;
        for (int i = 0; i < TOLERANCES; i++) {
            double mean = rise(stress - tolerance(i));
            double felt = felt(mean);
            double mild = NORMAL.cumulativeProbability((3.5 - mean) / MODEL.riseSd()) * (1 - morning(felt));
            for (int j = 0; j < SETTLES; j++) {
                double none = mild * (1 - longer(Math.exp(settle(j)) * felt));
                sum += density[i][j] * (1 - Math.pow(none, 7 * sessionsPerDay));
            }
        }
        return Math.pow(1 - REST_FLARE, 7) * sum;
    }
}
