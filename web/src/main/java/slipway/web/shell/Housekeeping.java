package slipway.web.shell;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import slipway.care.record.Records;
import slipway.store.session.SessionStore;

/** Drops what has run out. Doing it twice, on two servers, does no harm. */
@Configuration
@EnableScheduling
class Housekeeping {
    private static final long EVERY_MINUTES = 10;

    /** Whoever comes back after this long starts from what is recorded. */
    private static final Duration DRAFTS_KEPT = Duration.ofDays(14);

    private final SessionStore sessions;
    private final Records records;
    private final Clock clock;

    Housekeeping(SessionStore sessions, Records records, Clock clock) {
        this.sessions = sessions;
        this.records = records;
        this.clock = clock;
    }

    @Scheduled(
            fixedDelay = EVERY_MINUTES,
            initialDelay = EVERY_MINUTES,
            timeUnit = java.util.concurrent.TimeUnit.MINUTES)
    void sweep() {
        Instant now = clock.instant();
        sessions.deleteExpired(now);
        records.drafts().purge(now.minus(DRAFTS_KEPT));
    }
}
