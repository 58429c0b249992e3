package slipway.care.record.papers;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Saving;

/** Notes and letters of an episode. */
public interface Papers {
    /** Begins a draft. */
    Paper draft(String kind, Optional<String> visitId, String text);

    /**
     * Changes a draft. A signed paper is always stale, since its text is fixed.
     *
     * @param version the one that was read
     */
    Saving<Paper> change(String paperId, long version, String text);

    /** Signs a draft as it was read, by whoever opened the chart, now. */
    Saving<Paper> sign(String paperId, long version);

    /**
     * Adds to a signed paper.
     *
     * @throws IllegalStateException if it is not signed
     */
    Paper amend(String paperId, String text);

    Optional<Paper> find(String paperId);

    /** Newest first. */
    List<Paper> list();

    /** Every text that a paper has had, oldest first; empty if there is no such paper, or it was erased. */
    List<Paper.Text> texts(String paperId);
}
