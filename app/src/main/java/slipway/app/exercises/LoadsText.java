package slipway.app.exercises;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.care.loads.GlideLoads;
import slipway.reasoning.dose.StandardLoads.Loads;
import slipway.reasoning.tolerance.Interval;

/** What glides do at a place of a standard body, as a table. */
final class LoadsText {
    private static final String ROW = "%-32s %-22s %-22s %9s  %s%n";

    private LoadsText() {}

    /**
     * The table, ending in a new line.
     *
     * @param only id of the one exercise to show; empty for all
     * @throws IllegalArgumentException if that one does not pass the place
     */
    static String of(GlideLoads loads, Optional<String> only) {
        List<GlideLoads.Row> rows = loads.rows().stream()
                .filter(row ->
                        only.isEmpty() || only.get().equals(row.exercise().id()))
                .toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("%s is no glide of a nerve that passes the %s"
                    .formatted(only.orElse("nothing"), loads.site().name()));
        }
        var out = new StringBuilder("at the " + loads.site().name()
                + " of a standard body, with the angles of the pictures; median (90 %)\n\n");
        if (!loads.site().tract().pathway().validated()) {
            out.append("NOT VALIDATED: hardly anything is published about how the nerves at the front of the leg move."
                    + "\nThe numbers follow from stated geometry and from what was fitted to the back of the leg.\n\n");
        }
        out.append(String.format(ROW, "exercise", "glide, mm", "rise of load, %", "mm per %", "called"));
        rows.forEach(row -> out.append(line(row)));
        out.append(
                "\nGlide is counted whichever way the nerve moves. \"way not known\": zero lies within the interval of its"
                        + "\nmovement from start to end. The names follow from mm per %, by lines that are assumptions, not by tradition.\n");
        return out.toString();
    }

    private static String line(GlideLoads.Row row) {
        Loads loads = row.loads();
        boolean shown = loads.label() != slipway.reasoning.dose.StandardLoads.Label.NO_MOVEMENT;
        boolean unsure =
                shown && loads.netGlideMm().low() < 0 && loads.netGlideMm().high() > 0;
        return String.format(
                Locale.ROOT,
                ROW,
                row.exercise().id(),
                interval(loads.glideMm()),
                interval(loads.risePct()),
                shown ? String.format(Locale.ROOT, "%.1f", loads.glideToLoad()) : "-",
                loads.label().words()
                        + (unsure ? ", way not known" : "")
                        + (row.notModelled().isEmpty() ? "" : "; without " + String.join(", ", row.notModelled())));
    }

    private static String interval(Interval interval) {
        return String.format(
                Locale.ROOT,
                "%.1f (%.1f to %.1f)",
                interval.median() + 0.0,
                interval.low() + 0.0,
                interval.high() + 0.0);
    }
}
