package slipway.reasoning.response.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;

/**
 * The rungs of an exercise, least first: from one rung to the next no component falls. What is given is always a rung.
 *
 * @param rungs the doses
 * @param given index of the dose of the plan
 * @param top index of the highest rung under the ceiling; never above it in any component
 */
public record Ladder(List<HomeDose> rungs, int given, int top, Ceiling ceiling) {
    private static final List<CSVRecord> STEPS = ReasoningData.table("response/rungs.csv");

    public Ladder {
        rungs = List.copyOf(rungs);
        for (int i = 1; i < rungs.size(); i++) {
            if (!rungs.get(i - 1).notAbove(rungs.get(i))) {
                throw new IllegalArgumentException(
                        "rungs must rise, were %s and %s".formatted(rungs.get(i - 1), rungs.get(i)));
            }
        }
        if (given < 0 || given >= rungs.size() || top < 0 || top >= rungs.size()) {
            throw new IllegalArgumentException(
                    "given and top must be rungs of %d, were %d and %d".formatted(rungs.size(), given, top));
        }
        if (!ceiling.allows(rungs.get(top))) {
            throw new IllegalArgumentException(
                    "no rung may be above the ceiling %s, the top was %s".formatted(ceiling, rungs.get(top)));
        }
    }

    /**
     * The ladder through a given dose ({@code rungs.csv}): the rungs that are below it in every component, itself, and
     * those that are above it in every component.
     *
     * @throws IllegalArgumentException if not even the lowest rung keeps to the ceiling
     */
    public static Ladder through(HomeDose given, Ceiling ceiling) {
        var below = new ArrayList<HomeDose>();
        var above = new ArrayList<HomeDose>();
        for (CSVRecord row : STEPS) {
            var rung = new HomeDose(
                    Integer.parseInt(row.get("repetitions")),
                    given.sets(),
                    Integer.parseInt(row.get("sessionsPerDay")),
                    Double.parseDouble(row.get("rangeFraction")),
                    given.secondsPerDirection());
            if (!rung.equals(given) && rung.notAbove(given)) {
                below.add(rung);
            } else if (!rung.equals(given) && given.notAbove(rung)) {
                above.add(rung);
            }
        }
        var rungs = new ArrayList<>(below);
        rungs.add(given);
        rungs.addAll(above);
        int top = -1;
        while (top + 1 < rungs.size() && ceiling.allows(rungs.get(top + 1))) {
            top++;
        }
        if (top < 0) {
            throw new IllegalArgumentException(
                    "the ceiling %s leaves no rung, the lowest is %s".formatted(ceiling, rungs.get(0)));
        }
        return new Ladder(rungs, below.size(), top, ceiling);
    }

    /** The shares of the given range that rungs have, rising, the whole range last. */
    public static List<Double> rangeFractions() {
        return Stream.concat(STEPS.stream().map(row -> Double.valueOf(row.get("rangeFraction"))), Stream.of(1.0))
                .distinct()
                .sorted()
                .toList();
    }

    /** The rung on which the person starts: the given one, or the highest below it that the ceiling allows. */
    public int start() {
        return Math.min(given, top);
    }

    /** The dose of a rung. */
    public HomeDose dose(int rung) {
        return rungs.get(rung);
    }

    /** The highest rung at or below this one with at most this share of the range; -1 if there is none. */
    public int withRangeAtMost(int from, double rangeFraction) {
        int rung = from;
        while (rung >= 0 && rungs.get(rung).rangeFraction() > rangeFraction) {
            rung--;
        }
        return rung;
    }

    /** The highest rung at or below this one that is done once a day; 0 if there is none. */
    public int onceADay(int from) {
        int rung = from;
        while (rung > 0 && rungs.get(rung).sessionsPerDay() > 1) {
            rung--;
        }
        return Math.max(0, rung);
    }
}
