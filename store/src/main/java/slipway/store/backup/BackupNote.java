package slipway.store.backup;

import java.time.Instant;

/**
 * That a backup was made.
 *
 * @param sizeBytes of the sealed file
 * @param sha256 of the sealed file, in hexadecimal
 */
public record BackupNote(String id, Instant at, long sizeBytes, String sha256) {}
