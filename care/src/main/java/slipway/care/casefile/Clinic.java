package slipway.care.casefile;

import java.util.Optional;

/**
 * Where the person is seen and whom to call.
 *
 * @param setting {@code therapy}, {@code primary-care}, {@code secondary-care} or {@code emergency}
 * @param emergencyNumber the local one; a case without it is refused, because every paper for the person shows it
 */
public record Clinic(Optional<String> name, String setting, Optional<String> phone, String emergencyNumber) {}
