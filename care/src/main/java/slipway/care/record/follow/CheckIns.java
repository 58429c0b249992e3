package slipway.care.record.follow;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** The check-ins of an episode; never changed. */
public interface CheckIns {
    /**
     * Keeps a check-in. On return it is on the disk; sent again it is kept once.
     *
     * @param id made by the patient's device
     * @param body see {@link CheckIn}
     */
    Receipt add(String id, String sessionId, String exerciseId, ObjectNode body);

    /** In the order in which they were received. */
    List<CheckIn> list();

    Optional<CheckIn> newest();

    /** Raises a safety alert, once per kind and check-in. */
    Alert raise(String kind, String words, Optional<String> checkInId, String ownerId);

    /** Alerts of this episode, newest first. */
    List<Alert> alerts();
}
