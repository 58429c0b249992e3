package slipway.app.nerve;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.Prediction;

/** Predictions of a table as CSV or as aligned text. */
final class PredictionCsv {
    static final String HEADER = "id,quantity,median,low,high,published,sd,z,holds";

    private PredictionCsv() {}

    static String csv(List<Prediction> predictions) {
        var out = new StringBuilder(HEADER).append('\n');
        for (Prediction p : predictions) {
            out.append(String.join(",", cells(p))).append('\n');
        }
        return out.toString();
    }

    static String text(List<Prediction> predictions, String skippedWord, List<EvidenceTable.Skipped> skipped) {
        var out = new StringBuilder(String.format(
                Locale.ROOT,
                "%-24s %-15s %9s %9s %9s %10s %7s %7s %6s%n",
                "id",
                "quantity",
                "median",
                "low",
                "high",
                "published",
                "sd",
                "z",
                "holds"));
        for (Prediction p : predictions) {
            List<String> c = cells(p);
            out.append(String.format(
                    Locale.ROOT,
                    "%-24s %-15s %9s %9s %9s %10s %7s %7s %6s%n",
                    c.get(0),
                    c.get(1),
                    c.get(2),
                    c.get(3),
                    c.get(4),
                    c.get(5),
                    c.get(6),
                    c.get(7),
                    c.get(8)));
        }
        out.append(
                "median, low (5 %) and high (95 %) over the draws; excursion and bed elongation in mm, strain in %.\n");
        for (EvidenceTable.Skipped row : skipped) {
            out.append("not predicted: ")
                    .append(row.id())
                    .append(" (")
                    .append(row.reason())
                    .append(")\n");
        }
        return out.toString();
    }

    private static List<String> cells(Prediction p) {
        var published = p.row().published();
        return List.of(
                quoted(p.row().id()),
                p.row().quantity().key(),
                number(p.median()),
                number(p.low()),
                number(p.high()),
                number(published.mean()),
                number(published.sd()),
                number(p.z()),
                number(p.holds()));
    }

    private static String quoted(String text) {
        return text.matches("[^\",\\r\\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    private static String number(double value) {
        return Double.isNaN(value) ? "" : String.format(Locale.ROOT, "%.3f", value);
    }
}
