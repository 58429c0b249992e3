package slipway.care.record.access;

import java.util.List;
import slipway.care.record.Act;

/** Passkeys of accounts. */
public interface Passkeys {
    List<Passkey> list(String staffId);

    void remove(String passkeyId, Act act);
}
