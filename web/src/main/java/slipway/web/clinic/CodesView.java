package slipway.web.clinic;

import java.util.List;
import slipway.care.record.codes.CodeFiles;
import slipway.reasoning.codes.CodeChange;
import slipway.reasoning.codes.CodeSet;

/**
 * What a load would change.
 *
 * @param next the list that would take the place of the clinic's
 * @param changes in the order of the codes
 * @param exclusionsChange whether the exclusions would be others
 */
public record CodesView(CodeSet next, List<CodeChange> changes, boolean exclusionsChange) {
    /** So many changes a page shows; the rest is counted. */
    public static final int SHOWN = 200;

    public CodesView {
        changes = List.copyOf(changes);
    }

    static CodesView of(CodeSet now, CodeSet next) {
        return new CodesView(
                next, CodeChange.between(now, next), !now.exclusions().equals(next.exclusions()));
    }

    /** Number of changes of a kind. */
    public long count(CodeChange.Kind kind) {
        return changes.stream().filter(change -> change.kind() == kind).count();
    }

    /** The changes that the page shows. */
    public List<CodeChange> shown() {
        return changes.subList(0, Math.min(SHOWN, changes.size()));
    }

    /** Whether loading would make any difference. */
    public boolean differs() {
        return exclusionsChange || !changes.isEmpty();
    }

    /** The files that were read. */
    public CodeFiles files() {
        return CodeFiles.of(next);
    }
}
