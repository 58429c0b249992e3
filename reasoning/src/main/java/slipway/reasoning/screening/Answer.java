package slipway.reasoning.screening;

import java.util.Locale;
import java.util.Optional;

/** Answer to a screening question; {@code unknown} counts as not asked. */
public enum Answer {
    YES,
    NO,
    UNKNOWN;

    /** The answer with this name in files; also {@code true} and {@code false}. */
    public static Optional<Answer> find(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> Optional.of(YES);
            case "no", "false" -> Optional.of(NO);
            case "unknown" -> Optional.of(UNKNOWN);
            default -> Optional.empty();
        };
    }
}
