package slipway.care.casefile;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The person. The name is for papers only and never for messages.
 *
 * @param sex {@code female}, {@code male} or {@code other}
 */
public record Patient(
        Optional<String> name, double ageYears, Optional<String> sex, double statureCm, OptionalDouble massKg) {}
