package slipway.mechanics.calibration;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slipway.mechanics.evidence.BundledTable;

/**
 * A table of published measurements in the format of {@code nerve-motion.csv}.
 *
 * @param rows the rows that the model can be asked for
 * @param skipped ids of the others with the reason
 */
public record EvidenceTable(List<EvidenceRow> rows, List<Skipped> skipped) {
    /** Columns without which a table cannot be read; study, n, sd and the rest may be missing. */
    static final List<String> NEEDED = List.of("id", "tract", "site", "from", "to", "quantity");

    /** A row that is not predicted, and why. */
    public record Skipped(String id, String reason) {}

    public EvidenceTable {
        rows = List.copyOf(rows);
        skipped = List.copyOf(skipped);
    }

    /** The measurements that ship with the program. */
    public static EvidenceTable bundled() {
        return parse(BundledTable.textOf("nerve-motion.csv"), "nerve-motion.csv");
    }

    /**
     * Reads a table.
     *
     * @param text CSV with a header row; {@code #} starts a comment line
     * @param name what to call it in messages
     * @throws EvidenceException with every mistake and its line
     */
    public static EvidenceTable parse(String text, String name) {
        var mistakes = new ArrayList<String>();
        var rows = new ArrayList<EvidenceRow>();
        var skipped = new ArrayList<Skipped>();
        Set<String> ids = new HashSet<>();
        for (RowReader reader : RowReader.open(text, mistakes)) {
            if (!ids.add(reader.id())) {
                mistakes.add(reader.at() + "id \"" + reader.id() + "\" is given twice");
            }
            reader.skipReason()
                    .ifPresentOrElse(
                            reason -> skipped.add(new Skipped(reader.id(), reason)),
                            () -> reader.read().ifPresent(rows::add));
        }
        OrderRelation.check(rows, mistakes);
        if (!mistakes.isEmpty()) {
            throw new EvidenceException(name, mistakes);
        }
        return new EvidenceTable(rows, skipped);
    }

    /** The rows that the parameters may be fitted to. */
    public List<EvidenceRow> calibrating() {
        return rows.stream().filter(EvidenceRow::calibrates).toList();
    }
}
