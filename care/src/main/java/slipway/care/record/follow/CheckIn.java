package slipway.care.record.follow;

import java.time.Instant;
import tools.jackson.databind.node.ObjectNode;

/**
 * A patient's report on a session as it was received.
 *
 * @param id made by the patient's device, so that sending it twice keeps one; 8 to 64 letters, digits or hyphens
 * @param sessionId the session it reports on
 * @param body all fields of the check-in under the names of the CSV: {@code
 *     checkin_id,session_id,exercise,started_at,before,repetitions_done,worst,kind,usual_pain,reach,settle_minutes,
 *     next_morning,still_numb,new_weakness,emergency,flare_exercise,reported_at}
 * @param receivedAt when it reached the clinic
 */
public record CheckIn(
        String id, String episodeId, String sessionId, String exerciseId, ObjectNode body, Instant receivedAt) {
    public CheckIn {
        checkedId(id);
        body = body.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode body() {
        return body.deepCopy();
    }

    /**
     * An id that a device may give.
     *
     * @throws IllegalArgumentException if it is none
     */
    public static String checkedId(String id) {
        if (!id.matches("[A-Za-z0-9-]{8,64}")) {
            throw new IllegalArgumentException("the id of a check-in must be 8 to 64 letters, digits or hyphens");
        }
        return id;
    }
}
