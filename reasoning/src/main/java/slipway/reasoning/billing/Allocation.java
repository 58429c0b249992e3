package slipway.reasoning.billing;

import java.util.List;
import java.util.Optional;

/**
 * The units of a day.
 *
 * @param units how many may be billed in all
 * @param lines one for each service, in the order given; their units sum to {@code units}
 * @param tie services with an equal claim to the last units, if there are such
 */
public record Allocation(UnitRule rule, int totalMinutes, int units, List<Line> lines, Optional<Tie> tie) {
    public Allocation {
        lines = List.copyOf(lines);
        int handedOut = lines.stream().mapToInt(Line::units).sum();
        if (handedOut != units) {
            throw new IllegalArgumentException(
                    "the lines must hand out all %d units, handed out %d".formatted(units, handedOut));
        }
    }

    /**
     * Units of one service.
     *
     * @param wholeUnits those that it has by full quarters of an hour or by its own time
     * @param units with what was added from the leftover minutes of the day; in a tie the first named are served
     */
    public record Line(TimedService service, int wholeUnits, int units) {
        /** Minutes above the whole quarters of an hour. */
        public int leftoverMinutes() {
            return service.minutes() % TimeUnits.UNIT_MINUTES;
        }
    }

    /**
     * A choice that the rule leaves to the therapist.
     *
     * @param units how many units there are to give, fewer than there are services
     * @param among names of the services with the same leftover minutes
     */
    public record Tie(int units, int leftoverMinutes, List<String> among) {
        public Tie {
            among = List.copyOf(among);
            if (units < 1 || units >= among.size()) {
                throw new IllegalArgumentException(
                        "a tie has fewer units than services, had %d for %s".formatted(units, among));
            }
        }
    }
}
