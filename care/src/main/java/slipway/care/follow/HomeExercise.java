package slipway.care.follow;

import java.util.List;
import java.util.OptionalDouble;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;
import slipway.reasoning.response.propose.FollowedExercise;

/**
 * An exercise of a plan with all that is needed to follow it at home.
 *
 * @param companion whether it is no glide: it keeps its own dose, and only the safety rules look at its reports
 * @param dose as it was given
 * @param ceiling the most that holds until the next visit
 * @param loads the largest load on each share of the range, least first; none if nothing tells the tolerance
 * @param logSd spread of the log of the load at the whole range; absent without loads
 */
public record HomeExercise(
        String id, boolean companion, HomeDose dose, Ceiling ceiling, List<LoadAt> loads, OptionalDouble logSd) {
    public HomeExercise {
        loads = List.copyOf(loads);
        if (loads.isEmpty() == logSd.isPresent()) {
            throw new IllegalArgumentException(
                    id + " needs loads and their spread or neither, had %d and %s".formatted(loads.size(), logSd));
        }
        if (logSd.isPresent() && !(logSd.getAsDouble() >= 0 && Double.isFinite(logSd.getAsDouble()))) {
            throw new IllegalArgumentException(id + " has a spread of " + logSd.getAsDouble());
        }
    }

    /**
     * The largest load of a repetition.
     *
     * @param rangeFraction share of the given range, above 0 to 1
     * @param share of the tolerance that the examination gave, median
     */
    public record LoadAt(double rangeFraction, double share) {
        public LoadAt {
            if (!(rangeFraction > 0 && rangeFraction <= 1) || !(share >= 0) || !Double.isFinite(share)) {
                throw new IllegalArgumentException(
                        "a load of %s at %s of the range cannot be".formatted(share, rangeFraction));
            }
        }
    }

    FollowedExercise followed() {
        return following(dose, ceiling);
    }

    /** The same with a dose and a ceiling that were set since. */
    FollowedExercise following(HomeDose set, Ceiling most) {
        if (companion) {
            return new FollowedExercise(id, new Ladder(List.of(set), 0, 0, most), true, List.of());
        }
        Ladder ladder = Ladder.through(set, most);
        List<Double> peaks = loads.isEmpty()
                ? List.of()
                : ladder.rungs().stream().map(this::load).toList();
        return new FollowedExercise(id, ladder, false, peaks);
    }

    private double load(HomeDose rung) {
        return loads.stream()
                .filter(each -> each.rangeFraction() == rung.rangeFraction())
                .mapToDouble(LoadAt::share)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "%s has no load at %s of its range".formatted(id, rung.rangeFraction())));
    }

    HomeExercise within(Ceiling most) {
        return new HomeExercise(id, companion, dose, most, loads, logSd);
    }
}
