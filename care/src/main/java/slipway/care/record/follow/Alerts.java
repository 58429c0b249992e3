package slipway.care.record.follow;

import java.time.Instant;
import java.util.List;
import slipway.care.record.Act;
import slipway.care.record.Saving;

/** The safety alerts of a clinic. */
public interface Alerts {
    /** Open alerts of the clinic, highest level first, then oldest. */
    List<Alert> open(String clinicId);

    /** Open alerts of all clinics whose level stands since before some time; for what escalates by the clock. */
    List<Alert> standingSince(Instant before, int limit);

    /**
     * Takes an alert; stale if somebody else has.
     *
     * @param what what is done about it
     */
    Saving<Alert> acknowledge(String alertId, String what, Act act);

    /**
     * Raises the level and hands it to another owner; stale if it was taken or raised meanwhile.
     *
     * @param fromLevel the level that was read
     */
    Saving<Alert> escalate(String alertId, int fromLevel, String ownerId, Act act);
}
