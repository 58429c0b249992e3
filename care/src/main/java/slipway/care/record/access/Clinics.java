package slipway.care.record.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;
import slipway.care.record.Saving;

/** Clinics, their settings, and the code of the first start. */
public interface Clinics {
    /** A new clinic; its id is that of the act. */
    Clinic add(String name, String setting, String phone, String emergencyNumber, boolean demo, Act act);

    Optional<Clinic> find(String clinicId);

    List<Clinic> list();

    /** Changes a clinic; {@code clinic} carries the version that was read. */
    Saving<Clinic> change(Clinic clinic, Act act);

    /** A setting; version 0 and {@code otherwise} if nobody has set it. */
    Setting setting(String clinicId, String key, String otherwise);

    List<Setting> settings(String clinicId);

    /** Sets a setting of the clinic of the act. */
    Saving<Setting> set(String key, long version, String value, Act act);

    /** Keeps the hash of a set-up code; an earlier one is void. */
    void setUpCode(String sha256, Instant expiresAt);

    /** Uses the set-up code once; false if it is another, expired or used. */
    boolean useSetUpCode(String sha256, Instant now);
}
