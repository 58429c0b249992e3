package slipway.web.security;

import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Service;
import slipway.care.record.Records;
import slipway.care.record.access.Credentials;
import slipway.care.record.access.StaffAccount;

/** Attempts to show who one is, at the door and behind it: counted together, so that no page is the faster to guess at. */
@Service
class Attempts {
    private final Records records;

    Attempts(Records records) {
        this.records = records;
    }

    /**
     * An attempt that was counted.
     *
     * @param before what was known before
     * @param pause until when none is taken; then this one must not be looked at
     */
    record Attempt(Credentials before, Optional<Instant> pause) {}

    /** Counts first and looks afterwards: of hundreds at once only the first few are looked at. */
    Attempt count(Credentials found, Instant now) {
        Credentials credentials = found;
        while (true) {
            Optional<Instant> wait = SlowDown.waiting(credentials.nextAllowedAt(), now);
            Instant next = SlowDown.nextAllowed(credentials.failures() + 1, now);
            if (wait.isPresent()
                    || records.staff().countAttempt(credentials.account().id(), credentials.failures(), next)) {
                return new Attempt(credentials, wait);
            }
            credentials =
                    records.staff().credentials(credentials.account().login()).orElseThrow();
        }
    }

    /** Takes back one that was right and signs nobody in. */
    void takeBack(Credentials before) {
        records.staff().uncountAttempt(before);
    }

    /** Takes down one that was wrong. */
    void failed(StaffAccount account, Instant now) {
        records.staff().failed(account.id(), SignIn.act(account, now));
    }
}
