package slipway.reasoning.response.propose;

import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.Ladder;

/**
 * The ceiling with its rung, for reading.
 *
 * @param rung the highest rung that keeps to it
 */
public record CeilingView(int rung, int repetitions, int sessionsPerDay, double rangeFraction) {
    static CeilingView of(Ladder ladder) {
        Ceiling ceiling = ladder.ceiling();
        return new CeilingView(ladder.top(), ceiling.repetitions(), ceiling.sessionsPerDay(), ceiling.rangeFraction());
    }
}
