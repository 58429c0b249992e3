package slipway.care.casefile;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How easily symptoms start and how slowly they settle, as reported; pain on 0 to 10.
 *
 * @param judgement the therapist's own: {@code low}, {@code moderate} or {@code high}
 */
public record IrritabilityReport(
        OptionalDouble worstPain,
        OptionalDouble usualPain,
        OptionalDouble restPain,
        OptionalDouble nightPain,
        OptionalDouble settleMinutes,
        Optional<Boolean> provokedByTrivialActivity,
        Optional<Boolean> onlyAtEndRange,
        Optional<String> judgement) {}
