package slipway.care.record.access;

/** A passkey with its public key. */
public record KeptPasskey(Passkey passkey, PasskeyKey key) {}
