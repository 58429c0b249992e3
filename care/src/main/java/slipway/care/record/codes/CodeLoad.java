package slipway.care.record.codes;

import java.time.Instant;

/**
 * One load of codes.
 *
 * @param version counts the loads of a clinic from 1
 * @param by account, or word of the program
 * @param codes number of lines
 * @param exclusions number of lines
 * @param sha256 of both files as they are kept
 */
public record CodeLoad(
        String clinicId, long version, Instant at, String by, int codes, int exclusions, String sha256) {}
