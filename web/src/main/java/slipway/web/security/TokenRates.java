package slipway.web.security;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How often a token may ask on this node: {@value #AT_ONCE} requests at once, and {@value #PER_SECOND} a second in the
 * long run. Several nodes count each for itself.
 */
final class TokenRates {
    static final int AT_ONCE = 120;
    static final int PER_SECOND = 2;

    private static final double NANOS = 1e9;

    private final ConcurrentHashMap<String, Allowance> allowances = new ConcurrentHashMap<>();

    /**
     * What a token may still ask.
     *
     * @param pause how long to wait if the last request was too many
     */
    private record Allowance(double left, Instant at, Optional<Duration> pause) {
        Allowance after(Instant now) {
            double seconds = Math.max(0, Duration.between(at, now).toNanos() / NANOS);
            double grown = Math.min(AT_ONCE, left + seconds * PER_SECOND);
            return grown >= 1
                    ? new Allowance(grown - 1, now, Optional.empty())
                    : new Allowance(
                            grown, now, Optional.of(Duration.ofSeconds((long) Math.ceil((1 - grown) / PER_SECOND))));
        }
    }

    /** Takes one request off; if there is none left, tells how long to wait, in whole seconds, at least one. */
    Optional<Duration> take(String tokenId, Instant now) {
        return allowances
                .compute(
                        tokenId,
                        (id, known) ->
                                known == null ? new Allowance(AT_ONCE - 1, now, Optional.empty()) : known.after(now))
                .pause();
    }
}
