package slipway.care.record.access;

import java.time.Instant;

/**
 * One answer of a passkey whose signature is right.
 *
 * @param passkeyId ours
 * @param signatureCount as the device told it now
 * @param backedUp as the device told it now
 * @param challengeSha256 of the challenge that was signed, in hexadecimal
 */
public record PasskeyUse(String passkeyId, long signatureCount, boolean backedUp, String challengeSha256, Instant at) {}
