package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Posture;
import slipway.mechanics.evidence.BundledTable;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

/** Reads one row and notes what is wrong with it. */
final class RowReader {
    private static final Set<String> NOT_PREDICTED = Set.of("geometry", "context", "later");

    private final CSVRecord row;
    private final List<String> mistakes;

    private RowReader(CSVRecord row, List<String> mistakes) {
        this.row = row;
        this.mistakes = mistakes;
    }

    /** One reader per row; a table without the needed columns has none, and the mistakes say so. */
    static List<RowReader> open(String text, List<String> mistakes) {
        List<CSVRecord> records = BundledTable.parseText(text);
        if (records.isEmpty()) {
            mistakes.add("the table has no rows");
            return List.of();
        }
        List<String> missing = EvidenceTable.NEEDED.stream()
                .filter(column -> !records.get(0).isMapped(column))
                .toList();
        if (!missing.isEmpty()) {
            mistakes.add("the header lacks " + String.join(", ", missing));
            return List.of();
        }
        for (CSVRecord record : records) {
            if (!record.isConsistent()) {
                mistakes.add("row %d: has %d columns, the header has another number"
                        .formatted(record.getRecordNumber(), record.size()));
            }
        }
        return records.stream().map(record -> new RowReader(record, mistakes)).toList();
    }

    String id() {
        return text("id");
    }

    String at() {
        return "row " + row.getRecordNumber() + " (" + id() + "): ";
    }

    Optional<String> skipReason() {
        if (NOT_PREDICTED.contains(text("use"))) {
            return Optional.of(text("use"));
        }
        if (Quantity.find(text("quantity")).isEmpty()) {
            return Optional.of("the model does not predict \"" + text("quantity") + "\"");
        }
        return Optional.empty();
    }

    Optional<EvidenceRow> read() {
        int before = mistakes.size();
        if (id().isEmpty()) {
            mistakes.add(at() + "a row needs an id");
        }
        Quantity quantity = Quantity.find(text("quantity")).orElseThrow();
        Optional<Site> site = needsSite(quantity) ? site() : Optional.empty();
        var motion = new EvidenceRow.Motion(posture("from"), posture("to"));
        var published = new EvidenceRow.Published(
                number("mean"), positive("sd"), positive("n"), text("assumed").matches("(?s).*\\bsd\\b.*"));
        if (mistakes.size() > before) {
            return Optional.empty();
        }
        return Optional.of(
                new EvidenceRow(id(), text("use"), text("study"), site, motion, quantity, text("relation"), published));
    }

    private static boolean needsSite(Quantity quantity) {
        return quantity != Quantity.ORDER && quantity != Quantity.BED_ELONGATION;
    }

    private Optional<Site> site() {
        Optional<Site> site = Site.find(text("site"));
        if (site.isEmpty()) {
            mistakes.add(at() + "unknown site \"" + text("site") + "\" (known: "
                    + String.join(", ", Site.all().keySet()) + ")");
            return site;
        }
        Optional<Tract> tract = Tract.find(text("tract"));
        if (tract.filter(found -> found.pathway() == Pathway.BACK).isEmpty()) {
            mistakes.add(at() + "unknown tract \"" + text("tract") + "\" (known: "
                    + Pathway.BACK.tracts().stream().map(Tract::key).collect(Collectors.joining(", ")) + ")");
        }
        return site;
    }

    private Posture posture(String column) {
        try {
            return Posture.parse(text(column));
        } catch (IllegalArgumentException e) {
            mistakes.add(at() + column + ": " + e.getMessage());
            return Posture.reference();
        }
    }

    private OptionalDouble number(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException e) {
            // Falls through to the one message for both.
        }
        mistakes.add(at() + column + " must be a number, was \"" + text + "\"");
        return OptionalDouble.empty();
    }

    private OptionalDouble positive(String column) {
        OptionalDouble value = number(column);
        if (value.isPresent() && !(value.getAsDouble() > 0)) {
            mistakes.add(at() + column + " must be positive, was " + value.getAsDouble());
        }
        return value;
    }

    private String text(String column) {
        return row.isSet(column) ? row.get(column) : "";
    }

    static List<String> words(String text) {
        return new ArrayList<>(List.of(text.trim().split("\\s+")));
    }
}
