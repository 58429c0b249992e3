package slipway.reasoning.locate;

import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Vocabulary;

/**
 * The result of a neural test. All of them look at one hidden state, whether the nerve is mechanosensitive, and count as
 * independent only given that state.
 *
 * @param finding what was found
 * @param nerve which nerve of the limb the test loads
 * @param positive the result
 * @param rates its rates
 */
record Latent(Finding finding, Nerve nerve, boolean positive, Rates rates) {
    /** The nerve that a neural test loads. */
    enum Nerve {
        POSTERIOR,
        ANTERIOR;

        double sensitivity(LesionSite site) {
            return this == POSTERIOR
                    ? site.sensitivity().posterior()
                    : site.sensitivity().anterior();
        }
    }

    /**
     * Chances of a positive test, with the range of the guess.
     *
     * @param sensitive when the nerve is mechanosensitive
     * @param not when it is not
     */
    record Rates(Range sensitive, Range not) {}

    /** A value with its 5 and 95 % bounds. */
    record Range(double value, double low, double high) {
        Range {
            if (!(low > 0 && low <= value && value <= high && high < 1)) {
                throw new IllegalArgumentException(
                        "a rate needs 0 < low <= value <= high < 1, was %s %s %s".formatted(low, value, high));
            }
        }
    }

    /** Whether a provocation test loads a nerve, rather than a joint or a muscle. */
    static boolean isNeuralTest(String target) {
        return Vocabulary.load()
                .find(FindingKind.PROVOCATION, target)
                .map(Term::key)
                .filter(key -> ReasoningData.table("locate/latent-tests.csv").stream()
                        .anyMatch(row -> row.get("test").equals(key)))
                .isPresent();
    }

    double chance(boolean sensitive) {
        double rate = (sensitive ? rates.sensitive() : rates.not()).value();
        return positive ? rate : 1 - rate;
    }
}
