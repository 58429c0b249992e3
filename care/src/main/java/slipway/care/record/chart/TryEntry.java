package slipway.care.record.chart;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One supervised set of one exercise, as it went.
 *
 * @param repetitions done, 0 to 100
 * @param worst worst symptom during it, 0 to 10
 * @param settleMinutes minutes until symptoms were back at their usual level
 * @param retestOnsetDeg angle at which the symptom began in the re-test, in degrees
 * @param retestWeaker whether a key muscle was weaker afterwards; empty if not tested
 * @param released whether the exercise goes home with the person
 */
public record TryEntry(
        String exerciseId,
        int repetitions,
        double worst,
        OptionalDouble settleMinutes,
        OptionalDouble retestOnsetDeg,
        Optional<Boolean> retestWeaker,
        boolean released,
        Optional<String> remark) {
    public TryEntry {
        if (repetitions < 0 || repetitions > 100) {
            throw new IllegalArgumentException("repetitions must be within 0 and 100, was " + repetitions);
        }
        if (!(worst >= 0 && worst <= 10)) {
            throw new IllegalArgumentException("worst symptom must be within 0 and 10, was " + worst);
        }
        if (settleMinutes.isPresent() && !(settleMinutes.getAsDouble() >= 0)) {
            throw new IllegalArgumentException("settle time must not be negative");
        }
    }
}
