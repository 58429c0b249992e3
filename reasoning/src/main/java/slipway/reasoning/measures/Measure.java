package slipway.reasoning.measures;

import java.util.SortedMap;

/**
 * An outcome measure.
 *
 * @param id stable name, for example {@code rmdq}
 * @param about what it measures, in a few words
 * @param basis where the way of scoring comes from, and who owns the wording
 */
public record Measure(
        String id, String name, String about, Scoring scoring, Range range, Thresholds thresholds, Basis basis) {

    /**
     * What scores there are.
     *
     * @param unit in UCUM, for example {@code {score}} or {@code deg}
     */
    public record Range(double low, double high, Better better, String unit) {
        public Range {
            if (!(low < high)) {
                throw new IllegalArgumentException("a range needs low < high, was %s..%s".formatted(low, high));
            }
        }

        /** Whether a score can be. */
        public boolean holds(double score) {
            return score >= low && score <= high;
        }

        /** The unit in words; empty for points. */
        public String unitWord() {
            return "{score}".equals(unit) ? "" : unit;
        }
    }

    /** Where it comes from. */
    public record Basis(String mark, String source, String rights) {}

    /**
     * The score of some answers.
     *
     * @param answers by number of the item from 1; what was not answered is absent
     */
    public Score score(SortedMap<Integer, Double> answers) {
        return scoring.score(answers);
    }

    /**
     * A total that was read from elsewhere.
     *
     * @throws IllegalArgumentException if the measure has no such score
     */
    public double total(double score) {
        if (!range.holds(score)) {
            throw new IllegalArgumentException("%s must be within %s and %s, was %s"
                    .formatted(name, Numbers.text(range.low()), Numbers.text(range.high()), Numbers.text(score)));
        }
        return score;
    }

    /** A score with its unit, for example {@code 62 deg} or {@code 12}. */
    public String text(double score) {
        return range.unitWord().isEmpty() ? Numbers.text(score) : Numbers.text(score) + " " + range.unitWord();
    }

    /** The change between two scores. */
    public Change change(double from, double to) {
        return ChangeRule.of(this, total(from), total(to));
    }
}
