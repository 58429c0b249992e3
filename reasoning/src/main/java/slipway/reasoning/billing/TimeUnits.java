package slipway.reasoning.billing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slipway.reasoning.basis.Coefficients;

/**
 * Units from minutes. Source: CMS Claims Processing Manual, Pub. 100-04, ch. 5 §20.2 (8-minute rule) and payer texts on
 * the midpoint rule; see {@code time-units.csv}.
 */
public final class TimeUnits {
    private static final Coefficients DATA = Coefficients.load("time-units.csv");

    /** Length of a unit. */
    public static final int UNIT_MINUTES = (int) DATA.value("unit-minutes");

    private static final int FIRST_UNIT_MINUTES = (int) DATA.value("first-unit-minutes");

    private TimeUnits() {}

    /**
     * Units of a time by itself: 0 below 8 minutes, 1 from 8 to 22, and one more for every further 15.
     *
     * @param minutes 0 or more
     */
    public static int of(int minutes) {
        if (minutes < 0) {
            throw new IllegalArgumentException("minutes must not be below 0, were " + minutes);
        }
        return (minutes + UNIT_MINUTES - FIRST_UNIT_MINUTES) / UNIT_MINUTES;
    }

    /**
     * Units of a day's services.
     *
     * @param services at least one
     */
    public static Allocation allocate(UnitRule rule, List<TimedService> services) {
        if (services.isEmpty()) {
            throw new IllegalArgumentException("units need at least one timed service");
        }
        int total = services.stream().mapToInt(TimedService::minutes).sum();
        return rule == UnitRule.MIDPOINT ? alone(total, services) : pooled(total, services);
    }

    private static Allocation alone(int total, List<TimedService> services) {
        var lines = services.stream()
                .map(service -> new Allocation.Line(service, of(service.minutes()), of(service.minutes())))
                .toList();
        int units = lines.stream().mapToInt(Allocation.Line::units).sum();
        return new Allocation(UnitRule.MIDPOINT, total, units, lines, Optional.empty());
    }

    /** Full quarters of an hour first, then one unit each to the largest leftovers. */
    private static Allocation pooled(int total, List<TimedService> services) {
        int units = of(total);
        int left = units
                - services.stream()
                        .mapToInt(each -> each.minutes() / UNIT_MINUTES)
                        .sum();
        List<Integer> byLeftover = IntStream.range(0, services.size())
                .boxed()
                .sorted(Comparator.comparingInt((Integer i) -> -leftover(services.get(i))))
                .toList();
        List<Integer> served = byLeftover.subList(0, left);
        List<Allocation.Line> lines = IntStream.range(0, services.size())
                .mapToObj(i -> line(services.get(i), served.contains(i) ? 1 : 0))
                .toList();
        return new Allocation(UnitRule.EIGHT_MINUTE, total, units, lines, tie(services, byLeftover, left));
    }

    private static Allocation.Line line(TimedService service, int more) {
        int whole = service.minutes() / UNIT_MINUTES;
        return new Allocation.Line(service, whole, whole + more);
    }

    private static Optional<Allocation.Tie> tie(List<TimedService> services, List<Integer> byLeftover, int left) {
        if (left == 0 || left == services.size()) {
            return Optional.empty();
        }
        int last = leftover(services.get(byLeftover.get(left - 1)));
        if (leftover(services.get(byLeftover.get(left))) != last) {
            return Optional.empty();
        }
        int above =
                (int) services.stream().filter(each -> leftover(each) > last).count();
        List<String> among = services.stream()
                .filter(each -> leftover(each) == last)
                .map(TimedService::name)
                .toList();
        return Optional.of(new Allocation.Tie(left - above, last, among));
    }

    private static int leftover(TimedService service) {
        return service.minutes() % UNIT_MINUTES;
    }
}
