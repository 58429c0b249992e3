package slipway.care.record.codes;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;
import slipway.care.record.Saving;
import slipway.reasoning.codes.CodeSet;

/** The codes that clinics have loaded. */
public interface ClinicCodes {
    /** The loads of a clinic, newest first; the newest is in use. */
    List<CodeLoad> loads(String clinicId);

    /** Version of the newest load; 0 if nothing was ever loaded. */
    long version(String clinicId);

    /** What a load brought; empty if there is none of this version. */
    Optional<CodeFiles> files(String clinicId, long version);

    /** What is in use; no code at all if nothing was ever loaded. */
    default CodeSet inUse(String clinicId) {
        return files(clinicId, version(clinicId)).map(CodeFiles::set).orElse(CodeSet.EMPTY);
    }

    /**
     * Puts a list in the place of the clinic's list as a whole.
     *
     * @param version of the list that was read; stale if another has been loaded since
     */
    Saving<CodeLoad> load(CodeFiles files, long version, Act act);
}
