package slipway.reasoning.locate;

/**
 * Sensitivity and false-positive rate of a test as the model uses them: from counts with half a person added to each cell,
 * and likelihood ratios capped by raising the false-positive rate or lowering the sensitivity.
 *
 * @param sensitivity P(positive | lesion)
 * @param falsePositive P(positive | no such lesion)
 * @param counts what they were made of
 * @param cap largest likelihood ratio, and inverse of the smallest
 */
record Accuracy(double sensitivity, double falsePositive, Counts counts, double cap) {
    /** Of a test that has none of its own. */
    static final Accuracy NONE = new Accuracy(0, 0, new Counts(0, 1, 1, 1), 1);

    /**
     * People with and without the lesion, by the result of the test. Need not be whole for a guess.
     *
     * @param truePositive positives among the diseased
     * @param diseased people with the lesion
     * @param trueNegative negatives among the healthy
     * @param healthy people without it
     */
    record Counts(double truePositive, double diseased, double trueNegative, double healthy) {
        Counts {
            if (!(truePositive >= 0 && truePositive <= diseased && trueNegative >= 0 && trueNegative <= healthy)) {
                throw new IllegalArgumentException("counts must lie within their totals, were %s/%s and %s/%s"
                        .formatted(truePositive, diseased, trueNegative, healthy));
            }
        }

        /** Plain sensitivity, without correction. */
        double sensitivity() {
            return truePositive / diseased;
        }

        /** Plain specificity, without correction. */
        double specificity() {
            return trueNegative / healthy;
        }

        /** Likelihood ratio of a positive test, without correction. */
        double positiveRatio() {
            return sensitivity() / (1 - specificity());
        }

        /** Likelihood ratio of a negative test, without correction. */
        double negativeRatio() {
            return (1 - sensitivity()) / specificity();
        }

        /** The same counts with half a person added to each cell, so that no rate is 0 or 1. */
        Counts corrected() {
            return new Counts(truePositive + 0.5, diseased + 1, trueNegative + 0.5, healthy + 1);
        }
    }

    static Accuracy ofCounts(Counts counts, double cap) {
        Counts corrected = counts.corrected();
        return capped(corrected.sensitivity(), 1 - corrected.specificity(), counts, cap);
    }

    static Accuracy capped(double sensitivity, double falsePositive, Counts counts, double cap) {
        double raised = Math.max(falsePositive, sensitivity / cap);
        double lowered = Math.min(sensitivity, 1 - (1 - raised) / cap);
        return new Accuracy(lowered, raised, counts, cap);
    }

    /** Probability after a test, from the one before it and a likelihood ratio. */
    static double postTest(double before, double ratio) {
        double odds = before / (1 - before) * ratio;
        return odds / (1 + odds);
    }
}
