package slipway.care.record.caseload;

import java.time.Instant;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/**
 * What decides by when papers of an episode are due.
 *
 * @param paperwork content of the section, see {@link slipway.care.record.content.Paperwork}
 * @param visits when each visit started, oldest first
 * @param reports when each progress report was signed, oldest first
 */
public record PaperTrailRow(String episodeId, ObjectNode paperwork, List<Instant> visits, List<Instant> reports) {
    public PaperTrailRow {
        paperwork = paperwork.deepCopy();
        visits = List.copyOf(visits);
        reports = List.copyOf(reports);
    }

    /** A copy. */
    @Override
    public ObjectNode paperwork() {
        return paperwork.deepCopy();
    }

    /** Ids only: this may end in a log. */
    @Override
    public String toString() {
        return "paper trail of episode " + episodeId;
    }
}
