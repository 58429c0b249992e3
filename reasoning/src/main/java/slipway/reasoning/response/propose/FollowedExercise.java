package slipway.reasoning.response.propose;

import java.util.List;
import slipway.reasoning.response.ladder.Ladder;

/**
 * An exercise of a plan as it is followed.
 *
 * @param companion whether it is no glide: it keeps the dose that was given, and only the safety rules look at its reports
 * @param peakLoad the largest load of a repetition on each rung, in the unit of the prior; empty if it is not modelled
 */
public record FollowedExercise(String id, Ladder ladder, boolean companion, List<Double> peakLoad) {
    public FollowedExercise {
        peakLoad = List.copyOf(peakLoad);
        if (!peakLoad.isEmpty() && peakLoad.size() != ladder.rungs().size()) {
            throw new IllegalArgumentException(
                    "%s has %d rungs and %d loads".formatted(id, ladder.rungs().size(), peakLoad.size()));
        }
        if (!peakLoad.stream().allMatch(Double::isFinite)) {
            throw new IllegalArgumentException(id + " has a load that is not finite: " + peakLoad);
        }
    }
}
