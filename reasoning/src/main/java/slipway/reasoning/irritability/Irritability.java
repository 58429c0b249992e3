package slipway.reasoning.irritability;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Locale;

/** How easily symptoms start and how slowly they settle, in rising order. */
public enum Irritability {
    LOW,
    MODERATE,
    HIGH;

    /** The name used in files, for example {@code low}. */
    @JsonValue
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The higher of the two. */
    public Irritability orHigher(Irritability other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
