package slipway.care.record.access;

/**
 * What an answer of a passkey is checked against.
 *
 * @param publicKey COSE key (RFC 9052) as CBOR, in base64url
 * @param signatureCount the highest that the device has told; 0 if it does not count
 * @param backupEligible whether its owner can have it on several devices; never changes
 * @param backedUp whether it is on several devices now
 */
public record PasskeyKey(String publicKey, long signatureCount, boolean backupEligible, boolean backedUp) {
    public PasskeyKey {
        if (publicKey.isEmpty()) {
            throw new IllegalArgumentException("a passkey needs its public key");
        }
        if (signatureCount < 0) {
            throw new IllegalArgumentException("the count of signatures must be 0 or more, was " + signatureCount);
        }
        if (backedUp && !backupEligible) {
            throw new IllegalArgumentException("a passkey that stays on one device cannot be backed up");
        }
    }
}
