package slipway.reasoning.locate;

import java.util.List;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.FindingKind;

/**
 * A test that has not been done, and what it would tell.
 *
 * @param kind kind of item
 * @param item its name in the vocabulary
 * @param side the side to test
 * @param entropyDrop expected drop of the uncertainty over the sites, in bits
 * @param effort minutes, with discomfort counted as minutes
 * @param outcomes what each result would do
 */
public record NextTest(
        FindingKind kind, String item, Side side, double entropyDrop, double effort, List<Outcome> outcomes) {
    /**
     * One possible result.
     *
     * @param result in words
     * @param chance how likely it is
     * @param sites the first three sites after it
     */
    public record Outcome(String result, double chance, List<Shift> sites) {
        public Outcome {
            sites = List.copyOf(sites);
        }
    }

    /** Chance of a site before and after a result. */
    public record Shift(String site, double before, double after) {}

    public NextTest {
        outcomes = List.copyOf(outcomes);
    }

    /** Expected drop per minute of effort; what tests are ranked by. */
    public double worth() {
        return entropyDrop / effort;
    }
}
