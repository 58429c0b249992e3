package slipway.app.billing;

import java.util.ArrayList;
import java.util.List;
import slipway.reasoning.billing.Allocation;
import slipway.reasoning.billing.UnitRule;

/** An allocation in words. */
final class UnitsText {
    private UnitsText() {}

    static List<String> of(Allocation day) {
        var lines = new ArrayList<String>();
        lines.add(units(day.units()));
        lines.add("%d timed minutes in all, by the %s"
                .formatted(day.totalMinutes(), day.rule().words()));
        int width = day.lines().stream()
                .mapToInt(l -> l.service().name().length())
                .max()
                .orElse(1);
        day.lines().forEach(line -> lines.add("  " + line(day.rule(), line, width)));
        day.tie().ifPresent(tie -> lines.add(tie(tie)));
        return lines;
    }

    /** {@code 1 unit}, {@code 3 units}. */
    static String units(int count) {
        return count + (count == 1 ? " unit" : " units");
    }

    private static String line(UnitRule rule, Allocation.Line line, int width) {
        String name = line.service().name();
        String counted = rule == UnitRule.EIGHT_MINUTE && line.units() > line.wholeUnits()
                ? ", one of them for %d leftover min".formatted(line.leftoverMinutes())
                : "";
        return "%s  %3d min  %s%s"
                .formatted(
                        name + " ".repeat(width - name.length()),
                        line.service().minutes(),
                        units(line.units()),
                        counted);
    }

    private static String tie(Allocation.Tie tie) {
        return "Your choice: %s have %d leftover min each and share %s; the first named got %s here."
                .formatted(
                        String.join(", ", tie.among()),
                        tie.leftoverMinutes(),
                        units(tie.units()),
                        tie.units() == 1 ? "it" : "them");
    }
}
