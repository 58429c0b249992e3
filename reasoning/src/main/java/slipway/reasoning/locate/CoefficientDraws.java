package slipway.reasoning.locate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Draws the coefficients of a case anew: gains and false-alarm rates per kind, fibre shares per item, test accuracies. */
final class CoefficientDraws {
    private static final double HALF_RANGE_Z = 1.645;

    private final Random random;
    private final double gainSpread;
    private final double falseAlarmSpread;
    private final double shareSpread;
    private final Map<String, double[]> kinds = new HashMap<>();

    CoefficientDraws(LocateCoefficients coefficients, long seed) {
        this.random = new Random(seed);
        this.gainSpread = coefficients.value("spread.gain");
        this.falseAlarmSpread = coefficients.value("spread.falseAlarm");
        this.shareSpread = coefficients.value("spread.share");
    }

    /** The same evidence under another draw of the coefficients. */
    CaseEvidence draw(CaseEvidence evidence) {
        kinds.clear();
        List<Observation> observations =
                evidence.observations().stream().map(this::drawn).toList();
        Map<Double, Double> z = new HashMap<>();
        List<Latent> latents =
                evidence.latents().stream().map(latent -> drawn(latent, z)).toList();
        return new CaseEvidence(observations, latents, evidence.notUsed());
    }

    private Observation drawn(Observation observation) {
        // One share factor for both cuts of an item: it is the same muscle.
        double share = Math.exp(shareSpread * random.nextGaussian());
        return new Observation(
                observation.finding(),
                observation.lower().stream().map(factor -> drawn(factor, share)).toList(),
                observation
                        .upper()
                        .map(list -> list.stream()
                                .map(factor -> drawn(factor, share))
                                .toList()),
                observation.temper());
    }

    private Factor drawn(Factor factor, double share) {
        if (factor.spread() instanceof Factor.Spread.OfKind kind) {
            double[] shared = kinds.computeIfAbsent(kind.kind(), name -> new double[] {
                Math.exp(gainSpread * random.nextGaussian()), Math.exp(falseAlarmSpread * random.nextGaussian())
            });
            return new Factor(
                    factor.gain() * shared[0] * share,
                    Math.min(0.5, factor.falseAlarm() * shared[1]),
                    factor.times(),
                    factor.load(),
                    factor.keep(),
                    factor.spread());
        }
        return factor.spread() instanceof Factor.Spread.OfCounts counts ? drawn(factor, counts) : factor;
    }

    private Factor drawn(Factor factor, Factor.Spread.OfCounts counts) {
        double sensitivity = drawnRate(counts.sensitivity(), counts.diseased());
        double falsePositive = drawnRate(factor.falseAlarm(), counts.healthy());
        Accuracy capped = Accuracy.capped(sensitivity, falsePositive, Accuracy.NONE.counts(), counts.cap());
        double before = (1 - counts.sensitivity()) / (1 - factor.falseAlarm());
        double after = (1 - capped.sensitivity()) / (1 - capped.falsePositive());
        double[] keep = factor.keep().clone();
        for (int i = 0; i < keep.length; i++) {
            double share = before < 1 ? (1 - keep[i]) / (1 - before) : 0;
            keep[i] = Math.max(0.001, 1 - share * (1 - after));
        }
        return Factor.ofSites(capped.falsePositive(), keep, factor.spread());
    }

    /** A rate drawn on the logit scale with the standard error of its count. */
    private double drawnRate(double rate, double people) {
        double kept = Math.min(0.995, Math.max(0.005, rate));
        double error = Math.sqrt(1 / (kept * people + 0.5) + 1 / ((1 - kept) * people + 0.5));
        return inverseLogit(logit(kept) + error * random.nextGaussian());
    }

    private Latent drawn(Latent latent, Map<Double, Double> z) {
        return new Latent(
                latent.finding(),
                latent.nerve(),
                latent.positive(),
                new Latent.Rates(
                        drawn(latent.rates().sensitive(), z),
                        drawn(latent.rates().not(), z)));
    }

    private Latent.Range drawn(Latent.Range range, Map<Double, Double> z) {
        double spread = (logit(range.high()) - logit(range.low())) / (2 * HALF_RANGE_Z);
        double shift = z.computeIfAbsent(range.value(), key -> random.nextGaussian());
        double value = inverseLogit(logit(range.value()) + spread * shift);
        return new Latent.Range(value, Math.min(range.low(), value), Math.max(range.high(), value));
    }

    private static double logit(double rate) {
        return Math.log(rate / (1 - rate));
    }

    private static double inverseLogit(double x) {
        return 1 / (1 + Math.exp(-x));
    }
}
