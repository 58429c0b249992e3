package slipway.web.door;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;

/**
 * How often one code may ask on this server: {@value #AT_ONCE} requests at once and {@value #PER_SECOND} a second in the
 * long run, far above what a person taps. Each code counts for itself, so that a flood from one leaves the others alone.
 */
@Component
public class CodeRates {
    static final int AT_ONCE = 120;
    static final int PER_SECOND = 2;
    /** Codes that were quiet so long have all their allowance again and need no memory. */
    private static final Duration FULL_AGAIN = Duration.ofSeconds(2L * AT_ONCE / PER_SECOND);

    private static final int SWEEP_ABOVE = 5000;
    private static final double MILLIS = 1000;

    private record Allowance(double left, Instant at, boolean over) {
        Allowance next(Instant now) {
            double seconds = Math.max(0, Duration.between(at, now).toMillis() / MILLIS);
            double grown = Math.min(AT_ONCE, left + seconds * PER_SECOND);
            return grown >= 1 ? new Allowance(grown - 1, now, false) : new Allowance(grown, now, true);
        }
    }

    private final ConcurrentHashMap<String, Allowance> allowances = new ConcurrentHashMap<>();

    /** Takes one request off; if there is none left, how long to wait, at least one second. */
    public Optional<Duration> take(String linkId, Instant now) {
        if (allowances.size() > SWEEP_ABOVE) {
            allowances.values().removeIf(each -> each.at().plus(FULL_AGAIN).isBefore(now));
        }
        Allowance left = allowances.compute(
                linkId, (id, known) -> known == null ? new Allowance(AT_ONCE - 1.0, now, false) : known.next(now));
        return left.over()
                ? Optional.of(Duration.ofSeconds(Math.max(1, (long) Math.ceil((1 - left.left()) / PER_SECOND))))
                : Optional.empty();
    }
}
