package slipway.care.record.draft;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;

/**
 * Drafts, each seen by its user only. They are no part of the record and leave no trail; saving a section drops the
 * user's draft of it in the same transaction, erasing a person drops all.
 */
public interface Drafts {
    /**
     * Keeps a draft in place of the one before.
     *
     * @param baseVersion version of the record that the form was opened on; 0 if there was none
     * @throws slipway.care.record.NotThere if the act does not see the episode
     */
    Draft save(String episodeId, String form, long baseVersion, String content, Act act);

    /** The draft of whoever acts; empty if there is none or the act no longer sees the episode. */
    Optional<Draft> find(String episodeId, String form, Act act);

    /** All drafts of whoever acts in an episode that the act sees, newest first. */
    List<Draft> list(String episodeId, Act act);

    /** Drops a draft of whoever acts; nothing happens if there is none. */
    void drop(String episodeId, String form, Act act);

    /** Drops drafts that were last kept before some time; gives how many. */
    int purge(Instant before);
}
