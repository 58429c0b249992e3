package slipway.care.record.access;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;

/** Passkeys of accounts. Their trail is that of the clinic. */
public interface Passkeys {
    /** Passkeys of an account, oldest first. */
    List<Passkey> list(String staffId);

    /**
     * Keeps a new passkey of an account.
     *
     * @throws slipway.care.record.NotThere if the clinic of the act has no such account
     * @throws IllegalArgumentException if any account has this credential already
     */
    Passkey add(String staffId, String credentialId, String label, PasskeyKey key, Act act);

    /** The passkey that a device names so, of any account. */
    Optional<KeptPasskey> find(String credentialId);

    /**
     * Takes note of a use, so that it counts once on all servers.
     *
     * @return false, and nothing is noted, if the same challenge was used before or the count of signatures did not
     *     rise; a device that does not count tells 0 each time
     */
    boolean use(PasskeyUse use);

    /** Takes down in the trail that a device told a lower count than before: there may be a copy of it. */
    void countWentBack(Passkey passkey, Act act);

    /**
     * Removes a passkey of an account.
     *
     * @throws slipway.care.record.NotThere if the account has none with this id, or is not of the clinic of the act
     */
    void remove(String staffId, String passkeyId, Act act);

    /** Removes all passkeys of an account of the clinic of the act. */
    void removeAll(String staffId, Act act);
}
