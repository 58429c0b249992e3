package slipway.reasoning.measures;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * How a questionnaire is scored.
 *
 * @param items how many there are
 * @param itemLow lowest answer of an item, {@code itemHigh} the highest
 * @param leastAnswered with fewer answers there is no score
 */
public record Scoring(Formula formula, int items, double itemLow, double itemHigh, int leastAnswered) {
    public Scoring {
        if (items < 1 || !(itemLow < itemHigh) || leastAnswered < 0 || leastAnswered > items) {
            throw new IllegalArgumentException(
                    "scoring needs items, low < high and 0 <= least <= items, was %d, %s..%s, %d"
                            .formatted(items, itemLow, itemHigh, leastAnswered));
        }
    }

    /**
     * The score of some answers, or every reason why there is none.
     *
     * @param answers by number of the item from 1; what was not answered is absent
     */
    Score score(SortedMap<Integer, Double> answers) {
        var reasons = new ArrayList<String>();
        answers.forEach((item, answer) -> check(item, answer, reasons));
        if (answers.size() < leastAnswered) {
            reasons.add("%d of %d items must be answered, %d were".formatted(leastAnswered, items, answers.size()));
        }
        return reasons.isEmpty()
                ? new Score.Scored(value(answers), answers.size(), items)
                : new Score.NotScored(reasons);
    }

    private void check(int item, double answer, List<String> reasons) {
        if (item < 1 || item > items) {
            reasons.add("items are numbered 1 to %d, there is no item %d".formatted(items, item));
        } else if (!(answer >= itemLow && answer <= itemHigh)) {
            reasons.add("the answer must be within %s and %s, was %s (item %d)"
                    .formatted(Numbers.text(itemLow), Numbers.text(itemHigh), Numbers.text(answer), item));
        }
    }

    private double value(SortedMap<Integer, Double> answers) {
        double sum = answers.values().stream().mapToDouble(Double::doubleValue).sum();
        return switch (formula) {
            case SUM -> sum;
            case MEAN -> sum / answers.size();
            case PERCENT -> 100 * (sum / answers.size() - itemLow) / (itemHigh - itemLow);
        };
    }
}
